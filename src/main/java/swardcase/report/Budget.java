package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import swardcase.decision.Decision;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.outcome.Outcome;

/**
 * The plan's mean flows by year and line, so that someone else can put in other prices. Money of
 * the year against keeping everything, mean over the draws: discounted and summed it is the mean
 * gain of the plan.
 *
 * @param lambPrice money for a lamb, by which lambs saved are scaled
 * @param supplementPrice money a tonne as fed, by which supplement saved is scaled
 * @param discountRate per year, as a fraction
 * @param years first year first
 */
public record Budget(
    Assumption lambPrice, Assumption supplementPrice, Assumption discountRate, List<Year> years) {

  /** Copies the list. */
  public Budget {
    years = List.copyOf(years);
  }

  /**
   * A year of the plan.
   *
   * @param year calendar year
   * @param work what is done where
   * @param lambs lambs more, head
   * @param ewesInLamb dry ewes fewer, head
   * @param cost paid for actions
   * @param labour own labour for actions
   * @param supplementSaved supplement not bought; negative if more is bought
   * @param lambsSaved value of lambs more and of dry ewes fewer
   * @param cropMargin margin of crops
   * @param spareFeed more ewes, feed let to others, and nitrogen that clover fixes
   * @param endValue worth of resown hectares beyond the years counted
   */
  public record Year(
      int year,
      List<PlanResult.Work> work,
      double lambs,
      double ewesInLamb,
      double cost,
      double labour,
      double supplementSaved,
      double lambsSaved,
      double cropMargin,
      double spareFeed,
      double endValue) {

    /** Copies the list. */
    public Year {
      work = List.copyOf(work);
    }
  }

  /**
   * The plan's budget.
   *
   * @param report says what is done, and in which calendar year
   */
  public static Budget of(Decision decision, Report report) {
    Farm farm = decision.model().farm();
    Outcome outcome = decision.outcome();
    List<Year> years = new ArrayList<>();
    for (int t = 0; t < outcome.years(); t++) {
      PlanResult.PlanYear named = report.plan().years().get(t);
      years.add(
          new Year(
              named.year(),
              named.work(),
              outcome.lambs(t),
              outcome.ewesInLamb(t),
              outcome.actionCost(t),
              outcome.labourCost(t),
              outcome.supplementSaved(t),
              outcome.lambsSaved(t),
              outcome.cropMargin(t),
              outcome.spareFeed(t),
              outcome.endValue(t)));
    }
    return new Budget(
        farm.prices().netValuePerLamb(),
        farm.supplement().pricePerTonne(),
        farm.finance().discountRate(),
        years);
  }
}
