package swardcase.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import swardcase.check.ReadLimits;
import swardcase.evidence.SetBy;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.FileText;
import swardcase.reading.Node.Spot;
import swardcase.reading.Table;

/**
 * The program's tables with a user's tables laid over them: a row of the user's replaces the row of
 * the same key, and a row with a new key is added.
 */
final class TableLayers {

  private final Path base;
  private final List<Path> users;
  private final Faults faults;
  private final Map<TableFile, List<Table>> opened = new EnumMap<>(TableFile.class);
  private final List<String> overridden = new ArrayList<>();
  private Set<String> sourceKeys = new TreeSet<>();

  /** The base is a directory, or the class path where it is null. */
  TableLayers(Path base, List<Path> users, Faults faults) {
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
    String shown = "tables/" + file.fileName();
    text(file, shown)
        .ifPresent(text -> add(file, Table.of(shown, text, faults), SetBy.DEFAULT, merged));
    for (Path user : users) {
      Path path = user.resolve(file.fileName());
      if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        FileText.find(path, shown(path), faults)
            .map(text -> Table.of(shown(path), text, faults))
            .ifPresent(table -> add(file, table, SetBy.OVERRIDE, merged));
      }
    }
    return List.copyOf(merged.values());
  }

  private void add(TableFile file, Table table, SetBy setBy, Map<String, TableRow> merged) {
    opened.computeIfAbsent(file, of -> new ArrayList<>()).add(table);
    table.demandUnique(file.key());
    for (Fields cells : table.rows()) {
      TableRow row = new TableRow(cells, setBy, sourceKeys);
      String title = row.title(file);
      TableRow before = merged.put(title.toLowerCase(Locale.ROOT), row);
      if (setBy == SetBy.OVERRIDE) {
        overridden.add(file.title() + ": " + title + (before == null ? " (added)" : ""));
      }
    }
  }

  /** Makes a fault of every column that no reader of rows asked for. */
  void finish() {
    for (List<Table> alike : opened.values()) {
      Set<String> known = new LinkedHashSet<>();
      alike.forEach(table -> known.addAll(table.asked()));
      alike.forEach(table -> table.finish(known));
    }
  }

  private Optional<String> text(TableFile file, String shown) {
    if (base != null) {
      Path path = base.resolve(file.fileName());
      return FileText.find(path, shown, faults);
    }
    try (InputStream in = TableLayers.class.getResourceAsStream("/" + shown)) {
      return FileText.decode(in.readAllBytes(), shown, faults);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void checkNames(Path user) {
    if (!Files.isDirectory(user)) {
      faults.add(user.toString(), "must be a folder with tables");
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
      faults.add(user.toString(), "must hold a table of the program, such as " + known.get(1));
    }
    for (Path path : found) {
      String name = path.getFileName().toString();
      if (!known.contains(name)) {
        Spot whole = new Spot(shown(path), 0);
        faults.add(whole, "", "is not the name of a table", name, known);
      }
    }
  }

  /** The folder's own name and the file's, so that it is not taken for the program's table. */
  private static String shown(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    int names = whole.getNameCount();
    return whole.subpath(Math.max(0, names - 2), names).toString().replace('\\', '/');
  }
}
