package swardcase.tables;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import swardcase.check.Fault;
import swardcase.check.NearestName;
import swardcase.check.ReadLimits;
import swardcase.check.SmallFile;

/**
 * A CSV file read whole: its columns and its rows, each row with its line number.
 *
 * <p>The first line that is neither blank nor a comment holds the headings. Lines that start with
 * {@code #} are comments. Cells are trimmed; lines without a single filled cell are skipped. UTF-8
 * with or without a byte order mark, any line ending, and comma or semicolon between cells are
 * read. In a semicolon file numbers may have a decimal comma: {@code 0,5} is a half.
 *
 * <p>Nothing is thrown for a bad file: every fault is added to the list that was handed in, and the
 * caller refuses the whole when the list is not empty.
 */
public final class CsvTable {

  private final String name;
  private final List<String> columns;
  private final List<CsvRow> rows;
  private final List<Fault> faults;

  private CsvTable(String name, List<CsvText.Line> lines, List<Fault> faults) {
    this.name = name;
    this.faults = faults;
    this.rows = new ArrayList<>();
    if (lines.isEmpty()) {
      this.columns = List.of();
      fault(0, "", "must have a line of headings", "", "");
      return;
    }
    CsvText.Line heading = lines.get(0);
    if (!isWithinLimits(lines)) {
      this.columns = List.of();
      return;
    }
    this.columns = heading.cells();
    checkHeadings(heading);
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      places.putIfAbsent(columns.get(i), i);
    }
    for (CsvText.Line line : lines.subList(1, lines.size())) {
      if (fits(line)) {
        rows.add(new CsvRow(name, line, places, faults));
      }
    }
  }

  private CsvTable(CsvTable from, List<CsvRow> rows) {
    this.name = from.name;
    this.columns = from.columns;
    this.rows = rows;
    this.faults = from.faults;
  }

  /** The same table with other rows. */
  public CsvTable with(List<CsvRow> others) {
    return new CsvTable(this, List.copyOf(others));
  }

  /** Reads a file; its name in faults is the last part of the path. A missing file is a fault. */
  public static CsvTable read(Path file, List<Fault> faults) {
    return read(String.valueOf(file.getFileName()), file, faults);
  }

  /** Reads a file under a name. One that is missing, too large or no file is a fault. */
  static CsvTable read(String name, Path file, List<Fault> faults) {
    Consumer<String> refused = rule -> faults.add(new Fault(name, 0, "", rule, "", ""));
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      refused.accept("must be there");
      return unread(name, faults);
    }
    return SmallFile.find(file, ReadLimits.TEXT_BYTES, refused)
        .map(bytes -> of(name, bytes, faults))
        .orElseGet(() -> unread(name, faults));
  }

  /** A table of which nothing is known, after a fault. */
  private static CsvTable unread(String name, List<Fault> faults) {
    return new CsvTable(name, List.of(new CsvText.Line(1, List.of())), faults);
  }

  /** Reads bytes under a name. */
  public static CsvTable of(String name, byte[] bytes, List<Fault> faults) {
    int before = faults.size();
    List<CsvText.Line> lines = CsvText.lines(name, bytes, faults);
    return lines.isEmpty() && faults.size() > before
        ? unread(name, faults)
        : new CsvTable(name, lines, faults);
  }

  /**
   * A table from cells that were read elsewhere, such as from a sheet of a workbook. Rows may be
   * shorter than the headings; a row whose first cell starts with {@code #} and a space is a
   * comment.
   *
   * @param name where they stood, as printed in faults
   * @param cells trimmed cells by row number from 1
   */
  public static CsvTable ofCells(
      String name, SortedMap<Integer, List<String>> cells, List<Fault> faults) {
    List<CsvText.Line> lines = new ArrayList<>();
    int columns = 0;
    for (Map.Entry<Integer, List<String>> row : cells.entrySet()) {
      List<String> filled = new ArrayList<>(row.getValue());
      if (filled.stream().allMatch(String::isEmpty) || filled.get(0).startsWith("# ")) {
        continue;
      }
      columns = lines.isEmpty() ? filled.size() : columns;
      while (filled.size() < columns) {
        filled.add("");
      }
      lines.add(new CsvText.Line(row.getKey(), List.copyOf(filled)));
    }
    return new CsvTable(name, lines, faults);
  }

  /** The file's name as printed in faults. */
  public String name() {
    return name;
  }

  /** The headings in order. */
  public List<String> columns() {
    return columns;
  }

  /** The rows that have as many cells as there are headings, in order. */
  public List<CsvRow> rows() {
    return List.copyOf(rows);
  }

  /** Whether there is such a heading. */
  public boolean has(String column) {
    return columns.contains(column);
  }

  /**
   * Demands these columns: a missing required one is a fault, and so is one that is in neither
   * list.
   *
   * @return whether every required column is there, so that the rows can be read
   */
  public boolean demand(Collection<String> required, Collection<String> optional) {
    if (columns.isEmpty()) {
      return false;
    }
    List<String> known = Stream.concat(required.stream(), optional.stream()).toList();
    for (String column : columns) {
      if (!column.isEmpty() && !known.contains(column)) {
        List<String> unused = known.stream().filter(other -> !has(other)).toList();
        String nearest = NearestName.find(column, unused).orElse("");
        fault(0, column, "is not a column of this table", "", nearest);
      }
    }
    List<String> missing = required.stream().filter(column -> !has(column)).toList();
    missing.forEach(column -> fault(0, column, "must be a column of this table", "", ""));
    return missing.isEmpty();
  }

  /** Demands that no two rows have the same cells in these columns, case aside. */
  public void demandUnique(String... keyColumns) {
    Map<String, Integer> seen = new HashMap<>();
    for (CsvRow row : rows) {
      List<String> cells =
          Stream.of(keyColumns).map(column -> row.findText(column).orElse("")).toList();
      String key = String.join(" / ", cells);
      Integer first = seen.putIfAbsent(key.toLowerCase(Locale.ROOT), row.line());
      if (first != null && !key.isBlank()) {
        fault(
            row.line(),
            String.join(" / ", keyColumns),
            "must not be given twice; it stands in line " + first + " already",
            key,
            "");
      }
    }
  }

  private boolean isWithinLimits(List<CsvText.Line> lines) {
    int columns = lines.get(0).cells().size();
    if (columns > ReadLimits.COLUMNS) {
      fault(
          lines.get(0).number(), "", "must not have more than " + ReadLimits.COLUMNS + " columns");
    }
    if (lines.size() > ReadLimits.ROWS) {
      int first = lines.get(ReadLimits.ROWS).number();
      fault(first, "", "must not have more than " + ReadLimits.ROWS + " rows");
    }
    return columns <= ReadLimits.COLUMNS && lines.size() <= ReadLimits.ROWS;
  }

  private void checkHeadings(CsvText.Line heading) {
    Set<String> seen = new LinkedHashSet<>();
    for (String column : heading.cells()) {
      if (!column.isEmpty() && !seen.add(column)) {
        fault(heading.number(), column, "must not be a heading twice", "", "");
      }
    }
  }

  private boolean fits(CsvText.Line line) {
    List<String> cells = line.cells();
    int count = columns.size();
    boolean tailBlank =
        cells.stream().skip(Math.min(count, cells.size())).allMatch(String::isEmpty);
    if (count == 0) {
      return false;
    }
    if (cells.size() < count || !tailBlank) {
      fault(
          line.number(),
          "",
          "must have as many cells as there are headings (" + count + ")",
          Integer.toString(cells.size()),
          "");
      return false;
    }
    for (int i = 0; i < count; i++) {
      if (cells.get(i).length() > ReadLimits.CHARACTERS) {
        String rule = "must not be longer than " + ReadLimits.CHARACTERS + " characters";
        fault(line.number(), columns.get(i), rule, cells.get(i), "");
        return false;
      }
      if (columns.get(i).isEmpty() && !cells.get(i).isEmpty()) {
        fault(line.number(), "", "must not have a cell without a heading", cells.get(i), "");
        return false;
      }
    }
    return true;
  }

  private void fault(int line, String column, String rule) {
    fault(line, column, rule, "", "");
  }

  private void fault(int line, String column, String rule, String found, String nearest) {
    if (faults.size() < ReadLimits.FAULTS) {
      faults.add(new Fault(name, line, column, rule, found, nearest));
    }
  }
}
