package swardcase.chance;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.special.Beta;

/**
 * Chances and quantiles of a proportion that is Beta(a, b): with a flat prior, a is one more than
 * the plants of the kind asked about and b one more than the others. 20 of 100 leave 0.54 above 20
 * %. Neither number need be whole: a count of clumped plants is divided by a design effect first.
 */
public final class Proportion {

  private Proportion() {}

  /**
   * The probability that a Beta({@code a}, {@code b}) proportion exceeds {@code threshold}. With
   * {@code a} = 0 the proportion is 0, with {@code b} = 0 it is 1.
   */
  public static double betaAbove(double threshold, double a, double b) {
    if (a <= 0) {
      return threshold < 0 ? 1 : 0;
    }
    if (b <= 0 || threshold <= 0) {
      return threshold < 1 ? 1 : 0;
    }
    return threshold >= 1 ? 0 : Beta.regularizedBeta(1 - threshold, b, a);
  }

  /** Quantile of Beta({@code a}, {@code b}). */
  static double quantile(double p, double a, double b) {
    return new BetaDistribution(null, a, b).inverseCumulativeProbability(p);
  }
}
