package swardcase.chance;

import java.util.Arrays;
import swardcase.check.Check;

/**
 * The certain sum that a person would as soon have as an uncertain one.
 *
 * <p>With exponential utility U(x) = −e^(−x/R) and risk tolerance R, CE = −R ln Σ p_i e^(−x_i/R);
 * for small risks nearly mean − variance/2R, and the mean for somebody who does not mind risk (R
 * without limit). A sum added to every outcome is added to the equivalent. With R = 900, 2,000 or
 * 1,000 or 500 with chances 0.4, 0.4, 0.2 are worth 1,115 for certain, their mean being 1,300.
 */
public final class CertaintyEquivalent {

  private CertaintyEquivalent() {}

  /**
   * The equivalent of listed outcomes.
   *
   * @param tolerance R, more than zero, in the unit of the outcomes
   */
  public static double of(double[] chance, double[] outcome, double tolerance) {
    Check.that(chance.length == outcome.length, "every outcome must have a chance");
    Check.that(tolerance > 0, "risk tolerance must be more than zero, but was %s", tolerance);
    double least = Double.POSITIVE_INFINITY;
    double total = 0;
    double mean = 0;
    for (int i = 0; i < outcome.length; i++) {
      total += chance[i];
      mean += chance[i] * outcome[i];
      least = chance[i] > 0 ? Math.min(least, outcome[i]) : least;
    }
    Check.inRange(total, 1 - 1e-9, 1 + 1e-9, "sum of the chances");
    if (Double.isInfinite(tolerance)) {
      return mean;
    }
    // Measured from the least outcome, so that no power overflows.
    double sum = 0;
    for (int i = 0; i < outcome.length; i++) {
      sum += chance[i] > 0 ? chance[i] * Math.exp(-(outcome[i] - least) / tolerance) : 0;
    }
    return least - tolerance * Math.log(sum);
  }

  /** The equivalent of equally likely outcomes. */
  public static double ofSample(double[] outcome, double tolerance) {
    double[] chance = new double[outcome.length];
    Arrays.fill(chance, 1.0 / outcome.length);
    return of(chance, outcome, tolerance);
  }
}
