package swardcase.reproduction;

import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import swardcase.check.Check;
import swardcase.farm.HalfMonths;

/**
 * What a year of doses leaves of the chance of conceiving in each cycle of joining.
 *
 * <p>A walk by days, in strides over days that change nothing, started {@value #RUN_UP_DAYS} days
 * before joining at that day's full effect. With target(t) = 1 - T(dose of day t) and e the effect
 * carried:
 *
 * <ul>
 *   <li>building up: e rises by target / rampDays a day, to the target at most;
 *   <li>after the dose falls: nothing for {@code lagDays}, then the excess halves every {@code
 *       halfLifeDays}. The excess is over the strongest target of the last {@code lagDays} days, so
 *       that a higher dose on any day never leaves a weaker effect later.
 * </ul>
 *
 * <p>The multiplier of a cycle is the mean of 1 - e over its days of joining. After leaving for
 * good at an effect e, t days later e x 2^(-max(0, t - lag) / h) is left: with lag 17 and h 7 days,
 * 34 % after 28 days and 8 % after 42.
 *
 * <p>Lag and half-life are inferred: in McDonald, Anwar and Keogh 1994 (Proc. NZ Soc. Anim. Prod.
 * 54:231-234) ewes mated in the 17 days after leaving still failed in full, most held at the next
 * two cycles, and none were affected after six weeks on grass. The build-up follows Anwar, Keogh
 * and McDonald 1994 (same volume, 235-238), who found fewer ovulations after two weeks.
 */
public final class JoiningExposure {

  /** Days between heats of a ewe. */
  public static final double CYCLE_DAYS = 17;

  private static final int CYCLE = (int) CYCLE_DAYS;
  private static final int RUN_UP_DAYS = 120;

  // Where each day of four years stands among 24 half-months and among 365 days.
  private static final int[] HALF_MONTH_OF = places(HalfMonths::ofDay);
  private static final int[] DAY_OF = places(day -> day % HalfMonths.DAYS);
  private static final int[] NEXT_HALF_MONTH = next(HALF_MONTH_OF);
  private static final int[] NEXT_DAY = next(DAY_OF);

  private JoiningExposure() {}

  /** Cycles started in a joining: 2 for 34 days, 3 for five weeks. */
  public static int cycles(double joiningWeeks) {
    return Math.max(1, (int) Math.ceil(7 * joiningWeeks / CYCLE_DAYS - 1e-9));
  }

  /**
   * Fills {@code multiplierByCycle}, which must hold {@link #cycles} values or more, with the mean
   * multiplier of each cycle; values beyond are left alone.
   *
   * @param dosePercent formononetin, % of dry matter eaten, by half-month (24 values) or by day
   *     (365)
   * @param joiningStartDayOfYear from 0, 1 January
   * @param joiningWeeks length of joining; of the last cycle only its days of joining count
   * @param d50 dose that halves conception, %
   * @param n steepness of the curve
   * @param rampDays days of grazing until the full effect
   * @param lagDays days without recovery; part days count
   * @param halfLifeDays days in which the effect then halves
   */
  public static void multipliers(
      double[] dosePercent,
      int joiningStartDayOfYear,
      double joiningWeeks,
      double d50,
      double n,
      double rampDays,
      double lagDays,
      double halfLifeDays,
      double[] multiplierByCycle) {
    double[] effect = new double[dosePercent.length];
    DoseResponse.effects(dosePercent, d50, n, effect);
    multipliersOfEffects(
        effect,
        joiningStartDayOfYear,
        joiningWeeks,
        rampDays,
        lagDays,
        halfLifeDays,
        multiplierByCycle);
  }

  /**
   * The same from the full effect of each dose, 1 - T, by half-month (24 values) or by day (365).
   * Allocates nothing.
   */
  public static void multipliersOfEffects(
      double[] fullEffect,
      int joiningStartDayOfYear,
      double joiningWeeks,
      double rampDays,
      double lagDays,
      double halfLifeDays,
      double[] multiplierByCycle) {
    int cycles = cycles(joiningWeeks);
    if (multiplierByCycle.length < cycles) {
      Check.that(false, "there must be room for %s cycles", cycles);
    }
    int joiningDays = Math.max(1, (int) Math.ceil(7 * joiningWeeks - 1e-9));
    int wholeLag = (int) Math.floor(lagDays);
    double partLag = lagDays - wholeLag;
    double keptInLastPart = Math.pow(2, -partLag / halfLifeDays);
    double keptInRest = Math.pow(2, -(1 - partLag) / halfLifeDays);
    double rise = Math.min(1, 1 / rampDays);

    boolean byDay = fullEffect.length == HalfMonths.DAYS;
    int[] place = byDay ? DAY_OF : HALF_MONTH_OF;
    int[] next = byDay ? NEXT_DAY : NEXT_HALF_MONTH;
    int start = Math.floorMod(joiningStartDayOfYear - RUN_UP_DAYS, HalfMonths.DAYS);
    int joining = start + RUN_UP_DAYS;
    int end = joining + joiningDays;
    double effect = fullEffect[place[start]];
    int cycle = 0;
    int endOfCycle = joining;
    double sum = 0;
    int date = start + 1;
    while (date < end) {
      if (date == endOfCycle) {
        endOfCycle = Math.min(end, date + CYCLE);
        sum = 0;
      }
      // Until this day target and floors stay what they are.
      int first = Math.max(start, date - wholeLag - 1);
      int shortFirst = Math.max(start, date - wholeLag);
      int until = Math.min(endOfCycle, next[date]);
      until = Math.min(until, next[first] + wholeLag + 1);
      until = Math.min(until, next[shortFirst] + wholeLag);
      double target = fullEffect[place[date]];
      double shortFloor = highest(fullEffect, place, next, shortFirst, date);
      double longFloor = Math.max(shortFloor, fullEffect[place[first]]);
      double step = target * rise;
      for (; date < until; date++) {
        if (effect < target) {
          effect = Math.min(effect + step, target);
        } else if (effect > shortFloor) {
          effect = recover(recover(effect, longFloor, keptInLastPart), shortFloor, keptInRest);
        } else {
          sum += (until - date) * (1 - effect);
          date = until;
          break;
        }
        sum += 1 - effect;
      }
      if (date == endOfCycle && date > joining) {
        multiplierByCycle[cycle] = sum / (date - joining - cycle * CYCLE);
        cycle++;
      }
    }
  }

  private static double recover(double effect, double floor, double kept) {
    return effect <= floor ? effect : floor + (effect - floor) * kept;
  }

  /** Highest effect from one day to another. */
  private static double highest(double[] effect, int[] place, int[] next, int from, int to) {
    double highest = effect[place[to]];
    for (int date = from; date < to; date = next[date]) {
      highest = Math.max(highest, effect[place[date]]);
    }
    return highest;
  }

  /** For each day the first later one that stands at another place. */
  private static int[] next(int[] place) {
    int[] next = new int[place.length];
    for (int date = place.length - 1; date >= 0; date--) {
      boolean last = date == place.length - 1 || place[date] != place[date + 1];
      next[date] = last ? date + 1 : next[date + 1];
    }
    return next;
  }

  private static int[] places(IntUnaryOperator ofDay) {
    return IntStream.range(0, 4 * HalfMonths.DAYS).map(ofDay).toArray();
  }
}
