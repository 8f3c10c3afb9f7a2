package swardcase.intake;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import swardcase.check.Fault;
import swardcase.tables.CsvTable;

/**
 * Turns the cells of a sheet into the text a CSV file would hold. A formula counts by the value
 * that was saved with it, a ticked box as {@code yes}, and a cell shown as per cent below a heading
 * with {@code percent} as what it shows: 0.3 shown as 30 % is 30. A date is refused, because a
 * spreadsheet makes dates of names such as {@code 3-1} on its own.
 */
final class SheetCells {

  private static final int MOST_ROWS = 10_000;
  private static final int MOST_COLUMNS = 100;

  private final String name;
  private final List<Fault> faults;
  private final SortedMap<Integer, List<String>> rows = new TreeMap<>();
  private List<String> headings = List.of();

  private SheetCells(String name, List<Fault> faults) {
    this.name = name;
    this.faults = faults;
  }

  /** The sheet as a table, its rows numbered as the spreadsheet numbers them. */
  static CsvTable read(String name, Sheet sheet, List<Fault> faults) throws IOException {
    SheetCells cells = new SheetCells(name, faults);
    try (Stream<Row> rows = sheet.openStream()) {
      Iterator<Row> each = rows.iterator();
      while (each.hasNext() && cells.add(each.next())) {}
    }
    return CsvTable.ofCells(name, cells.rows, faults);
  }

  /** Whether there is room for more. */
  private boolean add(Row row) {
    List<String> texts = new ArrayList<>();
    for (int c = 0; c < row.getCellCount(); c++) {
      String text = text(row.getCell(c), row.getRowNum(), c);
      if (text.isEmpty()) {
        continue;
      }
      if (c >= MOST_COLUMNS) {
        fault(row.getRowNum(), "", "must not have more than " + MOST_COLUMNS + " columns", "");
        return false;
      }
      while (texts.size() < c) {
        texts.add("");
      }
      texts.add(text);
    }
    if (texts.isEmpty()) {
      return true;
    }
    if (rows.size() >= MOST_ROWS) {
      fault(row.getRowNum(), "", "must not have more than " + MOST_ROWS + " rows", "");
      return false;
    }
    rows.put(row.getRowNum(), texts);
    headings = headings.isEmpty() && !texts.get(0).startsWith("# ") ? texts : headings;
    return true;
  }

  private String text(Cell cell, int row, int column) {
    if (cell == null || cell.getType() == CellType.EMPTY) {
      return "";
    }
    String heading = column < headings.size() ? headings.get(column) : "";
    Object value = cell.getValue();
    if (cell.getType() == CellType.ERROR || isError(cell, value)) {
      fault(row, heading, "must not be an error of the spreadsheet", "");
      return raw(cell);
    }
    if (value == null) {
      if (cell.getType() == CellType.FORMULA) {
        fault(
            row,
            heading,
            "must be saved with its value: open the workbook in a spreadsheet and save it again",
            "");
      }
      return "";
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    return value instanceof BigDecimal number
        ? number(number, cell.getDataFormatString(), row, heading)
        : value.toString().strip();
  }

  private String number(BigDecimal value, String format, int row, String heading) {
    // The file holds 17 digits; the shortest that mean the same number are what was typed.
    BigDecimal number = BigDecimal.valueOf(value.doubleValue());
    String shape = shape(format);
    if (shape.contains("%") && heading.contains("percent")) {
      number = number.movePointRight(2);
    } else if (shape.matches(".*[dmyhs].*")) {
      fault(row, heading, "must not be a date: set the column to text and type it again", "");
    }
    return number.stripTrailingZeros().toPlainString();
  }

  /** A number format without the parts that are printed as they are. */
  private static String shape(String format) {
    return format == null || format.equalsIgnoreCase("General")
        ? ""
        : format.replaceAll("\"[^\"]*\"|\\\\.|_.|\\*.|\\[[^\\]]*\\]", "").toLowerCase(Locale.ROOT);
  }

  /** A formula whose saved value is an error has the type of a formula. */
  private static boolean isError(Cell cell, Object value) {
    return cell.getType() == CellType.FORMULA
        && value instanceof String text
        && text.matches("#[A-Z0-9/]+[!?]?");
  }

  private static String raw(Cell cell) {
    return cell.getRawValue() == null ? "" : cell.getRawValue();
  }

  private void fault(int row, String column, String rule, String found) {
    faults.add(new Fault(name, row, column, rule, found, ""));
  }
}
