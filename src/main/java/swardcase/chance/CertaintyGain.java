package swardcase.chance;

import swardcase.check.Check;

/**
 * What exchanging one uncertain sum for another adds to the {@link CertaintyEquivalent}, from
 * equally likely draws common to both.
 *
 * <p>With gain g_d of the exchange in draw d, risk tolerance R, and weights w_d in proportion to
 * e^(−x_d/R) of the first sum x, adding up to 1:
 *
 * <pre> CE(x + g) − CE(x) = −R ln s,   s = Σ w_d e^(−g_d/R) </pre>
 *
 * so that no power of a large sum is taken. Without limit to R it is the mean of g. Its plain
 * error, the draws taken as independent, is R/s √(Σ w_d² (e^(−g_d/R) − s)²), because a draw moves
 * it by R w_d (s − e^(−g_d/R))/s (the {@linkplain #influence influence} over the number of draws).
 * Draws of 0 or 1,000, exchanged for 300 for certain, with R = 1,000: the equivalent is 379.9, so
 * the exchange adds −79.9.
 */
public final class CertaintyGain {

  /** Gains beyond so many tolerances count as so many, that no power overflows. */
  private static final double MOST = 700;

  private final double[] base;
  private final double[] weight;
  private final double allWeights;
  private final double tolerance;

  /**
   * Exchanges for one sum.
   *
   * @param base the sum in each draw
   * @param tolerance R, more than zero, in the unit of the sum; without limit for the mean
   */
  public CertaintyGain(double[] base, double tolerance) {
    this(base, Sample.alike(base.length), tolerance);
  }

  /**
   * The same of draws that are not equally likely.
   *
   * @param chances in proportion to the chance of each draw
   */
  public CertaintyGain(double[] base, double[] chances, double tolerance) {
    Check.that(tolerance > 0, "risk tolerance must be more than zero, but was %s", tolerance);
    Check.that(base.length > 0, "a certainty equivalent needs at least one draw");
    this.base = base.clone();
    this.tolerance = tolerance;
    double least = Double.POSITIVE_INFINITY;
    for (double value : base) {
      least = Math.min(least, value);
    }
    weight = new double[base.length];
    double sum = 0;
    for (int d = 0; d < weight.length; d++) {
      weight[d] = chances[d] * Math.exp(-(base[d] - least) / tolerance);
      sum += weight[d];
    }
    allWeights = sum;
  }

  /** What is added by the exchange for another sum, one value for each draw. */
  public double of(double[] other) {
    double sum = sum(other);
    return isMean() ? sum : 0 - tolerance * Math.log(sum);
  }

  /**
   * What an exchange adds, with its plain error.
   *
   * @param gain the same as {@link #of}
   * @param plainError its error if the draws were independent
   */
  public record Gained(double gain, double plainError) {}

  /** What is added by the exchange for another sum, and the plain error of that. */
  public Gained gained(double[] other) {
    Check.that(other.length == base.length, "both sums must have a value for every draw");
    double[] term = new double[base.length];
    double sum = 0;
    for (int d = 0; d < base.length; d++) {
      term[d] = term(other[d] - base[d]);
      sum += weight[d] * term[d];
    }
    sum /= allWeights;
    double squares = 0;
    for (int d = 0; d < base.length; d++) {
      double moved = weight[d] * (term[d] - sum);
      squares += moved * moved;
    }
    double error = Math.sqrt(squares) / allWeights;
    return isMean()
        ? new Gained(sum, error)
        : new Gained(0 - tolerance * Math.log(sum), tolerance * error / sum);
  }

  /**
   * How far each draw moves the gain, times the number of draws; the mean is 0. The standard error
   * of that mean, in whatever way the draws were spread, is that of the gain.
   */
  public double[] influence(double[] other) {
    double sum = sum(other);
    double[] influence = new double[base.length];
    for (int d = 0; d < base.length; d++) {
      double apart = term(other[d] - base[d]) - sum;
      influence[d] =
          base.length * weight[d] / allWeights * (isMean() ? apart : -tolerance * apart / sum);
    }
    return influence;
  }

  private double sum(double[] other) {
    Check.that(other.length == base.length, "both sums must have a value for every draw");
    double sum = 0;
    for (int d = 0; d < base.length; d++) {
      sum += weight[d] * term(other[d] - base[d]);
    }
    return sum / allWeights;
  }

  private double term(double gain) {
    return isMean() ? gain : Math.exp(-Math.max(-MOST, Math.min(MOST, gain / tolerance)));
  }

  private boolean isMean() {
    return Double.isInfinite(tolerance);
  }
}
