package swardcase.draws;

import java.util.Map;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;

/**
 * How far draws of a number may go. The ends of a range are passed about one time in twenty on each
 * side, while a PERT distribution never passes its own; so that is given ends farther out.
 *
 * <p>A symmetrical PERT is Beta(3, 3) on its width, whose 5 % point lies 0.3107 of the width below
 * the middle: its half width is 0.5 / 0.3107 = 1.61 times the distance to that point. The same
 * factor is taken on both sides of every likely value; a range of 10, 20, 30 is drawn from 3.9 to
 * 36.1. What cannot be negative stays at 0 or above, and a share at 1, or 100 %, or below.
 */
final class DrawnReach {

  private static final double STRETCH = 1.61;

  /** The whole, in the units that shares are told in. */
  private static final Map<String, Double> WHOLE =
      Map.of("-", 1.0, "fraction", 1.0, "share", 1.0, "%", 100.0);

  private DrawnReach() {}

  static Range of(Assumption input) {
    Range range = input.range();
    double low = range.likely() - STRETCH * (range.likely() - range.low());
    double high = range.likely() + STRETCH * (range.high() - range.likely());
    double whole = WHOLE.getOrDefault(input.unit(), Double.POSITIVE_INFINITY);
    return Range.of(
        range.low() >= 0 ? Math.max(0, low) : low,
        range.likely(),
        range.high() <= whole ? Math.min(whole, high) : high);
  }
}
