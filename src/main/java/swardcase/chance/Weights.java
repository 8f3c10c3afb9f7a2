package swardcase.chance;

import swardcase.check.Check;

/**
 * Weights of draws that explain what was seen, each known by its logarithm but for a factor that is
 * the same for all.
 *
 * <p>(Σw)²/Σw² draws that count alike would tell as much as the weighed ones: their effective
 * number (Kish 1965, "Survey sampling", Wiley, for samples with unequal weights; from memory). Of
 * weights 1, 1, 2 that is 16/6 = 2.67.
 */
public final class Weights {

  private Weights() {}

  /** The effective number; 0 if no draw has a weight. */
  public static double effective(double[] logWeight) {
    double most = most(logWeight);
    if (most == Double.NEGATIVE_INFINITY) {
      return 0;
    }
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < logWeight.length; i++) {
      double weight = Math.exp(logWeight[i] - most);
      sum += weight;
      squares += weight * weight;
    }
    return sum * sum / squares;
  }

  /**
   * Picks draws in proportion to their weights: the weights stand one after the other on a line,
   * and points at equal distances along it, the first from {@code start}, pick those they fall on.
   * A draw is picked as often as its weight says, to one more or less. Where no draw has a weight
   * all count alike.
   *
   * @param start from 0 to below 1, in distances
   * @param into takes the places picked, in rising order
   */
  public static void pick(double[] logWeight, double start, int[] into) {
    Check.that(logWeight.length > 0, "weights must be given");
    double most = most(logWeight);
    double sum = 0;
    for (int i = 0; i < logWeight.length; i++) {
      sum += weight(logWeight[i], most);
    }
    double step = sum / into.length;
    int at = 0;
    double reached = weight(logWeight[0], most);
    for (int k = 0; k < into.length; k++) {
      double point = (k + start) * step;
      while (reached <= point && at < logWeight.length - 1) {
        at++;
        reached += weight(logWeight[at], most);
      }
      into[k] = at;
    }
  }

  private static double weight(double logWeight, double most) {
    return most == Double.NEGATIVE_INFINITY ? 1 : Math.exp(logWeight - most);
  }

  private static double most(double[] logWeight) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logWeight.length; i++) {
      most = Math.max(most, logWeight[i]);
    }
    return most;
  }
}
