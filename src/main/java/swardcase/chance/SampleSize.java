package swardcase.chance;

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
   * Plants needed to see at least one of a cultivar that makes up {@code share} of the plants, with
   * this chance: ln(1 − chance)/ln(1 − share), rounded up. One in twenty, 95 %: 59.
   */
  public static int toSeeOne(double share, double chance) {
    Check.that(share > 0 && share < 1, "share must be between 0 and 1, but was %s", share);
    Check.that(chance > 0 && chance < 1, "chance must be between 0 and 1, but was %s", chance);
    return (int) Math.ceil(Math.log1p(-chance) / Math.log1p(-share));
  }
}
