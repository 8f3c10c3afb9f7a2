package swardcase.paper;

import swardcase.chance.Drawn;

/** A result as a bar from its low to its high end, with an upright stroke at its mean. */
public final class RangeBar {

  private RangeBar() {}

  /** Draws a result at a height, {@code middle}, in points from the top of the page. */
  public static void draw(Canvas canvas, Drawn drawn, Scale scale, double middle, double height) {
    double low = scale.at(drawn.low());
    double high = scale.at(drawn.high());
    double mean = scale.at(drawn.mean());
    canvas.bar(low, middle - height / 2, high - low, height, Fill.OCHRE);
    double reach = height / 2 + 2;
    canvas.line(mean, middle - reach, mean, middle + reach, 1.8, Tint.INK);
  }
}
