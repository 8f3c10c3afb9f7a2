package swardcase.decision;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * For each mob the day on which its rams could go in with less lost to oestrogen for the time
 * being, paddocks grazed as now: of the 1st and 16th of every month, the nearest to today's joining
 * that loses no more than a tenth of a ewe in 100 above the least, at likely inputs. What it saves
 * is read from the draws. Ewes barren for good are barren on any date. Feed at lambing, weather,
 * ovulation through the year and prices change with the date as well: none of them is counted.
 *
 * @param days by mob; empty where there is no better day
 */
record OtherDates(List<Optional<MonthDay>> days) {

  /** A tenth of a ewe in 100 is no reason to go further. */
  private static final double NEAR = 0.001;

  /** Those of a farm, at likely inputs. */
  static OtherDates of(FarmModel model, OutcomeFunction likely) {
    return new OtherDates(
        IntStream.range(0, model.farm().mobs().size()).mapToObj(g -> best(likely, g)).toList());
  }

  private static Optional<MonthDay> best(OutcomeFunction likely, int mob) {
    int now = today(likely, mob);
    double[] lost =
        IntStream.range(0, HalfMonths.COUNT).mapToDouble(k -> lost(likely, mob, day(k))).toArray();
    double least = Arrays.stream(lost).min().orElseThrow();
    return lost(likely, mob, now) <= least + NEAR
        ? Optional.empty()
        : IntStream.range(0, lost.length)
            .boxed()
            .filter(k -> lost[k] <= least + NEAR)
            .min(Comparator.comparingInt(k -> away(day(k), now)))
            .map(HalfMonths::start);
  }

  private static int today(OutcomeFunction run, int mob) {
    return HalfMonths.dayOfYear(run.flock(mob).mob().joiningStart());
  }

  private static int day(int halfMonth) {
    return HalfMonths.dayOfYear(HalfMonths.start(halfMonth));
  }

  private static int away(int day, int from) {
    int days = Math.abs(day - from);
    return Math.min(days, HalfMonths.DAYS - days);
  }

  /** Ewes in lamb more in a year, share of those joined, in the run as it is set. */
  double saved(OutcomeFunction run, int mob) {
    return days.get(mob)
        .map(day -> lost(run, mob, today(run, mob)) - lost(run, mob, HalfMonths.dayOfYear(day)))
        .orElse(0.0);
  }

  private static double lost(OutcomeFunction run, int mob, int day) {
    double[] dose =
        IntStream.range(0, HalfMonths.COUNT).mapToDouble(run.flock(mob)::doseNow).toArray();
    return run.flock(mob).lossOfJoining(dose, day);
  }
}
