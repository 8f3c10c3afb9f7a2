package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.draws.Draws;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.YearSums;

/**
 * What is begun is paid for within the years counted. The laws hold by definition; no outside
 * source.
 */
class BegunIsPaidForTest {

  private static final int MOST_YEARS = 12;

  /** Long enough for every start of every action to run to its end. */
  private static final int WHOLE = 30;

  private static FarmModel model(Farm farm, int years) {
    return PlanFarms.model(farm.withFinance(farm.finance().withHorizonYears(years)));
  }

  private static double sum(OutcomeFunction run, FarmModel model, int i, int a, int s, int of) {
    int sums = YearSums.size(run.mobs());
    double[] added = new double[model.years() * sums];
    run.addYears(i, a, s, added);
    double sum = 0;
    for (int t = 0; t < model.years(); t++) {
      sum += added[t * sums + of];
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "current-farm",
        "large-farm",
        "mixed-farm",
        "northern-farm",
        "one-mob-farm",
        "risky-farm"
      })
  void everyChoice_atHorizonsOneToTwelve_hasItsLastChangeAndAllItsCostsInside(String name) {
    Farm farm = PlanFarms.demo(name);
    FarmModel whole = model(farm, WHOLE);
    OutcomeFunction wholeRun = whole.newRun();
    for (int years = 1; years <= MOST_YEARS; years++) {
      FarmModel model = model(farm, years);
      OutcomeFunction run = model.newRun();
      PlanTable table = new PlanTable(model, run, List.of());
      for (int c = 0; c < table.choices(); c++) {
        int i = table.paddock(c);
        if (i >= table.paddocks()) {
          continue;
        }
        int a = table.action(c);
        int s = table.start(c);
        Action action = model.actions().get(a);
        if (table.keeps(c)) {
          continue;
        }
        assertThat(s + model.lastChange(a)).isLessThan(years);
        if (action.sows() && action.use().isEmpty()) {
          String what = name + " " + years + " " + action.key() + " " + s;
          assertThat(s + action.runDownYears()).as(what).isLessThan(years);
          for (int of : new int[] {YearSums.COST, YearSums.LABOUR, YearSums.MARGIN}) {
            double counted = sum(run, model, i, a, s, of);
            double all = sum(wholeRun, whole, i, a, s, of);
            assertThat(counted).as(what).isCloseTo(all, within(0.05 * Math.abs(all)));
          }
        }
      }
      for (int a = 0; a < model.actions().size(); a++) {
        if (model.actions().get(a).changesStand() && model.startYears(a) < FarmModel.START_YEARS) {
          assertThat(model.startYears(a) + model.lastChange(a)).isGreaterThanOrEqualTo(years);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "current-farm",
        "large-farm",
        "mixed-farm",
        "northern-farm",
        "one-mob-farm",
        "risky-farm"
      })
  void plan_atHorizonsOneToTwelve_isSeenThroughInside(String name) {
    Farm farm = PlanFarms.demo(name);
    for (int years = 1; years <= MOST_YEARS; years++) {
      FarmModel model = model(farm, years);
      Plan plan =
          new PlanSearch(new Draws(model, 7, 16, 1), List.of(), true)
              .find()
              .orElseThrow()
              .plan()
              .plan();
      for (int i = 0; i < plan.paddocks(); i++) {
        if (plan.action(i) != model.keep()) {
          assertThat(plan.start(i) + model.lastChange(plan.action(i))).isLessThan(years);
        }
      }
    }
  }
}
