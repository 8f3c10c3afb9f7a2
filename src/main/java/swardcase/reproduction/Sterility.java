package swardcase.reproduction;

import swardcase.farm.HalfMonths;

/**
 * Ewes made barren for good by seasons on oestrogenic clover.
 *
 * <p>S = sum over seasons of w(d) x days / 180, w(d) = (1 - T(d)) / (1 - T(reference)), so that S
 * is 1 for 180 days at the reference dose (0.5 % of dry matter eaten); s = 1 - (1 - q)^S. T is
 * {@link DoseResponse}. The same curve stands above and below the line, whatever its D50, which
 * keeps the meaning of S = 1; a sharper curve then moves only the doses around it. At D50 0.41 %
 * and n 3, w(0.3) is 0.44; five seasons at S = 1 and q = 0.12 leave 47 % barren.
 *
 * <p>The effect is on the season's outcome, not on each mating: ewes that lambed after years on red
 * clover held to first service as well as others, and the failures were the same ewes year after
 * year (fine-wool Merino trial 1957 to 1962, Aust. J. Agric. Res. 1965). q is inferred from trials
 * whose doses are not known and were set to w = 1; it does not bracket the outbreaks of the 1940s.
 */
public final class Sterility {

  private static final double SEASON_DAYS = 180;

  private Sterility() {}

  /** Days of the year in full effect that would do as much: 1 - T of each half-month x its days. */
  public static double daysInFullEffect(double[] effect) {
    double days = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      days += effect[p] * HalfMonths.days(p);
    }
    return days;
  }

  /** S of so many days in full effect; {@code referenceEffect} is 1 - T of the reference dose. */
  public static double exposureOfDays(double daysInFullEffect, double referenceEffect) {
    return daysInFullEffect / SEASON_DAYS / referenceEffect;
  }
}
