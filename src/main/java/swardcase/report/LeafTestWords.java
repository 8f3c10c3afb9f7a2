package swardcase.report;

/** What a leaf test says of the names given in the same paddock. */
public final class LeafTestWords {

  private LeafTestWords() {}

  /** How far the test is from what the names can have, and what to do about it. */
  public static String note(LeafTestResult test) {
    String low = hundredths(test.namesPercentOfLeaf().low());
    String high = hundredths(test.namesPercentOfLeaf().high());
    return switch (test.side()) {
      case BELOW -> Texts.get("leafTest.below", low, high);
      case WITHIN -> Texts.get("leafTest.within", low, high);
      case ABOVE -> Texts.get("leafTest.above", low, high);
    };
  }

  private static String hundredths(double percent) {
    return Words.exact(Math.rint(percent * 100) / 100);
  }
}
