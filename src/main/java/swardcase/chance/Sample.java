package swardcase.chance;

import java.util.Arrays;
import java.util.function.DoublePredicate;
import swardcase.check.Check;

/** Plain sums over drawn values, always in the order of the draws, and their quantiles. */
public final class Sample {

  private Sample() {}

  /** Weights of so many draws that count alike, 1 each. */
  public static double[] alike(int count) {
    double[] weights = new double[count];
    Arrays.fill(weights, 1);
    return weights;
  }

  /** Arithmetic mean. */
  public static double mean(double[] values) {
    Check.that(values.length > 0, "a mean needs at least one value");
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** Standard deviation, dividing by one less than the number of values; 0 for one value. */
  public static double standardDeviation(double[] values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return values.length == 1 ? 0 : Math.sqrt(squares / (values.length - 1));
  }

  /** Share of the values of which this holds. */
  public static double share(double[] values, DoublePredicate holds) {
    int count = 0;
    for (double value : values) {
      count += holds.test(value) ? 1 : 0;
    }
    return (double) count / values.length;
  }

  /** The first values less the second, one by one. */
  public static double[] difference(double[] first, double[] second) {
    Check.that(first.length == second.length, "samples must be equally long");
    double[] difference = new double[first.length];
    for (int i = 0; i < difference.length; i++) {
      difference[i] = first[i] - second[i];
    }
    return difference;
  }

  /**
   * The quantile at probability {@code p} by linear interpolation between order statistics: type 7
   * of Hyndman and Fan (1996, "Sample quantiles in statistical packages", The American Statistician
   * 50, 361-365), position (n - 1) p. The 0.25 quantile of 1, 2, 3, 4 is 1.75.
   *
   * @param sorted the sample in rising order, at least one value
   * @param p from 0 (the least value) to 1 (the greatest)
   */
  public static double quantile(double[] sorted, double p) {
    Check.that(sorted.length > 0, "a quantile needs at least one value");
    Check.inRange(p, 0, 1, "probability of a quantile");
    double position = (sorted.length - 1) * p;
    int below = (int) position;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
  }
}
