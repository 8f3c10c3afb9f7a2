package swardcase.chance;

import org.apache.commons.math3.special.Beta;
import swardcase.check.Check;

/**
 * How many plants to look at, if they are looked at independently of one another. Plants along a
 * walked line are clumped: multiply by the design effect.
 */
public final class SampleSize {

  private SampleSize() {}

  /**
   * Plants needed to know one proportion to within ± {@code halfWidth}: n = z² p(1 − p)/d², rounded
   * up. A share near 0.20 to within 0.05 at 95 % needs 246.
   *
   * @param proportion about what is expected, 0 to 1; 0.5 is the worst case
   * @param halfWidth as a fraction: 5 points are 0.05
   * @param confidence between 0 and 1
   */
  public static int forOneShare(double proportion, double halfWidth, double confidence) {
    Check.inRange(proportion, 0, 1, "proportion");
    Check.positive(halfWidth, "half width");
    double z = Proportion.zOf(confidence);
    return (int) Math.ceil(z * z * proportion * (1 - proportion) / (halfWidth * halfWidth));
  }

  /**
   * Plants needed to know the shares of all cultivars at once to within ± {@code halfWidth},
   * however many they are: the worst case of Thompson (1987, "Sample size for estimating
   * multinomial proportions", The American Statistician 41, 42-46), cited from memory and
   * recomputed. The largest over m of z²(1/m)(1 − 1/m)/d² with z at 1 − (1 − confidence)/2m. Ten
   * points at 95 % need 128.
   */
  public static int forAllShares(double halfWidth, double confidence) {
    Check.positive(halfWidth, "half width");
    double worst = 0;
    for (int m = 2; m <= 10; m++) {
      double z = Proportion.zOf(1 - (1 - confidence) / m);
      worst = Math.max(worst, z * z * (1.0 / m) * (1 - 1.0 / m));
    }
    return (int) Math.ceil(worst / (halfWidth * halfWidth));
  }

  /**
   * Plants needed to see at least one of a cultivar that makes up {@code share} of the plants, with
   * this chance: ln(1 − chance)/ln(1 − share), rounded up. One in twenty, 95 %: 59.
   */
  public static int toSeeOne(double share, double chance) {
    Check.that(share > 0 && share < 1, "share must be between 0 and 1, but was %s", share);
    Check.that(chance > 0 && chance < 1, "chance must be between 0 and 1, but was %s", chance);
    return (int) Math.ceil(Math.log1p(-chance) / Math.log1p(-share));
  }

  /**
   * The chance of more than {@code hits} hits among {@code plants} when the true share is {@code
   * share}: how often a rule such as "more than 20 of 100" raises its flag. At a true share of 0.20
   * that rule raises it 44 times in a hundred.
   */
  public static double chanceOfMoreThan(int hits, int plants, double share) {
    Check.that(hits >= 0 && hits < plants, "hits must be from 0 to %s, but was %s", plants, hits);
    Check.inRange(share, 0, 1, "share");
    return Beta.regularizedBeta(share, hits + 1.0, plants - hits);
  }
}
