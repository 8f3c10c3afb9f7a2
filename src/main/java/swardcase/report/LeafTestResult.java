package swardcase.report;

import swardcase.chance.Range;
import swardcase.sward.LeafAgreement;

/**
 * A paddock's leaf test beside what the cultivars named there can have.
 *
 * @param testedPercentOfLeaf formononetin by the test, with the ends of its 90 % interval
 * @param namesPercentOfLeaf what the names can have at least, likely and at most
 * @param side whether the test as a whole is below or above what the names can have
 */
public record LeafTestResult(
    Range testedPercentOfLeaf, Range namesPercentOfLeaf, LeafAgreement.Side side) {

  /** The record of an agreement. */
  public static LeafTestResult of(LeafAgreement agreement) {
    return new LeafTestResult(agreement.tested(), agreement.ofNames(), agreement.side());
  }

  /** Whether names and test cannot both be right. */
  public boolean isContrary() {
    return side != LeafAgreement.Side.WITHIN;
  }
}
