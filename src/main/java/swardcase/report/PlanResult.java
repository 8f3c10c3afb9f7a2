package swardcase.report;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;

/**
 * The whole farm's answer.
 *
 * @param calls how many paddocks have which call
 * @param keepsAll whether it keeps every paddock as it is
 * @param order numbers of the paddocks, from 1 in the order of the user's file, in the order of
 *     use: work that is sure by year, work that is not, undecided ones, those kept
 * @param hectaresSown hectares that are sown
 * @param cost all costs, undiscounted
 * @param npv net present value against keeping everything
 * @param npvAtLikely the same with every input at its likely value, from which the swings start
 * @param annuity {@code npv} as an equal yearly sum
 * @param returns rates of return, payback and peak debt
 * @param years year by year
 * @param lowestYear calendar year in which {@code cumulative} is lowest
 * @param howFound other starts of the search, limits that bind, next-best plan
 * @param loan the account if the costs are borrowed; empty if the farm has no loan
 */
public record PlanResult(
    Calls calls,
    boolean keepsAll,
    List<Integer> order,
    double hectaresSown,
    Range cost,
    Range npv,
    double npvAtLikely,
    Range annuity,
    Returns returns,
    List<PlanYear> years,
    int lowestYear,
    HowFound howFound,
    Optional<LoanAccount> loan) {

  /** Copies the lists. */
  public PlanResult {
    order = List.copyOf(order);
    years = List.copyOf(years);
  }

  /**
   * How many paddocks have which call.
   *
   * @param act to be resown, or changed otherwise
   * @param keepOff to be kept, joining ewes kept off
   * @param keep to be kept as they are
   * @param undecided not settled by what is known
   */
  public record Calls(int act, int keepOff, int keep, int undecided) {}

  /**
   * A year of the plan.
   *
   * @param year calendar year
   * @param work what is done where
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
      List<Work> work,
      double cost,
      double supplementSaved,
      double lambsSaved,
      double other,
      double net,
      double cumulative,
      double oldShare) {

    /** Copies the list. */
    public PlanYear {
      work = List.copyOf(work);
    }
  }

  /**
   * Work of a year on a paddock.
   *
   * @param kind what is done
   * @param paddock where
   * @param action key of the action it belongs to
   * @param actionName its name
   */
  public record Work(Kind kind, String paddock, String action, String actionName) {

    /** What is done. */
    public enum Kind {
      /** A crop is grown. */
      CROP,
      /** Seed set is stopped. */
      STOP_SEED_SET,
      /** Seed is sown. */
      SOW,
      /** An action that sows nothing begins. */
      BEGIN
    }
  }
}
