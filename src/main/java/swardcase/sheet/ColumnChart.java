package swardcase.sheet;

import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import swardcase.chance.Drawn;
import swardcase.paper.Canvas;
import swardcase.paper.Fill;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.wording.Words;

/** An upright picture that is being drawn: a scale at its left and a column for each name. */
final class ColumnChart {

  private static final double HEAD = 14;
  private static final double FOOT = 18;

  private final Canvas canvas;
  private final Scale scale;
  private final double left;
  private final double column;

  /**
   * Draws the scale and the names.
   *
   * @param area where it stands, in points from the top left corner of the page
   * @param names those that have no room beside each other are left out by turns
   * @param values all that are to be shown; the scale runs from the least to the most
   */
  ColumnChart(
      Canvas canvas,
      Lettering lettering,
      Rectangle2D area,
      List<String> names,
      DoubleStream values) {
    this.canvas = canvas;
    DoubleSummaryStatistics ends = values.summaryStatistics();
    double bottom = area.getMaxY() - FOOT;
    scale = new Scale(ends.getMin(), ends.getMax(), bottom, area.getMinY() + HEAD);
    List<Double> ticks = scale.ticks(5);
    left = area.getMinX() + 8 + widest(lettering, ticks.stream().map(Words::exact).toList());
    column = (area.getMaxX() - left) / names.size();
    for (double tick : ticks) {
      double y = scale.at(tick);
      canvas.line(left, y, area.getMaxX(), y, tick == 0 ? 1 : 0.4, Tint.RULE);
      canvas.textTo(Words.exact(tick), left - 5, y + 2.6, Style.NOTE);
    }
    int every = (int) Math.ceil((widest(lettering, names) + 4) / column);
    for (int i = 0; i < names.size(); i += every) {
      canvas.textAround(lettering.clean(names.get(i)), middle(i), bottom + 11, Style.NOTE);
    }
  }

  private static double widest(Lettering lettering, List<String> words) {
    return words.stream().mapToDouble(word -> lettering.width(word, Style.NOTE)).max().orElse(0);
  }

  /** Where a value lies, in points from the top of the page. */
  double at(double value) {
    return scale.at(value);
  }

  /** Middle of a column, in points from the left of the page. */
  double middle(int i) {
    return left + (i + 0.5) * column;
  }

  /**
   * A bar between two values.
   *
   * @param from its left edge, as a share of the column's width from the column's own
   * @param width as a share of the column's width
   */
  void bar(int i, double from, double width, double low, double high, Fill fill) {
    double top = Math.min(at(low), at(high));
    double height = Math.abs(at(low) - at(high));
    canvas.bar(left + (i + from) * column, top, width * column, height, fill);
  }

  /** A range, in the middle of its column. */
  void range(int i, Drawn drawn, double width, Fill fill) {
    bar(i, 0.5 - width / 2, width, drawn.low(), drawn.high(), fill);
  }

  /** A stroke across a column. */
  void stroke(int i, double value, double width) {
    double half = width * column / 2;
    canvas.line(middle(i) - half, at(value), middle(i) + half, at(value), 1.8, Tint.INK);
  }
}
