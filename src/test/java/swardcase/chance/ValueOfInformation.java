package swardcase.chance;

import swardcase.check.Check;

/**
 * What it is worth to know more before choosing, where the states and what the choices pay in each
 * can be listed.
 *
 * <p>With chance p_s of state s, payoff v_as of choice a in it, and likelihood l_rs of result r in
 * state s (Raiffa and Schlaifer 1961, Applied Statistical Decision Theory, cited from memory):
 *
 * <pre>
 * best without            max over a of Σ_s p_s v_as
 * EVPI (perfect)          Σ_s p_s max_a v_as - best without
 * EVSI (of a sample)      Σ_r max_a Σ_s p_s l_rs v_as - best without
 * </pre>
 *
 * <p>A well that is wet with chance 0.4 and pays 600 or loses 200: knowing for certain is worth
 * 120.
 */
public final class ValueOfInformation {

  private ValueOfInformation() {}

  /** What the best choice pays on average as things stand. */
  public static double bestWithout(double[] chance, double[][] payoff) {
    check(chance, payoff);
    double[] weight = chance.clone();
    return best(weight, payoff);
  }

  /** Expected value of perfect information; never below zero. */
  public static double perfect(double[] chance, double[][] payoff) {
    double with = 0;
    for (int s = 0; s < chance.length; s++) {
      double most = Double.NEGATIVE_INFINITY;
      for (double[] choice : payoff) {
        most = Math.max(most, choice[s]);
      }
      with += chance[s] * most;
    }
    return Math.max(0, with - bestWithout(chance, payoff));
  }

  /**
   * Expected value of a test with listed results; never below zero.
   *
   * @param likelihood chance of each result (first index) in each state; sums to one over results
   */
  public static double ofTest(double[] chance, double[][] likelihood, double[][] payoff) {
    double with = 0;
    double[] weight = new double[chance.length];
    double[] total = new double[chance.length];
    for (double[] result : likelihood) {
      for (int s = 0; s < chance.length; s++) {
        weight[s] = chance[s] * Check.inRange(result[s], 0, 1, "likelihood of a result");
        total[s] += result[s];
      }
      with += best(weight, payoff);
    }
    for (double sum : total) {
      Check.inRange(sum, 1 - 1e-9, 1 + 1e-9, "sum of the likelihoods of all results");
    }
    return Math.max(0, with - bestWithout(chance, payoff));
  }

  private static double best(double[] weight, double[][] payoff) {
    double best = Double.NEGATIVE_INFINITY;
    for (double[] choice : payoff) {
      double sum = 0;
      for (int s = 0; s < weight.length; s++) {
        sum += weight[s] * choice[s];
      }
      best = Math.max(best, sum);
    }
    return best;
  }

  private static void check(double[] chance, double[][] payoff) {
    Check.that(payoff.length > 0, "there must be a choice");
    double sum = 0;
    for (double p : chance) {
      sum += Check.inRange(p, 0, 1, "chance of a state");
    }
    Check.inRange(sum, 1 - 1e-9, 1 + 1e-9, "sum of the chances");
    for (double[] choice : payoff) {
      Check.that(choice.length == chance.length, "a choice must have a payoff in every state");
    }
  }
}
