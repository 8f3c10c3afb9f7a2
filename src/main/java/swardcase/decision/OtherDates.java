package swardcase.decision;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.stream.IntStream;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * For each mob the day on which its rams could go in with less lost to oestrogen for the time
 * being, paddocks grazed as now: of the 1st and 16th of every month, the nearest to today's joining
 * that loses no more than {@value #NEAR} of the ewes above the least, at likely inputs. What it
 * saves is read from the draws. Ewes barren for good are barren on any date. Feed at lambing,
 * weather, ovulation through the year and prices change with the date as well: none of them is
 * counted.
 */
final class OtherDates {

  /** A tenth of a ewe in 100 is no reason to go further. */
  private static final double NEAR = 0.001;

  private final int[] nowDay;
  private final int[] halfMonth;
  private final double[] dose = new double[HalfMonths.COUNT];

  private OtherDates(int[] nowDay, int[] halfMonth) {
    this.nowDay = nowDay;
    this.halfMonth = halfMonth;
  }

  /** Every mob on its own date. */
  static OtherDates none(FarmModel model) {
    int[] days =
        model.farm().mobs().stream()
            .map(Mob::joiningStart)
            .mapToInt(HalfMonths::dayOfYear)
            .toArray();
    int[] none = new int[days.length];
    Arrays.fill(none, -1);
    return new OtherDates(days, none);
  }

  /** Those of a farm, at likely inputs. */
  static OtherDates of(FarmModel model, OutcomeFunction likely) {
    OtherDates own = none(model);
    int[] best = new int[own.nowDay.length];
    for (int g = 0; g < best.length; g++) {
      best[g] = own.best(likely, g);
    }
    return new OtherDates(own.nowDay, best);
  }

  /** The same with a workspace of its own. */
  OtherDates forThread() {
    return new OtherDates(nowDay, halfMonth);
  }

  private int best(OutcomeFunction likely, int mob) {
    double now = lost(likely, mob, nowDay[mob]);
    double[] lost =
        IntStream.range(0, HalfMonths.COUNT)
            .mapToDouble(k -> lost(likely, mob, HalfMonths.dayOfYear(HalfMonths.start(k))))
            .toArray();
    double least = Arrays.stream(lost).min().orElseThrow() + NEAR;
    int nearest = -1;
    if (now > least) {
      for (int k = 0; k < lost.length; k++) {
        if (lost[k] <= least && (nearest < 0 || away(mob, k) < away(mob, nearest))) {
          nearest = k;
        }
      }
    }
    return nearest;
  }

  private int away(int mob, int k) {
    int days = Math.abs(HalfMonths.dayOfYear(HalfMonths.start(k)) - nowDay[mob]);
    return Math.min(days, HalfMonths.DAYS - days);
  }

  /** Whether there is one. */
  boolean isFound(int mob) {
    return halfMonth[mob] >= 0;
  }

  /** The day. */
  MonthDay of(int mob) {
    return HalfMonths.start(halfMonth[mob]);
  }

  /** Ewes in lamb more in a year, share of those joined, in the run as it is set. */
  double saved(OutcomeFunction run, int mob) {
    return isFound(mob)
        ? lost(run, mob, nowDay[mob]) - lost(run, mob, HalfMonths.dayOfYear(of(mob)))
        : 0;
  }

  private double lost(OutcomeFunction run, int mob, int day) {
    for (int p = 0; p < dose.length; p++) {
      dose[p] = run.flock(mob).doseNow(p);
    }
    return run.flock(mob).lossOfJoining(dose, day);
  }
}
