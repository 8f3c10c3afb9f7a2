package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.report.SamplingReport;
import swardcase.report.SamplingReport.CountCall;
import swardcase.report.SamplingReport.PaddockCount;

/** The words of what the counts say. */
public final class SamplingWords {

  private SamplingWords() {}

  /** The question that is called. */
  public static String question(SamplingReport report) {
    return Texts.get("sampling.question", Words.percent(report.riskShare()));
  }

  /** A share in per cent; a question mark where nobody looked. */
  public static String share(Optional<Range> percent) {
    return percent.map(Words::range).orElse("?");
  }

  /** The call. */
  public static String call(PaddockCount count) {
    return Texts.of("sampling", count.call());
  }

  /** How many of a hundred such calls are wrong. */
  public static String wrong(PaddockCount count) {
    if (count.wrong().isEmpty()) {
      return Texts.get("none");
    }
    double wrong = count.wrong().getAsDouble();
    return wrong < 0.5 ? Texts.get("sampling.underOne") : Words.whole(wrong);
  }

  /** How many more plants to look at, or that none are needed or would help. */
  public static String more(PaddockCount count) {
    return Texts.of("sampling.further", count.further(), count.morePlants().orElse(0));
  }

  /** What each leaf test says of the names; a sentence each, and what a test is in place of. */
  public static List<String> leafTests(SamplingReport report) {
    List<String> tests = new ArrayList<>();
    for (PaddockCount count : report.paddocks()) {
      count
          .leafTest()
          .ifPresent(
              test ->
                  tests.add(
                      Texts.get(
                          "sampling.leafTest",
                          count.paddock(),
                          Words.range(test.testedPercentOfLeaf()),
                          LeafTestWords.note(test))));
    }
    if (report.paddocks().stream().anyMatch(count -> count.call() == CountCall.LEAF_TESTED)) {
      tests.add(Texts.get("sampling.leafTestNote"));
    }
    return tests;
  }

  /** What the numbers mean, and how many plants a share needs; a paragraph each. */
  public static List<String> notes(SamplingReport report) {
    return List.of(
        Texts.get("sampling.note"),
        Texts.get(
            "sampling.sizes",
            report.plantsNearRiskShare(),
            Words.percent(report.riskShare()),
            report.plantsToSeeOne(),
            Words.about(report.designEffect())));
  }
}
