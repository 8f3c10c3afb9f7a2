package swardcase.report;

import java.util.Optional;
import swardcase.decision.Decision;
import swardcase.decision.ExplainTopic;
import swardcase.decision.Explanation;
import swardcase.decision.Explanations;
import swardcase.draws.Draws;
import swardcase.report.PaddockResult.OestrogenRating;
import swardcase.sward.Composition;

/**
 * Where a number comes from, as it is printed.
 *
 * @param currency sign printed before money
 * @param seed where the draws start
 * @param draws how many
 * @param oestrogen the rating that the number stands behind; empty for other numbers
 * @param number the number with its parts and movers
 */
public record ExplanationReport(
    String currency, long seed, int draws, Optional<RatedOestrogen> oestrogen, Explanation number) {

  /**
   * The oestrogen of a paddock as it is rated.
   *
   * @param rating the rating
   * @param severeDose dose, % of intake, from which it is severe
   * @param markedDose dose from which it is marked
   * @param unknownShare share of the clover, 0 to 1, beyond which an unknown formononetin makes the
   *     rating unknown
   */
  public record RatedOestrogen(
      OestrogenRating rating, double severeDose, double markedDose, double unknownShare) {}

  /**
   * The report of a number of a decision.
   *
   * @param paddock place of the paddock, for a number of a paddock
   */
  public static ExplanationReport of(Decision decision, ExplainTopic topic, int paddock) {
    Draws draws = decision.simulation().draws();
    return new ExplanationReport(
        decision.model().farm().currency(),
        draws.seed(),
        draws.count(),
        topic == ExplainTopic.OESTROGEN ? Optional.of(rated(decision, paddock)) : Optional.empty(),
        topic.explain(Explanations.of(decision), paddock));
  }

  private static RatedOestrogen rated(Decision decision, int paddock) {
    OestrogenBuilder oestrogen = new OestrogenBuilder(decision);
    return new RatedOestrogen(
        oestrogen.rating(paddock),
        oestrogen.severeDose(),
        OestrogenBuilder.TELLABLE_DOSE,
        Composition.MUCH_UNKNOWN);
  }
}
