package swardcase.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.tables.TablesLoader;

/**
 * What a run reads, or would read if it were there: no result may stand in such a place, or the
 * next run would take it for the user's own numbers.
 *
 * @param files some of which may not exist
 * @param tables folders of the user's own tables, in which every CSV file is read as one
 */
public record Inputs(List<Path> files, List<Path> tables) {

  /** Nothing. */
  public static final Inputs NONE = new Inputs(List.of(), List.of());

  private static final String TABLE = ".csv";

  /** Copies the lists. */
  public Inputs {
    files = List.copyOf(files);
    tables = List.copyOf(tables);
  }

  /** These and more files. */
  public Inputs and(Collection<Path> more) {
    return new Inputs(Stream.concat(files.stream(), more.stream()).toList(), tables);
  }

  /** These and a folder of the user's own tables. */
  public Inputs andTables(Path folder) {
    List<Path> known =
        TablesLoader.names().stream().map(name -> folder.resolve(name + TABLE)).toList();
    return new Inputs(and(known).files, List.of(folder));
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
    for (Path folder : tables) {
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
