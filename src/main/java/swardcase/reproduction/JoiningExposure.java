package swardcase.reproduction;

/**
 * What a year of doses leaves of the chance of conceiving in each cycle of joining.
 *
 * <p>A walk by days ({@link JoiningWalk}), started {@value #RUN_UP_DAYS} days before joining at
 * that day's full effect. With target(t) = 1 - T(dose of day t) and e the effect carried:
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

  /** Days before joining on which the walk starts. */
  static final int RUN_UP_DAYS = 120;

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
    JoiningWalk walk = new JoiningWalk(joiningStartDayOfYear, joiningWeeks, dosePercent.length);
    walk.set(rampDays, lagDays, halfLifeDays);
    walk.multipliers(dosePercent, d50, n, multiplierByCycle);
  }
}
