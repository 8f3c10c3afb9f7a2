package swardcase.chance;

import java.util.Arrays;

/**
 * How a drawn number spreads, such as a gain: its mean and ends as a {@link Drawn}, how often it is
 * above nothing, and how well its mean is known.
 *
 * @param mean over the draws
 * @param low passed downwards in 5 draws of 100
 * @param high passed upwards in 5 draws of 100
 * @param chancePays share of the draws in which it is above nothing, 0 to 1
 * @param standardError of the mean
 */
public record Spread(
    double mean, double low, double high, double chancePays, double standardError) {

  /** Nothing in any draw. */
  public static final Spread NOTHING = new Spread(0, 0, 0, 0, 0);

  /** The spread of values, one a draw in the order of the draws. */
  public static Spread of(double[] values, LatinHypercube draws) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return of(values, sorted, draws);
  }

  /** The same of values that stand sorted beside. */
  public static Spread of(double[] values, double[] sorted, LatinHypercube draws) {
    return new Spread(
        Sample.mean(values),
        Sample.quantile(sorted, 0.05),
        Sample.quantile(sorted, 0.95),
        Sample.share(values, value -> value > 0),
        draws.standardError(values));
  }

  /** Its mean, with 5 and 95 of 100. */
  public Drawn drawn() {
    return Drawn.of(mean, low, high);
  }
}
