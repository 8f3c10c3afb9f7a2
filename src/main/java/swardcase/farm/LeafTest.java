package swardcase.farm;

import swardcase.check.Check;

/**
 * A laboratory result for the clover leaf of a paddock.
 *
 * @param formononetinPercentOfLeaf per cent of leaf dry matter: 0.9 is 0.9 %
 * @param standardErrorPercent standard error in the same unit
 */
public record LeafTest(double formononetinPercentOfLeaf, double standardErrorPercent) {

  /** Checks ranges. */
  public LeafTest {
    Check.inRange(formononetinPercentOfLeaf, 0, 5, "formononetin, % of leaf dry matter");
    Check.inRange(standardErrorPercent, 0, 5, "standard error of formononetin");
  }
}
