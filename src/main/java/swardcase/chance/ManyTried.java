package swardcase.chance;

import org.apache.commons.math3.distribution.NormalDistribution;
import swardcase.check.Check;

/**
 * The bar that rises with the number of things tried, so that the largest of many that are nothing
 * but noise seldom passes it: in fewer than 5 of 100 cases (Bonferroni's inequality).
 */
public final class ManyTried {

  private static final double ANY_BY_CHANCE = 0.05;

  private ManyTried() {}

  /**
   * The 1 − 0.05/m normal quantile, in standard errors above nothing: 1.64 for one tried, 2.58 for
   * ten, 3.29 for a hundred. Where a thing may differ either way it is two tries.
   *
   * @param tried m, one or more
   */
  public static double quantile(int tried) {
    Check.that(tried >= 1, "number tried must be one or more, but was %d", tried);
    return new NormalDistribution(null, 0, 1)
        .inverseCumulativeProbability(1 - ANY_BY_CHANCE / tried);
  }
}
