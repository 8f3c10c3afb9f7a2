package swardcase.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swardcase.check.Check;
import swardcase.check.FaultsException;
import swardcase.reading.Table.Line;

/**
 * The text of a CSV table with other rows in it. Comments, blank lines and rows that are not
 * changed stay as they are, letter by letter.
 */
public final class CsvEdit {

  private final String text;
  private final List<Line> lines;

  /**
   * A table to be changed.
   *
   * @param file what it is called in faults
   * @throws FaultsException if it cannot be taken apart, or has a cell of several lines, so that it
   *     has to be changed in a spreadsheet
   */
  public CsvEdit(String file, String text) {
    Faults faults = new Faults();
    this.text = text;
    lines = CsvText.lines(file, text, faults);
    long filled =
        text.lines().filter(line -> !line.isBlank()).filter(line -> !isComment(line)).count();
    long cells =
        lines.size() + text.lines().filter(line -> line.matches("[,; ]*[,;][,; ]*")).count();
    if (faults.count() == 0 && (lines.isEmpty() || filled != cells)) {
      faults.add(file, "must have headings and no cell of several lines to be changed here");
    }
    faults.throwIfAny();
  }

  private static boolean isComment(String line) {
    return line.stripLeading().startsWith("#");
  }

  /** The headings. */
  public List<String> columns() {
    return lines.get(0).cells();
  }

  /** The rows. */
  public List<Line> rows() {
    return List.copyOf(lines.subList(1, lines.size()));
  }

  /**
   * The text with these rows in place of its own; rows without a filled cell are left out. Cells
   * that a row lacks are empty.
   *
   * @param lineOfRow takes the line of each row in the new text, by its place among the rows
   */
  public String with(List<Line> rows, Map<Integer, Integer> lineOfRow) {
    Map<Integer, Integer> placeOfLine = new HashMap<>();
    for (int place = 0; place < rows.size(); place++) {
      if (rows.get(place).line() > 0 && isFilled(rows.get(place))) {
        Integer before = placeOfLine.put(rows.get(place).line(), place);
        Check.that(before == null, "line %s must be given once", rows.get(place).line());
      }
    }
    Map<Integer, List<String>> old =
        rows().stream().collect(Collectors.toMap(Line::line, Line::cells));
    List<String> texts = new ArrayList<>();
    List<String> before = text.lines().toList();
    for (int line = 1; line <= before.size(); line++) {
      if (!old.containsKey(line)) {
        texts.add(before.get(line - 1));
      } else if (placeOfLine.containsKey(line)) {
        int place = placeOfLine.get(line);
        List<String> cells = rows.get(place).cells();
        texts.add(isSame(cells, old.get(line)) ? before.get(line - 1) : line(cells));
        lineOfRow.put(place, texts.size());
      }
    }
    for (int place = 0; place < rows.size(); place++) {
      if (rows.get(place).line() == 0 && isFilled(rows.get(place))) {
        texts.add(line(rows.get(place).cells()));
        lineOfRow.put(place, texts.size());
      }
    }
    String end = text.contains("\r\n") ? "\r\n" : "\n";
    return texts.stream().map(one -> one + end).collect(Collectors.joining());
  }

  private static boolean isFilled(Line row) {
    return !row.cells().stream().allMatch(String::isBlank);
  }

  private boolean isSame(List<String> cells, List<String> old) {
    return IntStream.range(0, columns().size()).allMatch(k -> cell(cells, k).equals(cell(old, k)));
  }

  private static String cell(List<String> cells, int place) {
    return place < cells.size() ? cells.get(place).strip() : "";
  }

  private String line(List<String> cells) {
    char separator = CsvText.separator(text);
    List<String> texts = new ArrayList<>();
    for (int k = 0; k < columns().size(); k++) {
      texts.add(quoted(cell(cells, k).replaceAll("\\R", " "), separator));
    }
    return String.join(String.valueOf(separator), texts);
  }

  private static String quoted(String cell, char separator) {
    boolean needed = cell.indexOf(separator) >= 0 || cell.contains("\"") || cell.startsWith("#");
    return needed ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }
}
