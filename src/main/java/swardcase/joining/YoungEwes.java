package swardcase.joining;

import swardcase.farm.HalfMonths;
import swardcase.outcome.OutcomeFunction;

/**
 * Replacement ewe lambs and maidens: what a whole green season in a paddock does to them for good.
 * Lasting harm builds up with days on green oestrogenic clover whatever the date of joining, so
 * young ewes, which have all their joinings before them, are kept off through the green season.
 *
 * <p>Days allowed in a season are those after which 3 in 100 would be barren, what can be told from
 * normal variation: with s = 1 - (1 - q)^S and S in proportion to days, days = green days x ln(1 -
 * 0.03) / ln(1 - s of the whole season). Where a season costs 12 in 100 and has 180 green days it
 * is 43 days.
 */
final class YoungEwes {

  private YoungEwes() {}

  /** Ewes barren for good per 100 after one green season in a paddock alone. */
  static double barrenPercent(OutcomeFunction run, int paddock) {
    return 100 * run.flock(0).barrenAfterYearOn(run.flock(0).power(run.greenDose(paddock)));
  }

  /** Days of the year weighed by how green the feed is. */
  static double greenDays(OutcomeFunction run) {
    double sum = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      sum += HalfMonths.days(p) * Math.min(1, run.greenShare(p));
    }
    return sum;
  }

  /** Green days a season that a young ewe may spend there; all of them if that is no harm. */
  static double daysAllowed(double barrenPercent, double greenDays, double tellablePercent) {
    if (barrenPercent <= tellablePercent) {
      return greenDays;
    }
    return greenDays * Math.log(1 - tellablePercent / 100) / Math.log(1 - barrenPercent / 100);
  }
}
