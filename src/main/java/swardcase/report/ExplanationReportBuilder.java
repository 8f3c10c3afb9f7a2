package swardcase.report;

import java.util.Optional;
import swardcase.decision.Decision;
import swardcase.decision.Explanation;
import swardcase.draws.Draws;
import swardcase.report.ExplanationReport.RatedOestrogen;

/** Makes the reports of explained numbers. */
public final class ExplanationReportBuilder {

  private ExplanationReportBuilder() {}

  /** The report of a number of a decision. */
  public static ExplanationReport build(Decision decision, Explanation number) {
    return build(decision, Optional.empty(), number);
  }

  /** The report of a paddock's dose, with the rating that comes from it. */
  public static ExplanationReport ofOestrogen(Decision decision, Explanation dose, int paddock) {
    OestrogenBuilder oestrogen = new OestrogenBuilder(decision.model().tables());
    return build(
        decision,
        Optional.of(new RatedOestrogen(oestrogen.rating(decision, paddock), oestrogen.rule())),
        dose);
  }

  private static ExplanationReport build(
      Decision decision, Optional<RatedOestrogen> oestrogen, Explanation number) {
    Draws draws = decision.simulation().draws();
    return new ExplanationReport(
        decision.model().farm().currency(), draws.seed(), draws.count(), oestrogen, number);
  }
}
