package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import swardcase.decision.Decision;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.outcome.Outcome;

/**
 * The plan as quantities and prices, so that someone else can put in other prices: money is
 * quantity times price. All at likely values, against keeping everything.
 *
 * @param lambValue money for a lamb
 * @param dryEweCost what a dry ewe costs beyond her lamb
 * @param supplementPrice money a tonne as fed
 * @param discountRate per year, as a fraction
 * @param endValuePerHa value of a resown hectare beyond the years counted, due in the last year
 * @param sownHa hectares sown
 * @param years first year first
 */
public record Budget(
    Assumption lambValue,
    Assumption dryEweCost,
    Assumption supplementPrice,
    Assumption discountRate,
    Assumption endValuePerHa,
    double sownHa,
    List<Year> years) {

  /** Copies the list. */
  public Budget {
    years = List.copyOf(years);
  }

  /**
   * A year of the plan.
   *
   * @param year calendar year
   * @param work what is done where
   * @param cost paid for actions
   * @param supplementTonnes supplement not bought, t as fed; negative if more is bought
   * @param lambs lambs more
   * @param ewesInLamb dry ewes fewer
   * @param other crop margins and spare feed, in money
   */
  public record Year(
      int year,
      List<PlanResult.Work> work,
      double cost,
      double supplementTonnes,
      double lambs,
      double ewesInLamb,
      double other) {

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
    double price = farm.supplement().pricePerTonne().likely();
    List<Year> years = new ArrayList<>();
    for (int t = 0; t < outcome.years(); t++) {
      PlanResult.PlanYear named = report.plan().years().get(t);
      years.add(
          new Year(
              named.year(),
              named.work(),
              outcome.actionCost(t),
              price > 0 ? outcome.supplementSaved(t) / price : 0,
              outcome.lambs(t),
              outcome.ewesInLamb(t),
              outcome.cropMargin(t) + outcome.spareFeed(t)));
    }
    return new Budget(
        farm.prices().netValuePerLamb(),
        farm.prices().costPerDryEwe(),
        farm.supplement().pricePerTonne(),
        farm.finance().discountRate(),
        farm.finance().endValuePerHa(),
        report.plan().hectaresSown(),
        years);
  }
}
