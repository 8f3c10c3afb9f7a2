package swardcase.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.check.NearestName;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;

/**
 * A table read whole: its columns and its rows, each row with its line number.
 *
 * <p>In a CSV file the first line that is neither blank nor a comment holds the headings. Lines
 * that start with {@code #} are comments. Cells are trimmed; lines without a single filled cell are
 * skipped. Any line ending, and comma or semicolon between cells are read. In a semicolon file
 * numbers may have a decimal comma: {@code 0,5} is a half.
 *
 * <p>Nothing is thrown for a bad table: its rows that cannot be read are faults, and left out.
 */
public final class Table {

  private final String name;
  private final List<String> columns;
  private final List<Fields> rows;
  private final Faults faults;
  private final Set<String> asked;

  /**
   * The cells of a line, trimmed; blank cells are empty strings.
   *
   * @param line its number from 1; 0 for one that stands nowhere yet
   */
  public record Line(int line, List<String> cells) {

    /** Copies the list. */
    public Line {
      cells = List.copyOf(cells);
    }
  }

  private Table(
      String name, List<String> columns, List<Fields> rows, Faults faults, Set<String> asked) {
    this.name = name;
    this.columns = columns;
    this.rows = List.copyOf(rows);
    this.faults = faults;
    this.asked = asked;
  }

  /** Reads CSV text under a name. */
  public static Table of(String name, String text, Faults faults) {
    int before = faults.count();
    List<Line> lines = CsvText.lines(name, text, faults);
    return lines.isEmpty() && faults.count() > before
        ? new Table(name, List.of(), List.of(), faults, Set.of())
        : ofLines(name, lines, faults);
  }

  /** A table from the lines that hold something, the first of which are its headings. */
  public static Table ofLines(String name, List<Line> lines, Faults faults) {
    List<Fields> rows = new ArrayList<>();
    Set<String> asked = new LinkedHashSet<>();
    List<String> columns = headings(name, lines, faults);
    Map<String, Integer> places = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      places.putIfAbsent(columns.get(i), i);
    }
    for (Line line : columns.isEmpty() ? List.<Line>of() : lines.subList(1, lines.size())) {
      Spot at = new Spot(name, line.line());
      if (fits(line, at, columns, faults)) {
        rows.add(
            Fields.ofRow(
                at,
                faults,
                places.keySet(),
                column -> cell(at, line.cells(), places.getOrDefault(column, -1)),
                asked));
      }
    }
    return new Table(name, columns, rows, faults, asked);
  }

  private static Entry cell(Spot at, List<String> cells, int place) {
    return place < 0 ? null : new Entry(at, new Scalar(at, cells.get(place), Form.CELL));
  }

  /** The same table with rows changed. */
  public Table with(UnaryOperator<Fields> change) {
    return new Table(name, columns, rows.stream().map(change).toList(), faults, asked);
  }

  /** The table's name as printed in faults. */
  public String name() {
    return name;
  }

  /** The headings in order. */
  public List<String> columns() {
    return columns;
  }

  /** The rows that have as many cells as there are headings, in order. */
  public List<Fields> rows() {
    return rows;
  }

  /** Demands that no two rows have the same cells in these columns, as names are compared. */
  public void demandUnique(List<String> key) {
    Map<String, Integer> seen = new HashMap<>();
    for (Fields row : rows) {
      String cells =
          key.stream()
              .map(column -> row.findText(column).orElse(""))
              .collect(Collectors.joining(" / "));
      Integer first = seen.putIfAbsent(Names.key(cells), row.at().line());
      if (first != null && !Names.key(cells).isEmpty()) {
        String rule = "must not be given twice; it stands in line " + first + " already";
        faults.add(row.at(), String.join(" / ", key), rule, cells);
      }
    }
  }

  /** The columns that were asked for in its rows so far. */
  public Set<String> asked() {
    return asked;
  }

  /** Makes a fault of every column that nobody asked for, when its rows have been read. */
  public void finish() {
    finish(asked);
  }

  /** The same where other tables with the same columns tell what is known too. */
  public void finish(Set<String> known) {
    Stream<String> ofRows = rows.stream().flatMap(row -> row.keys().stream()).distinct();
    List<String> unknown =
        ofRows.filter(column -> !column.isEmpty() && !known.contains(column)).toList();
    List<String> free = known.stream().filter(column -> !columns.contains(column)).toList();
    for (String column : unknown) {
      Spot at =
          rows.stream()
              .filter(row -> row.keys().contains(column) && !columns.contains(column))
              .map(row -> row.at(column))
              .findFirst()
              .orElse(new Spot(name, 0));
      String rule = "is not a column of this table";
      faults.add(at, column, rule, "", () -> NearestName.find(column, free).orElse(""));
    }
  }

  /** The headings; none after a fault. */
  private static List<String> headings(String name, List<Line> lines, Faults faults) {
    if (lines.isEmpty() || lines.get(0).cells().isEmpty()) {
      faults.add(name, "must have a line of headings");
      return List.of();
    }
    List<String> columns = lines.get(0).cells();
    Spot at = new Spot(name, lines.get(0).line());
    int before = faults.count();
    if (columns.size() > ReadLimits.COLUMNS) {
      faults.add(at, "", "must not have more than " + ReadLimits.COLUMNS + " columns", "");
    }
    if (lines.size() > ReadLimits.ROWS) {
      Spot first = new Spot(name, lines.get(ReadLimits.ROWS).line());
      faults.add(first, "", "must not have more than " + ReadLimits.ROWS + " rows", "");
    }
    if (faults.count() > before) {
      return List.of();
    }
    Set<String> seen = new LinkedHashSet<>();
    for (String column : columns) {
      if (!column.isEmpty() && !seen.add(column)) {
        faults.add(at, column, "must not be a heading twice", "");
      }
    }
    return columns;
  }

  private static boolean fits(Line line, Spot at, List<String> columns, Faults faults) {
    List<String> cells = line.cells();
    int count = columns.size();
    if (cells.size() < count || !cells.stream().skip(count).allMatch(String::isEmpty)) {
      String rule = "must have as many cells as there are headings (" + count + ")";
      faults.add(at, "", rule, Integer.toString(cells.size()));
      return false;
    }
    for (int i = 0; i < count; i++) {
      if (cells.get(i).length() > ReadLimits.CHARACTERS) {
        String rule = "must not be longer than " + ReadLimits.CHARACTERS + " characters";
        faults.add(at, columns.get(i), rule, cells.get(i));
        return false;
      }
      if (columns.get(i).isEmpty() && !cells.get(i).isEmpty()) {
        faults.add(at, "", "must not have a cell without a heading", cells.get(i));
        return false;
      }
    }
    return true;
  }
}
