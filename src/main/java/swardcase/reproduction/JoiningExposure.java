package swardcase.reproduction;

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

    double effect = fullEffect[place(fullEffect, joiningStartDayOfYear - RUN_UP_DAYS)];
    double longFloor = effect;
    double shortFloor = effect;
    double sum = 0;
    for (int day = 1 - RUN_UP_DAYS; day < joiningDays; day++) {
      int date = joiningStartDayOfYear + day;
      int daysKnown = day + RUN_UP_DAYS;
      double target = fullEffect[place(fullEffect, date)];
      longFloor = strongest(fullEffect, date, wholeLag + 1, daysKnown, longFloor);
      shortFloor = strongest(fullEffect, date, wholeLag, daysKnown, shortFloor);
      double risen = Math.min(target, effect + target * rise);
      double kept = recover(recover(effect, longFloor, keptInLastPart), shortFloor, keptInRest);
      effect = Math.max(risen, kept);
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

  /** Where a date stands among 24 half-months or 365 days. */
  private static int place(double[] ofYear, int date) {
    return ofYear.length == HalfMonths.DAYS
        ? Math.floorMod(date, HalfMonths.DAYS)
        : HalfMonths.ofDay(date);
  }

  /**
   * Highest value from {@code daysBack} days before {@code date} to that day, of the days known.
   * The window moves on by a day at a time, so it is looked through only when its highest value
   * leaves it.
   *
   * @param yesterday the highest value of the window of the day before
   */
  private static double strongest(
      double[] ofYear, int date, int daysBack, int daysKnown, double yesterday) {
    double today = ofYear[place(ofYear, date)];
    if (today >= yesterday) {
      return today;
    }
    if (daysBack >= daysKnown) {
      return yesterday;
    }
    int first = place(ofYear, date - daysBack);
    int left = place(ofYear, date - daysBack - 1);
    if (first == left || ofYear[left] < yesterday) {
      return yesterday;
    }
    int last = place(ofYear, date);
    double highest = ofYear[first];
    for (int p = first; p != last; ) {
      p = (p + 1) % ofYear.length;
      highest = Math.max(highest, ofYear[p]);
    }
    return highest;
  }
}
