package swardcase.draws;

import java.util.Arrays;
import swardcase.chance.Drawn;
import swardcase.chance.LatinHypercube;
import swardcase.chance.Sample;

/**
 * How a drawn number spreads.
 *
 * @param mean over the draws
 * @param standardError of the mean
 * @param standardDeviation over the draws
 * @param low passed downwards in 5 draws of 100
 * @param median half the draws lie below
 * @param high passed upwards in 5 draws of 100
 * @param chanceAboveZero share of the draws above zero, 0 to 1
 */
public record Spread(
    double mean,
    double standardError,
    double standardDeviation,
    double low,
    double median,
    double high,
    double chanceAboveZero) {

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
        draws.standardError(values),
        Sample.standardDeviation(values),
        Sample.quantile(sorted, 0.05),
        Sample.quantile(sorted, 0.5),
        Sample.quantile(sorted, 0.95),
        Sample.share(values, value -> value > 0));
  }

  /** Its mean, with 5 and 95 of 100. */
  public Drawn drawn() {
    return Drawn.of(mean, low, high);
  }
}
