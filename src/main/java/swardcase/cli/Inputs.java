package swardcase.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import swardcase.tables.TablesLoader;

/**
 * What a run reads, or would read if it were there: no result may stand in such a place, or the
 * next run would take it for the user's own numbers.
 */
final class Inputs {

  private static final String TABLE = ".csv";

  private final List<Path> files;
  private final List<Path> tableFolders;

  private Inputs(List<Path> files, List<Path> tableFolders) {
    this.files = List.copyOf(files);
    this.tableFolders = List.copyOf(tableFolders);
  }

  /** These files, some of which may not exist. */
  static Inputs of(Collection<Path> files) {
    return new Inputs(List.copyOf(files), List.of());
  }

  /** No files. */
  static Inputs none() {
    return of(List.of());
  }

  /** These and more files. */
  Inputs and(Collection<Path> more) {
    List<Path> all = new ArrayList<>(files);
    all.addAll(more);
    return new Inputs(all, tableFolders);
  }

  /** These and a folder of the user's own tables, in which every CSV file is read as one. */
  Inputs andTables(Path folder) {
    List<Path> tables =
        TablesLoader.names().stream().map(name -> folder.resolve(name + TABLE)).toList();
    return new Inputs(and(tables).files, List.of(folder));
  }

  /** Why nothing may be written to a place, in a few words; empty if something may. */
  Optional<String> refusal(Path target) throws IOException {
    for (Path input : files) {
      boolean exists = Files.exists(target);
      if (exists && Files.exists(input) && Files.isSameFile(target, input)) {
        return Optional.of("it is one of the files that were read");
      }
      if (!exists && sameName(RealPath.of(input), target)) {
        return Optional.of("a file of that name there would be read the next time");
      }
    }
    for (Path folder : tableFolders) {
      if (target.getParent().equals(RealPath.of(folder)) && lower(target).endsWith(TABLE)) {
        return Optional.of("it would be read as one of your own tables");
      }
    }
    return Optional.empty();
  }

  /** Whether two paths are one, also where a file system takes capitals for small letters. */
  private static boolean sameName(Path one, Path other) {
    return one.getParent().equals(other.getParent()) && lower(one).equals(lower(other));
  }

  private static String lower(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT);
  }
}
