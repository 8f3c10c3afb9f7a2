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
    canvas.box(low, middle - height / 2, Math.max(0.6, high - low), height, Tint.OCHRE);
    canvas.frame(low, middle - height / 2, Math.max(0.6, high - low), height, 0.5, Tint.INK);
    double reach = height / 2 + 2;
    canvas.line(mean, middle - reach, mean, middle + reach, 1.8, Tint.INK);
  }
}
