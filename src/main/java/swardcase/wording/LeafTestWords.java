package swardcase.wording;

import swardcase.report.LeafTestResult;

/** What a leaf test says of the names given in the same paddock. */
public final class LeafTestWords {

  private LeafTestWords() {}

  /** How far the test is from what the names can have, and what to do about it. */
  public static String note(LeafTestResult test) {
    return Texts.of(
        "leafTest",
        test.side(),
        hundredths(test.namesPercentOfLeaf().low()),
        hundredths(test.namesPercentOfLeaf().high()));
  }

  private static String hundredths(double percent) {
    return Words.exact(Math.rint(percent * 100) / 100);
  }
}
