package swardcase.decision;

import swardcase.chance.Sample;

/**
 * How one choice stands against another of the same paddock, the rest of the plan being done.
 *
 * <p>The regret of acting is what is lost on average by having acted where not acting was better;
 * that of not acting is what is missed by not having acted where acting was better. Their
 * difference is the mean gain. The share of acting in the two together says how lopsided the
 * question is, whatever the size of the paddock: 0 if acting is never regretted, 1 if it always is.
 * Gains of -100, 200, 200 have a share of 100 / 500 = 0.2. The standard error is that of
 * independent draws.
 *
 * @param chanceItPays share of the draws in which acting gains, 0 to 1
 * @param regretOfActing in money
 * @param regretOfKeeping the regret of not acting, in money
 * @param regretShare share of acting in both regrets, 0 to 1; 1 if neither is ever regretted,
 *     because an action without effect is no reason to act
 * @param regretShareError standard error of that share
 */
public record Judgement(
    double chanceItPays,
    double regretOfActing,
    double regretOfKeeping,
    double regretShare,
    double regretShareError) {

  /** The share of regret up to which acting is sure. */
  public static final double SURE = 1.0 / 3;

  /** The share of regret from which keeping is sure. */
  public static final double KEEP = 2.0 / 3;

  private static final double ERRORS = 2;

  /** Judges what acting gains over not acting, in each draw. */
  static Judgement of(double[] gain) {
    return of(gain, Sample.alike(gain.length));
  }

  /**
   * The same with draws that do not count alike.
   *
   * @param weight of each draw, 1 on average
   */
  static Judgement of(double[] gain, double[] weight) {
    int n = gain.length;
    double acting = 0;
    double keeping = 0;
    double pays = 0;
    for (int d = 0; d < n; d++) {
      acting += weight[d] * Math.max(0, -gain[d]) / n;
      keeping += weight[d] * Math.max(0, gain[d]) / n;
      pays += gain[d] > 0 ? weight[d] : 0;
    }
    double both = acting + keeping;
    double share = both > 0 ? acting / both : 1;
    double squares = 0;
    for (int d = 0; d < n; d++) {
      double residual = both > 0 ? (Math.max(0, -gain[d]) - share * Math.abs(gain[d])) / both : 0;
      squares += weight[d] * weight[d] * residual * residual;
    }
    return new Judgement(pays / n, acting, keeping, share, Math.sqrt(squares) / n);
  }

  /** Whether acting is right beyond the error of the draws. */
  public boolean isSure() {
    return regretShare + ERRORS * regretShareError <= SURE;
  }

  /** Whether acting may be right, within the error of the draws. */
  public boolean isOpen() {
    return regretShare - ERRORS * regretShareError < KEEP;
  }

  /** Whether acting seems sure, but other draws may find that it is not. */
  public boolean isJustNotSure() {
    return !isSure() && regretShare <= SURE;
  }

  /** Whether keeping seems sure, but other draws may find that it is not. */
  public boolean isJustOpen() {
    return isOpen() && regretShare >= KEEP;
  }
}
