package swardcase.decision;

import swardcase.chance.Sample;

/**
 * How one choice stands against keeping the paddock as it is, the rest of the plan being done.
 *
 * <p>The regret of acting is what is lost on average by having acted where keeping was better; that
 * of keeping is what is missed by having kept where acting was better. Their difference is the mean
 * gain. The share of acting in the two together says how lopsided the question is, whatever the
 * size of the paddock: 0 if acting is never regretted, 1 if it always is. Both standard errors are
 * those of independent draws.
 *
 * <p>A change takes somebody's time, so a gain counts only beyond the effort ({@link
 * swardcase.outcome.FarmModel#effortPerHa}).
 *
 * @param chanceItPays share of the draws in which acting gains more than the effort, 0 to 1
 * @param chanceError standard error of that share
 * @param regretOfActing in money
 * @param regretOfKeeping in money
 * @param regretShare share of acting in both regrets, 0 to 1; 1 if neither is ever regretted,
 *     because an action without effect is no reason to act
 * @param regretShareError standard error of that share
 */
public record Judgement(
    double chanceItPays,
    double chanceError,
    double regretOfActing,
    double regretOfKeeping,
    double regretShare,
    double regretShareError) {

  /** The chance from which acting is advised. */
  public static final double ACT_CHANCE = 2.0 / 3;

  /** The share of regret up to which acting is advised. */
  public static final double ACT_REGRET = 1.0 / 3;

  /** The chance up to which keeping is advised. */
  public static final double KEEP_CHANCE = 1.0 / 3;

  /** The share of regret from which keeping is advised. */
  public static final double KEEP_REGRET = 2.0 / 3;

  private static final double ERRORS = 2;

  /** Judges the gain over keeping, less the effort, in each draw. */
  static Judgement of(double[] gain) {
    int n = gain.length;
    double chance = Sample.share(gain, value -> value > 0);
    double acting = 0;
    double keeping = 0;
    for (double value : gain) {
      acting += Math.max(0, -value) / n;
      keeping += Math.max(0, value) / n;
    }
    double both = acting + keeping;
    double share = both > 0 ? acting / both : 1;
    double squares = 0;
    for (double value : gain) {
      double residual = both > 0 ? (Math.max(0, -value) - share * Math.abs(value)) / both : 0;
      squares += residual * residual;
    }
    return new Judgement(
        chance,
        Math.sqrt(chance * (1 - chance) / n),
        acting,
        keeping,
        share,
        Math.sqrt(squares) / n);
  }

  /** Whether acting is right beyond the error of the draws. */
  boolean speaksForActing() {
    return chanceItPays - ERRORS * chanceError >= ACT_CHANCE
        && regretShare + ERRORS * regretShareError <= ACT_REGRET;
  }

  /** Whether keeping is right beyond the error of the draws. */
  boolean speaksForKeeping() {
    return chanceItPays + ERRORS * chanceError <= KEEP_CHANCE
        && regretShare - ERRORS * regretShareError >= KEEP_REGRET;
  }
}
