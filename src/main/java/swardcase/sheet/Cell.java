package swardcase.sheet;

import java.util.List;
import swardcase.chance.Range;
import swardcase.report.Words;

/**
 * What stands in a cell: pieces one below another, each in its style, and a mark drawn behind them
 * that repeats in a picture what the table says in words.
 *
 * @param pieces text, each piece wrapped
 * @param mark drawn in the cell, or null
 */
record Cell(List<Piece> pieces, Mark mark) {

  /** Text of one style. */
  record Piece(String text, Style style) {}

  /** Draws in the area of a cell. */
  interface Mark {
    void draw(Canvas canvas, double x, double top, double width, double height);
  }

  static Cell of(String text) {
    return of(text, Style.CELL);
  }

  static Cell of(String text, Style style) {
    return new Cell(List.of(new Piece(text, style)), null);
  }

  /** The likely value with its ends on the line below. */
  static Cell of(Range range) {
    if (range.isExact()) {
      return of(Words.range(range));
    }
    return new Cell(
        List.of(
            new Piece(Words.likely(range), Style.CELL),
            new Piece("(" + Words.ends(range) + ")", Style.NOTE)),
        null);
  }

  /** The likely value with its ends beside it. */
  static Cell inLine(Range range) {
    return of(Words.range(range), Style.FINE);
  }

  static Cell ofMark(Mark mark) {
    return new Cell(List.of(), mark);
  }
}
