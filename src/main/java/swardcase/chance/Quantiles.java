package swardcase.chance;

import swardcase.check.Check;

/** Quantiles of a sample. */
public final class Quantiles {

  private Quantiles() {}

  /**
   * The quantile at probability {@code p} by linear interpolation between order statistics: type 7
   * of Hyndman and Fan (1996, "Sample quantiles in statistical packages", The American Statistician
   * 50, 361-365), position (n - 1) p. The 0.25 quantile of 1, 2, 3, 4 is 1.75.
   *
   * @param sorted the sample in rising order, at least one value
   * @param p from 0 (the least value) to 1 (the greatest)
   */
  public static double ofSorted(double[] sorted, double p) {
    Check.that(sorted.length > 0, "a quantile needs at least one value");
    Check.inRange(p, 0, 1, "probability of a quantile");
    double position = (sorted.length - 1) * p;
    int below = (int) position;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
  }
}
