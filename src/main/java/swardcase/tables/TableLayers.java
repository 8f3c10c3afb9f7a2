package swardcase.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.check.Fault;
import swardcase.check.NearestName;
import swardcase.check.ReadLimits;
import swardcase.evidence.SetBy;

/**
 * The program's tables with a user's tables laid over them: a row of the user's replaces the row of
 * the same key, and a row with a new key is added.
 */
final class TableLayers {

  private final Path base;
  private final List<Path> users;
  private final List<Fault> faults;
  private final List<String> overridden = new ArrayList<>();
  private Set<String> sourceKeys = new TreeSet<>();

  /** The base is a directory, or the class path where it is null. */
  TableLayers(Path base, List<Path> users, List<Fault> faults) {
    this.base = base;
    this.users = users;
    this.faults = faults;
    users.forEach(this::checkNames);
  }

  /** The source keys that later rows may name. */
  void knowSources(Set<String> keys) {
    sourceKeys = new TreeSet<>(keys);
  }

  /** What the user's tables replaced or added, in words, such as {@code cultivars: Dinninup}. */
  List<String> overridden() {
    return List.copyOf(overridden);
  }

  /** The rows of a table by key, in order of first appearance. */
  List<TableRow> rows(TableFile file) {
    Map<String, TableRow> merged = new LinkedHashMap<>();
    for (CsvRow row : read(file, openBase(file))) {
      merged.put(key(file, row), new TableRow(row, SetBy.DEFAULT, sourceKeys));
    }
    for (Path user : users) {
      Path path = user.resolve(file.fileName());
      if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        for (CsvRow row : read(file, CsvTable.read(shown(path), path, faults))) {
          String title = file.key().stream().map(row::text).collect(Collectors.joining(", "));
          TableRow before =
              merged.put(key(file, row), new TableRow(row, SetBy.OVERRIDE, sourceKeys));
          overridden.add(file.title() + ": " + title + (before == null ? " (added)" : ""));
        }
      }
    }
    return List.copyOf(merged.values());
  }

  private List<CsvRow> read(TableFile file, CsvTable table) {
    if (!table.demand(file.columns(), List.of())) {
      return List.of();
    }
    table.demandUnique(file.key().toArray(String[]::new));
    return table.rows();
  }

  private CsvTable openBase(TableFile file) {
    String shown = "tables/" + file.fileName();
    if (base != null) {
      Path path = base.resolve(file.fileName());
      return CsvTable.read(Files.exists(path) ? shown : file.fileName(), path, faults);
    }
    try (InputStream in = TableLayers.class.getResourceAsStream("/tables/" + file.fileName())) {
      return in == null
          ? CsvTable.read(Path.of(file.fileName()), faults)
          : CsvTable.of(shown, in.readAllBytes(), faults);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String key(TableFile file, CsvRow row) {
    return file.key().stream()
        .map(column -> row.findText(column).orElse("").toLowerCase(Locale.ROOT))
        .collect(Collectors.joining("\n"));
  }

  private void checkNames(Path user) {
    if (!Files.isDirectory(user)) {
      faults.add(new Fault(user.toString(), 0, "", "must be a folder with tables", "", ""));
      return;
    }
    List<String> known = Arrays.stream(TableFile.values()).map(TableFile::fileName).toList();
    List<Path> found;
    try (Stream<Path> files = Files.list(user)) {
      found =
          files
              .filter(path -> path.toString().toLowerCase(Locale.ROOT).endsWith(".csv"))
              .sorted()
              .limit(ReadLimits.FAULTS)
              .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (found.isEmpty()) {
      String rule = "must hold a table of the program, such as " + known.get(1);
      faults.add(new Fault(user.toString(), 0, "", rule, "", ""));
    }
    for (Path path : found) {
      if (!known.contains(name(path))) {
        String nearest = NearestName.find(name(path), known).orElse("");
        faults.add(new Fault(shown(path), 0, "", "is not the name of a table", "", nearest));
      }
    }
  }

  private static String name(Path path) {
    return path.getFileName().toString();
  }

  /** The folder's own name and the file's, so that it is not taken for the program's table. */
  private static String shown(Path path) {
    return Optional.ofNullable(path.toAbsolutePath().normalize().getParent())
            .map(Path::getFileName)
            .map(folder -> folder + "/")
            .orElse("")
        + name(path);
  }
}
