package swardcase.wording;

import swardcase.sward.LeafAgreement;

/** What a leaf test says of the names given in the same paddock. */
public final class LeafTestWords {

  private LeafTestWords() {}

  /** How far the test is from what the names can have, and what to do about it. */
  public static String note(LeafAgreement test) {
    return Texts.of(
        "leafTest",
        test.side(),
        hundredths(test.namesPercentOfLeaf().low()),
        hundredths(test.namesPercentOfLeaf().high()));
  }

  static String hundredths(double value) {
    return Words.exact(Math.rint(value * 100) / 100);
  }
}
