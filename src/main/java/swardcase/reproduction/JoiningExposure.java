package swardcase.reproduction;

import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import swardcase.check.Check;
import swardcase.farm.HalfMonths;

/**
 * What a year of doses leaves of the chance of conceiving in each cycle of joining.
 *
 * <p>A walk by days, started {@value #RUN_UP_DAYS} days before joining at that day's full effect.
 * With target(t) = 1 - T(dose of day t) and e the effect carried:
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

    int[] place = fullEffect.length == HalfMonths.DAYS ? DAY_OF : HALF_MONTH_OF;
    int start = Math.floorMod(joiningStartDayOfYear - RUN_UP_DAYS, HalfMonths.DAYS);
    double effect = fullEffect[place[start]];
    double longFloor = effect;
    double shortFloor = effect;
    double sum = 0;
    for (int known = 1; known < RUN_UP_DAYS + joiningDays; known++) {
      int date = start + known;
      double target = fullEffect[place[date]];
      if (target >= longFloor) {
        longFloor = target;
      } else if (leaves(fullEffect, place, date, wholeLag + 1, known, longFloor)) {
        longFloor = highest(fullEffect, place, date, wholeLag + 1);
      }
      if (target >= shortFloor) {
        shortFloor = target;
      } else if (leaves(fullEffect, place, date, wholeLag, known, shortFloor)) {
        shortFloor = highest(fullEffect, place, date, wholeLag);
      }
      double risen = effect + target * rise;
      risen = risen < target ? risen : target;
      double kept = recover(recover(effect, longFloor, keptInLastPart), shortFloor, keptInRest);
      effect = risen > kept ? risen : kept;
      int day = known - RUN_UP_DAYS;
      if (day >= 0) {
        sum += 1 - effect;
        if (day % CYCLE == CYCLE - 1 || day == joiningDays - 1) {
          multiplierByCycle[day / CYCLE] = sum / (day % CYCLE + 1);
          sum = 0;
        }
      }
    }
  }

  private static double recover(double effect, double floor, double kept) {
    return effect <= floor ? effect : floor + (effect - floor) * kept;
  }

  /**
   * Whether the highest effect of the window until yesterday goes out of it today. The window moves
   * on by a day at a time, so it need be looked through only then.
   */
  private static boolean leaves(
      double[] effect, int[] place, int date, int daysBack, int known, double highest) {
    if (known <= daysBack) {
      return false;
    }
    int left = place[date - daysBack - 1];
    return left != place[date - daysBack] && effect[left] >= highest;
  }

  /** Highest effect from {@code daysBack} days before a date to that day. */
  private static double highest(double[] effect, int[] place, int date, int daysBack) {
    double highest = effect[place[date]];
    for (int back = 1; back <= daysBack; back++) {
      highest = Math.max(highest, effect[place[date - back]]);
    }
    return highest;
  }

  private static int[] places(IntUnaryOperator ofDay) {
    return IntStream.range(0, 4 * HalfMonths.DAYS).map(ofDay).toArray();
  }
}
