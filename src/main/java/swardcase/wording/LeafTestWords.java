package swardcase.wording;

import java.util.Optional;
import swardcase.report.PaddockResult;
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

  /** What the leaf test of a paddock found, and what it says of the names; empty without both. */
  public static Optional<String> of(PaddockResult paddock) {
    return paddock
        .clover()
        .leafTest()
        .map(
            test ->
                Texts.get(
                    "sampling.leafTest",
                    paddock.name(),
                    Words.range(test.testedPercentOfLeaf()),
                    note(test)));
  }

  static String hundredths(double value) {
    return Words.exact(Math.rint(value * 100) / 100);
  }
}
