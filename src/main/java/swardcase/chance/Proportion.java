package swardcase.chance;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Beta;
import swardcase.check.Check;

/**
 * What a count says of a proportion: so many hits among so many looked at.
 *
 * <p>Neither number need be whole: a count of clumped plants is divided by a design effect first.
 *
 * @param hits plants of the kind asked about, 0 to {@code trials}
 * @param trials plants looked at
 */
public record Proportion(double hits, double trials) {

  /** Checks that the hits are among the trials. */
  public Proportion {
    Check.notNegative(trials, "plants looked at");
    Check.inRange(hits, 0, trials, "hits");
  }

  /** So many hits among so many looked at. */
  public static Proportion of(double hits, double trials) {
    return new Proportion(hits, trials);
  }

  /**
   * The score interval of Wilson (1927, "Probable inference, the law of succession, and statistical
   * inference", Journal of the American Statistical Association 22, 209-212): with z the normal
   * quantile, n the trials and p the observed proportion,
   *
   * <pre>(p + z²/2n ± z √(p(1−p)/n + z²/4n²)) / (1 + z²/n)</pre>
   *
   * <p>20 hits of 100 give 0.133 to 0.289 at 95 %. Nothing looked at gives 0 to 1.
   *
   * @param confidence between 0 and 1, such as 0.95
   * @return the ends, with the observed proportion as the likely value
   */
  public Range wilson(double confidence) {
    if (trials == 0) {
      return Range.of(0, 0.5, 1);
    }
    double z = zOf(confidence);
    double p = hits / trials;
    double perTrial = z * z / trials;
    double centre = p + perTrial / 2;
    double reach = z * Math.sqrt(p * (1 - p) / trials + perTrial / (4 * trials));
    double low = Math.max(0, (centre - reach) / (1 + perTrial));
    double high = Math.min(1, (centre + reach) / (1 + perTrial));
    return Range.of(Math.min(low, p), p, Math.max(high, p));
  }

  /**
   * The posterior probability that the proportion exceeds {@code threshold}, from the prior
   * Beta({@code prior}, {@code prior}): 1 − I(threshold; hits + prior, trials − hits + prior). With
   * the flat prior (1), 20 hits of 100 leave 0.54 above 20 %.
   */
  public double chanceAbove(double threshold, double prior) {
    Check.positive(prior, "prior");
    return betaAbove(threshold, hits + prior, trials - hits + prior);
  }

  /** The posterior quantile at probability {@code p} from the prior Beta(prior, prior). */
  public double quantile(double p, double prior) {
    Check.positive(prior, "prior");
    return quantile(p, hits + prior, trials - hits + prior);
  }

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

  /** The normal quantile that leaves half of 1 − {@code confidence} above it: 1.96 for 0.95. */
  static double zOf(double confidence) {
    Check.that(
        confidence > 0 && confidence < 1,
        "confidence must be between 0 and 1, but was %s",
        confidence);
    return new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + confidence) / 2);
  }
}
