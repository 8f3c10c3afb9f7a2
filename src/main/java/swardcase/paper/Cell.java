package swardcase.paper;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.wording.Words;

/**
 * What stands in a cell: pieces one below another, each in its style, and a mark drawn behind them
 * that repeats in a picture what the table says in words.
 *
 * @param pieces text, each piece wrapped
 * @param mark drawn in the cell, or null
 */
public record Cell(List<Piece> pieces, Mark mark) {

  /** Text of one style. */
  public record Piece(String text, Style style) {}

  /** Draws in the area of a cell. */
  public interface Mark {
    void draw(Canvas canvas, double x, double top, double width, double height);
  }

  /** Text in the usual type of a table. */
  public static Cell of(String text) {
    return of(text, Style.CELL);
  }

  /** Text in a type of its own. */
  public static Cell of(String text, Style style) {
    return new Cell(List.of(new Piece(text, style)), null);
  }

  /** The mean with its ends on the line below. */
  public static Cell of(Drawn drawn) {
    return drawn.isExact()
        ? of(Words.range(drawn))
        : of(Words.mean(drawn), "(" + Words.ends(drawn) + ")");
  }

  /** A number with its ends on the line below, unless they are that number. */
  public static Cell of(String number, String ends) {
    return ends.equals("(" + number + ")")
        ? of(number)
        : new Cell(List.of(new Piece(number, Style.CELL), new Piece(ends, Style.NOTE)), null);
  }

  /** The mean with its ends beside it. */
  public static Cell inLine(Drawn drawn) {
    return of(Words.range(drawn), Style.FINE);
  }

  /** A mark that is drawn. */
  public static Cell ofMark(Mark mark) {
    return new Cell(List.of(), mark);
  }
}
