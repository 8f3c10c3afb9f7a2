package swardcase.paper;

/**
 * A column of a table.
 *
 * @param header its heading
 * @param width in points, the gap to the next column included
 * @param right whether its content ends at the right edge, as numbers do
 * @param below whether its content stands on lines of its own, below the rest of the row and over
 *     the whole width
 * @param style type of its content
 */
public record Column(String header, double width, boolean right, boolean below, Style style) {

  /** Room between two columns, part of the width. */
  static final double GAP = 7;

  /** A column of words, of a width in points. */
  public static Column words(String header, double width) {
    return new Column(header, width, false, false, Style.CELL);
  }

  /** A column of names, which head their rows. */
  public static Column names(String header, double width) {
    return words(header, width).in(Style.CELL_BOLD);
  }

  /** A column of numbers, set to the right. */
  public static Column numbers(String header, double width) {
    return new Column(header, width, true, false, Style.CELL);
  }

  /** A cell that stands below its row, over the whole width. */
  public static Column below(String header) {
    return new Column(header, 0, false, true, Style.NOTE);
  }

  /** The same in another type. */
  public Column in(Style other) {
    return new Column(header, width, right, below, other);
  }
}
