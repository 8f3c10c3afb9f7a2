package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;

/**
 * The whole farm's answer.
 *
 * @param headline the answer in a sentence
 * @param hectaresSown hectares that are sown
 * @param cost all costs, undiscounted
 * @param npv net present value against keeping everything
 * @param npvAtLikely the same with every input at its likely value, from which the swings start
 * @param annuity {@code npv} as an equal yearly sum
 * @param irrPercent in words
 * @param mirrPercent in words
 * @param paybackYears in words
 * @param peakDebt deepest running balance, likely
 * @param benefitCost in words
 * @param years year by year
 * @param notes how the plan was found: other starts of the search, limits that bind, next-best plan
 * @param loan the account if the costs are borrowed; empty if the farm has no loan
 */
public record PlanResult(
    String headline,
    double hectaresSown,
    Range cost,
    Range npv,
    double npvAtLikely,
    Range annuity,
    String irrPercent,
    String mirrPercent,
    String paybackYears,
    double peakDebt,
    String benefitCost,
    List<PlanYear> years,
    List<String> notes,
    Optional<LoanAccount> loan) {

  /** Copies the lists. */
  public PlanResult {
    years = List.copyOf(years);
    notes = List.copyOf(notes);
  }

  /**
   * A year of the plan.
   *
   * @param year calendar year
   * @param work what is done where, in words; blank if nothing
   * @param cost paid for actions
   * @param supplementSaved supplement not bought (negative: bought because paddocks are shut)
   * @param lambsSaved value of lambs not lost
   * @param other crop margins, spare feed and the rest
   * @param net the sum
   * @param cumulative sum of {@code net} to this year, not discounted
   * @param oldShare share of old cultivars in the farm's clover, area-weighted
   */
  public record PlanYear(
      int year,
      String work,
      double cost,
      double supplementSaved,
      double lambsSaved,
      double other,
      double net,
      double cumulative,
      double oldShare) {}
}
