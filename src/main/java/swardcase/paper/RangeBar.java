package swardcase.paper;

import swardcase.chance.Range;

/** A range as a bar from its low to its high end, with an upright stroke at the likely value. */
public final class RangeBar {

  private RangeBar() {}

  /** Draws a range at a height, {@code middle}, in points from the top of the page. */
  public static void draw(Canvas canvas, Range range, Scale scale, double middle, double height) {
    double low = scale.at(range.low());
    double high = scale.at(range.high());
    double likely = scale.at(range.likely());
    canvas.box(low, middle - height / 2, Math.max(0.6, high - low), height, Tint.OCHRE);
    canvas.frame(low, middle - height / 2, Math.max(0.6, high - low), height, 0.5, Tint.INK);
    double reach = height / 2 + 2;
    canvas.line(likely, middle - reach, likely, middle + reach, 1.8, Tint.INK);
  }
}
