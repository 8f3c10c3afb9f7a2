package swardcase.chance;

import swardcase.check.Check;

/**
 * Whether one uncertain outcome is better than another for everybody.
 *
 * <p>With F the chance of no more than x: A dominates B in the first degree (better for all who
 * prefer more to less) if F_A ≤ F_B everywhere, and in the second degree (better for all of them
 * who also dislike risk) if the area under F_A from below up to any x is no more than that under
 * F_B; somewhere it must be less. For two samples of n equally likely values in rising order that
 * reads: a_i ≥ b_i for every i, and Σ_(j≤i) a_j ≥ Σ_(j≤i) b_j for every i.
 *
 * <p>2 or 3 dominates 1, 2, 3 or 4 in the second degree but not in the first.
 */
public final class Dominance {

  private Dominance() {}

  /** First degree. Both samples in rising order and equally long. */
  public static boolean firstDegree(double[] sortedA, double[] sortedB) {
    check(sortedA, sortedB);
    boolean better = false;
    for (int i = 0; i < sortedA.length; i++) {
      if (sortedA[i] < sortedB[i]) {
        return false;
      }
      better |= sortedA[i] > sortedB[i];
    }
    return better;
  }

  /** Second degree; what dominates in the first dominates in the second too. */
  public static boolean secondDegree(double[] sortedA, double[] sortedB) {
    check(sortedA, sortedB);
    double sum = 0;
    boolean better = false;
    for (int i = 0; i < sortedA.length; i++) {
      sum += sortedA[i] - sortedB[i];
      if (sum < 0) {
        return false;
      }
      better |= sum > 0;
    }
    return better;
  }

  private static void check(double[] a, double[] b) {
    Check.that(a.length == b.length && a.length > 0, "samples must be equally long");
  }
}
