package swardcase.joining;

import swardcase.farm.HalfMonths;
import swardcase.outcome.OutcomeFunction;

/**
 * Ewes in lamb lost for the time being as a function of the day the rams go in, paddocks grazed as
 * now. Feed, lambing weather, ovulation through the year and prices change with the date as well;
 * none of them is counted here.
 */
final class JoiningDates {

  private JoiningDates() {}

  /** Ewes in lamb lost per 100 joined if a mob is joined from the start of half-month {@code k}. */
  static double points(OutcomeFunction run, int mob, int k) {
    double[] doses = new double[HalfMonths.COUNT];
    for (int p = 0; p < doses.length; p++) {
      doses[p] = run.flock(mob).doseNow(p);
    }
    return Losses.points(run, mob, doses, HalfMonths.dayOfYear(HalfMonths.start(k)));
  }
}
