package swardcase.joining;

import java.time.MonthDay;
import swardcase.farm.HalfMonths;
import swardcase.outcome.OutcomeFunction;

/**
 * Ewes in lamb lost for the time being as a function of the day the rams go in, paddocks grazed as
 * now. Feed, lambing weather, ovulation through the year and prices change with the date as well;
 * none of them is counted here.
 */
final class JoiningDates {

  private JoiningDates() {}

  /** Dates looked at: the 1st and 16th of every month. */
  static MonthDay date(int k) {
    return MonthDay.of(HalfMonths.month(k), k % 2 == 0 ? 1 : 16);
  }

  /** Ewes in lamb lost per 100 joined if a mob is joined from date {@code k}. */
  static double points(OutcomeFunction run, int mob, int k) {
    double[] doses = new double[HalfMonths.COUNT];
    for (int p = 0; p < doses.length; p++) {
      doses[p] = run.flock(mob).doseNow(p);
    }
    return Losses.points(run, mob, doses, HalfMonths.dayOfYear(date(k)));
  }
}
