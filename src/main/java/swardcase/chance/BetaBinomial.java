package swardcase.chance;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;
import swardcase.check.Check;

/**
 * How many of n do a thing whose chance is not the same every time: the chance follows a beta
 * distribution, and n go by the chance of the day.
 *
 * <p>With mean chance m and correlation ρ between any two of the n, the beta distribution has α = m
 * (1 − ρ)/ρ and β = (1 − m)(1 − ρ)/ρ, and the count has mean n m and variance n m (1 − m) (1 + (n −
 * 1) ρ). With α = β = 1 every count from 0 to n is as likely as any other, 1/(n + 1).
 */
public final class BetaBinomial {

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private BetaBinomial() {}

  /**
   * Natural logarithm of the probability of a count.
   *
   * @param count from 0 to {@code of}
   * @param mean chance, above 0 and below 1
   * @param correlation above 0 and below 1
   */
  public static double logProbability(int count, int of, double mean, double correlation) {
    Check.that(count >= 0 && count <= of, "count must be from 0 to %s, but was %s", of, count);
    double sum = sum(correlation);
    double alpha = mean * sum;
    double beta = (1 - mean) * sum;
    return Gamma.logGamma(of + 1)
        - Gamma.logGamma(count + 1)
        - Gamma.logGamma(of - count + 1)
        + Beta.logBeta(count + alpha, of - count + beta)
        - Beta.logBeta(alpha, beta);
  }

  /** Variance of the share of the n that do it. */
  public static double varianceOfShare(int of, double mean, double correlation) {
    return mean * (1 - mean) * (1 + (of - 1) * correlation) / of;
  }

  /**
   * The share that is passed in 1 − u of cases: the normal distribution of the same mean and
   * variance, cut at 0 and 1.
   *
   * @param u above 0 and below 1
   */
  public static double shareAt(double u, int of, double mean, double correlation) {
    double deviation = Math.sqrt(varianceOfShare(of, mean, correlation));
    return Math.max(0, Math.min(1, mean + deviation * NORMAL.inverseCumulativeProbability(u)));
  }

  /** α + β. */
  private static double sum(double correlation) {
    Check.that(
        correlation > 0 && correlation < 1,
        "correlation must be above 0 and below 1, but was %s",
        correlation);
    return (1 - correlation) / correlation;
  }
}
