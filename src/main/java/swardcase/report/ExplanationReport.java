package swardcase.report;

import java.util.Optional;
import swardcase.decision.Explanation;
import swardcase.report.PaddockResult.OestrogenRating;

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
   * @param rule how ratings come from the dose
   */
  public record RatedOestrogen(OestrogenRating rating, OestrogenBuilder.Rule rule) {}
}
