package swardcase.wording;

import java.util.stream.Collectors;
import swardcase.report.ComparisonReport.Step;

/** The words of a comparison. */
public final class ComparisonWords {

  private ComparisonWords() {}

  /** The groups of inputs that a step takes. */
  public static String parts(Step step) {
    return step.parts().stream()
        .map(part -> Texts.of("comparison", part))
        .collect(Collectors.joining("; "));
  }
}
