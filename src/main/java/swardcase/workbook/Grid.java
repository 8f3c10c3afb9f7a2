package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Worksheet;
import swardcase.report.SafeText;

/** A sheet that is filled cell by cell; rows and columns count from 0. */
final class Grid {

  static final String MONEY = "#,##0";
  static final String AMOUNT = "#,##0.0";
  static final String FINE = "0.0000";
  static final String PERCENT = "0.0%";

  private static final String SHADE = "E6E6E6";

  private final Worksheet sheet;

  Grid(Worksheet sheet, double... widths) {
    this.sheet = sheet;
    for (int c = 0; c < widths.length; c++) {
      sheet.width(c, widths[c]);
    }
    sheet.pageOrientation("landscape");
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
  }

  /** Text that cannot become a formula. */
  void text(int row, int column, String text) {
    if (!text.isEmpty()) {
      sheet.value(row, column, SafeText.of(text));
    }
  }

  void wrapped(int row, int column, String text) {
    text(row, column, text);
    sheet.style(row, column).wrapText(true).verticalAlignment("top").set();
  }

  void bold(int row, int column, String text) {
    text(row, column, text);
    sheet.style(row, column).bold().set();
  }

  void head(int row, List<String> headings) {
    for (int c = 0; c < headings.size(); c++) {
      text(row, c, headings.get(c));
      sheet.style(row, c).bold().wrapText(true).verticalAlignment("top").set();
    }
  }

  void number(int row, int column, double value, String format) {
    sheet.value(row, column, value);
    sheet.style(row, column).format(format).set();
  }

  /** A number the reader is meant to change. */
  void input(int row, int column, double value, String format) {
    sheet.value(row, column, value);
    StyleSetter style = sheet.style(row, column).format(format).fillColor(SHADE).bold();
    style.set();
  }

  /** A formula without its equals sign, in the English names and with commas. */
  void formula(int row, int column, String formula, String format) {
    sheet.formula(row, column, escaped(formula));
    sheet.style(row, column).format(format).set();
  }

  void freezeBelow(int row) {
    sheet.freezePane(0, row + 1);
  }

  /** Name of a cell in formulas: row 0, column 1 is {@code $B$1}. */
  static String fixed(int row, int column) {
    return "$" + letters(column) + "$" + (row + 1);
  }

  /** The same, moving when copied: {@code B1}. */
  static String cell(int row, int column) {
    return letters(column) + (row + 1);
  }

  /** A column from one row to another: {@code $B$1:$B$9}. */
  static String column(int column, int from, int to) {
    return fixed(from, column) + ":" + fixed(to, column);
  }

  private static String letters(int column) {
    return String.valueOf((char) ('A' + column));
  }

  /** The writer puts formulas into the file as they are. */
  private static String escaped(String formula) {
    return formula.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
