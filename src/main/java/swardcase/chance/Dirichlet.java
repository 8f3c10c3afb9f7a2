package swardcase.chance;

import java.util.random.RandomGenerator;
import swardcase.check.Check;

/**
 * The Dirichlet distribution of shares that add up to one.
 *
 * <p>With parameters α_i and A their sum: mean m_i = α_i/A, variance m_i(1 − m_i)/(A + 1),
 * covariance −m_i m_j/(A + 1); any group of shares together is Beta(sum of its α, A minus that
 * sum).
 */
public final class Dirichlet {

  private final double[] alpha;
  private final double total;

  private Dirichlet(double[] alpha) {
    Check.that(alpha.length > 0, "there must be at least one share");
    double sum = 0;
    for (double parameter : alpha) {
      sum += Check.positive(parameter, "Dirichlet parameter");
    }
    this.alpha = alpha.clone();
    this.total = sum;
  }

  /** The distribution with these parameters, each more than zero. */
  public static Dirichlet of(double... alpha) {
    return new Dirichlet(alpha);
  }

  /** The parameter of share {@code i}. */
  public double alpha(int i) {
    return alpha[i];
  }

  /** The sum of the parameters. */
  public double total() {
    return total;
  }

  /** The mean of share {@code i}. */
  public double mean(int i) {
    return alpha[i] / total;
  }

  /**
   * The 5 % quantile, the mean and the 95 % quantile of one share or of a group of shares taken
   * together. Where the mean of a very skewed share lies outside the quantiles, the nearer end is
   * moved out to it.
   *
   * @param alphaOfGroup the sum of the parameters of the group, 0 to {@link #total()}
   */
  public Range interval(double alphaOfGroup) {
    double rest = total - alphaOfGroup;
    if (rest <= total * 1e-12) {
      return Range.exactly(1);
    }
    if (alphaOfGroup <= 0) {
      return Range.exactly(0);
    }
    double mean = alphaOfGroup / total;
    return Range.of(
        Math.min(mean, Proportion.quantile(0.05, alphaOfGroup, rest)),
        mean,
        Math.max(mean, Proportion.quantile(0.95, alphaOfGroup, rest)));
  }

  /**
   * Replaces the parameters, each more than zero, by shares drawn with them: gamma draws divided by
   * their sum. Allocates nothing.
   */
  public static void sampleInPlace(RandomGenerator random, double[] parametersThenShares) {
    double total = 0;
    double sum = 0;
    double[] share = parametersThenShares;
    for (int i = 0; i < share.length; i++) {
      total += share[i];
    }
    for (int i = 0; i < share.length; i++) {
      share[i] = gamma(random, share[i]) / total;
      sum += share[i];
    }
    for (int i = 0; i < share.length; i++) {
      share[i] = sum > 0 ? share[i] / sum : 1.0 / share.length;
    }
  }

  /**
   * A gamma draw of this shape and scale 1, by Marsaglia and Tsang (2000, "A simple method for
   * generating gamma variables", ACM Transactions on Mathematical Software 26, 363-372). A shape
   * below 1 is drawn one higher and multiplied by U^(1/shape), as they advise.
   */
  static double gamma(RandomGenerator random, double shape) {
    if (shape < 1) {
      return gamma(random, shape + 1) * Math.pow(1 - random.nextDouble(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double x = random.nextGaussian();
      double v = 1 + c * x;
      if (v > 0) {
        v = v * v * v;
        double u = 1 - random.nextDouble();
        if (Math.log(u) < 0.5 * x * x + d * (1 - v + Math.log(v))) {
          return d * v;
        }
      }
    }
  }
}
