package swardcase.reproduction;

/**
 * Share of the joined ewes that end in lamb.
 *
 * <p>J = joining days / 17 cycles; p0 = 1 - (1 - R0)^(1/J) is the chance of conceiving in one cycle
 * that gives the unaffected share R0; in cycle j it is p0 M_j; and
 *
 * <p>R = (1 - s) (1 - product over cycles of (1 - p0 M_j)^f_j)
 *
 * <p>with s the share sterile and f_j = 1, for the last cycle the part of it that is joined. Cycles
 * are taken as independent and ewes as alike. 89 % after two cycles means 67 % a cycle; under a
 * multiplier of 0.72 it becomes 73 %.
 */
public final class Pregnancy {

  /** The high end of {@code flock.pregnant-percent}: what good flocks reach. */
  static final double HIGHEST_UNAFFECTED = 0.99;

  private static final int HALVINGS = 52;
  private static final double ROUNDING = 1e-9;

  private Pregnancy() {}

  /** p0, the chance of conceiving in one cycle, from the share in lamb after all of joining. */
  public static double perCycleConception(double pregnantShare, double joiningWeeks) {
    return 1 - Math.pow(1 - pregnantShare, JoiningWalk.CYCLE_DAYS / (7 * joiningWeeks));
  }

  /** R, from p0, the multiplier of each started cycle and the share sterile. */
  public static double pregnantShare(
      double perCycle, double joiningWeeks, double[] multiplierByCycle, double sterileShare) {
    int last = JoiningWalk.cycles(joiningWeeks) - 1;
    double empty = 1;
    for (int j = 0; j < last; j++) {
      empty *= 1 - perCycle * multiplierByCycle[j];
    }
    double lastPart = 7 * joiningWeeks / JoiningWalk.CYCLE_DAYS - last;
    empty *= Math.pow(1 - perCycle * multiplierByCycle[last], lastPart);
    return (1 - sterileShare) * (1 - empty);
  }

  /**
   * Whether a flock that without oestrogen has at most 0.99 in lamb, or as many as were seen if
   * those are more, can show under this effect what was seen.
   */
  static boolean canBeSeen(
      double observedShare, double joiningWeeks, double[] multiplierByCycle, double sterileShare) {
    double best = perCycleConception(Math.max(HIGHEST_UNAFFECTED, observedShare), joiningWeeks);
    return pregnantShare(best, joiningWeeks, multiplierByCycle, sterileShare)
        >= observedShare - ROUNDING;
  }

  /**
   * R0, the share in lamb without oestrogen, from the share seen under this effect, by bisection.
   *
   * <p>At most 0.99: where the effect is so strong that no flock could show what was seen, 0.99 is
   * returned. A share seen above 0.99 is returned as it is. Without effect R0 is the share seen.
   */
  public static double unaffectedShare(
      double observedShare, double joiningWeeks, double[] multiplierByCycle, double sterileShare) {
    double highestShare = Math.max(HIGHEST_UNAFFECTED, observedShare);
    double low = perCycleConception(observedShare, joiningWeeks);
    double high = perCycleConception(highestShare, joiningWeeks);
    if (pregnantShare(low, joiningWeeks, multiplierByCycle, sterileShare) >= observedShare) {
      return observedShare;
    }
    if (pregnantShare(high, joiningWeeks, multiplierByCycle, sterileShare) <= observedShare) {
      return highestShare;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (pregnantShare(middle, joiningWeeks, multiplierByCycle, sterileShare) < observedShare) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double perCycle = (low + high) / 2;
    return 1 - Math.pow(1 - perCycle, 7 * joiningWeeks / JoiningWalk.CYCLE_DAYS);
  }
}
