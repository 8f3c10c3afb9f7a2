package swardcase.workbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Worksheet;
import swardcase.wording.SafeText;

/** A sheet that is filled cell by cell; rows and columns count from 0. */
final class Grid {

  static final String MONEY = "#,##0";
  static final String AMOUNT = "#,##0.0";
  static final String FINE = "0.0000";
  static final String PERCENT = "0.0%";

  private static final String SHADE = "E6E6E6";

  /** Height of a line of text, points. */
  private static final double LINE = 15;

  /** Width of a letter in digits, in which a column is measured: the mean of several faces. */
  private static final double LETTER = 0.95;

  private final Worksheet sheet;
  private final double[] widths;
  private final Map<Integer, Integer> linesOfRow = new HashMap<>();

  Grid(Worksheet sheet, double... widths) {
    this.sheet = sheet;
    this.widths = widths.clone();
    for (int c = 0; c < widths.length; c++) {
      sheet.width(c, widths[c]);
    }
    sheet.pageOrientation("landscape");
    sheet.paperSize(PaperSize.A4_PAPER);
    sheet.setFitToPage(true);
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
  }

  /** Text that cannot become a formula. */
  void text(int row, int column, String text) {
    if (!text.isEmpty()) {
      sheet.value(row, column, SafeText.of(text));
      leftTop(row, column).set();
    }
  }

  /** At the top, and a little away from a number before it. */
  private StyleSetter leftTop(int row, int column) {
    return sheet
        .style(row, column)
        .horizontalAlignment("left")
        .indent(column > 0 ? 1 : 0)
        .verticalAlignment("top");
  }

  /** Text at the right, such as one that stands among numbers. */
  void right(int row, int column, String text) {
    text(row, column, text);
    sheet.style(row, column).horizontalAlignment("right").indent(0).verticalAlignment("top").set();
  }

  void wrapped(int row, int column, String text) {
    text(row, column, text);
    makeRoom(row, column, text);
    leftTop(row, column).wrapText(true).set();
  }

  void bold(int row, int column, String text) {
    text(row, column, text);
    sheet.style(row, column).bold().set();
  }

  /** Headings; one that starts with {@code >} stands above numbers, at the right. */
  void head(int row, List<String> headings) {
    for (int c = 0; c < headings.size(); c++) {
      boolean right = headings.get(c).startsWith(">");
      String heading = right ? headings.get(c).substring(1) : headings.get(c);
      text(row, c, heading);
      makeRoom(row, c, heading);
      sheet
          .style(row, c)
          .bold()
          .wrapText(true)
          .verticalAlignment("bottom")
          .horizontalAlignment(right ? "right" : "left")
          .indent(right || c == 0 ? 0 : 1)
          .set();
    }
  }

  /** Not every spreadsheet makes a row as high as its text, so the row is told. */
  private void makeRoom(int row, int column, String text) {
    int lines = 1;
    double used = 0;
    for (String word : text.split(" ")) {
      double width = LETTER * (word.length() + 1);
      if (used > 0 && used + width > widths[column]) {
        lines++;
        used = 0;
      }
      used += width;
    }
    int most = linesOfRow.merge(row, lines, Math::max);
    sheet.rowHeight(row, LINE * most);
  }

  void number(int row, int column, double value, String format) {
    sheet.value(row, column, value);
    sheet.style(row, column).format(format).verticalAlignment("top").set();
  }

  /** A calendar year, which stands at the left like a name. */
  void year(int row, int column, int year) {
    sheet.value(row, column, year);
    sheet.style(row, column).format("0").horizontalAlignment("left").verticalAlignment("top").set();
  }

  /** A number of any size, with the decimals it needs and not more than it deserves. */
  void plain(int row, int column, double value) {
    int most = Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 1 ? 2 : 4;
    int decimals =
        BigDecimal.valueOf(value)
            .setScale(most, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .scale();
    number(row, column, value, decimals <= 0 ? MONEY : "0." + "0".repeat(decimals));
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
    sheet
        .style(row, column)
        .format(format)
        .horizontalAlignment("right")
        .verticalAlignment("top")
        .set();
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
