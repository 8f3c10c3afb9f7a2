package swardcase.report;

import java.util.Optional;
import swardcase.decision.Decision;
import swardcase.decision.Explanation;
import swardcase.report.ExplanationReport.RatedOestrogen;

/** Makes the reports of explained numbers. */
public final class ExplanationReportBuilder {

  private ExplanationReportBuilder() {}

  /** The report of a number of a decision. */
  public static ExplanationReport build(Decision decision, Explanation number) {
    return new ExplanationReport(currency(decision), Optional.empty(), number);
  }

  /** The report of a paddock's dose, with the rating that comes from it. */
  public static ExplanationReport ofOestrogen(Decision decision, Explanation dose, int paddock) {
    OestrogenBuilder oestrogen = new OestrogenBuilder(decision.model().tables());
    return new ExplanationReport(
        currency(decision),
        Optional.of(new RatedOestrogen(oestrogen.rating(decision, paddock), oestrogen.rule())),
        dose);
  }

  private static String currency(Decision decision) {
    return decision.model().farm().currency();
  }
}
