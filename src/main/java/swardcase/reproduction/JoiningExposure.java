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
}
