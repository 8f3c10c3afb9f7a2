package swardcase.wording;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.report.SamplingReport;
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
    return count.wrong() < 0.5 ? Texts.get("sampling.underOne") : Words.whole(count.wrong());
  }

  /** How many more plants to look at, or that none are needed or would help. */
  public static String more(PaddockCount count) {
    return Texts.of("sampling.further", count.further(), count.morePlants().orElse(0));
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
