package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Range;
import swardcase.decision.Decision;
import swardcase.decision.PlanGain;
import swardcase.draws.Draws;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Supplement;
import swardcase.outcome.FarmModel;
import swardcase.report.BudgetCase.CostItem;
import swardcase.report.BudgetCase.Kind;

/** The budget case of a farm that sows: its items are the plan's cost, its prices are prices. */
class BudgetCaseTest {

  private static final int DRAWS = 200;

  private static Decision decision;
  private static Report report;
  private static BudgetCase budget;

  @BeforeAll
  static void decide() {
    FarmModel model = new FarmModel(RandomFarms.demo("northern-farm"), RandomFarms.TABLES);
    Draws draws = Decision.draws(model, Decision.USUAL_SEED, DRAWS);
    decision = Decision.of(draws, List.of(), done -> {});
    report =
        Answer.of(decision, "swardcase", LocalDate.of(2026, 11, 25), List.of(), false).report();
    budget = BudgetCase.of(decision, report);
  }

  @Test
  void costs_ofAllPaddocksAndRules_areTheCostOfThePlan() {
    double items = budget.costs().stream().mapToDouble(CostItem::total).sum();
    double rules = report.plan().farmWide().stream().mapToDouble(rule -> rule.cost().mean()).sum();

    assertThat(items + rules)
        .isCloseTo(report.plan().cost().mean(), within(0.5 * report.paddocks().size()));
    assertThat(items).isPositive();
  }

  /** What no line explains is sowing again where it failed, and own time: some, never the most. */
  @Test
  void costs_besideTheLines_areAPartOfThem() {
    double lines = total(Kind.LINE);
    double again = total(Kind.SOWN_AGAIN);

    assertThat(again).isPositive().isLessThan(0.5 * lines);
    assertThat(budget.costs())
        .filteredOn(item -> item.kind() == Kind.LINE)
        .allSatisfy(
            item -> {
              double ha = paddock(item.paddock()).areaHa();
              assertThat(item.total()).isCloseTo(item.times() * item.perHa() * ha, within(1e-6));
            });
  }

  /** A farm whose two prices are known to be those of a corner, in the same draws. */
  @Test
  void prices_atEachCorner_areThoseOfAFarmWithThesePrices() {
    BudgetCase.PriceTable table = budget.prices();
    for (int lamb = 0; lamb < 3; lamb += 2) {
      for (int supplement = 0; supplement < 3; supplement += 2) {
        Farm there =
            withPrices(table.lambPrices().get(lamb), table.supplementPrices().get(supplement));
        Draws draws =
            Decision.draws(new FarmModel(there, RandomFarms.TABLES), Decision.USUAL_SEED, DRAWS);
        double gain = PlanGain.of(draws, decision.plan()).mean();

        assertThat(table.gains().get(lamb).get(supplement))
            .isCloseTo(gain, within(1e-9 * Math.abs(gain)));
      }
    }
    assertThat(table.gains().get(2).get(0)).isNotEqualTo(table.gains().get(0).get(0));
  }

  private static double total(Kind kind) {
    return budget.costs().stream()
        .filter(item -> item.kind() == kind)
        .mapToDouble(CostItem::total)
        .sum();
  }

  private static PaddockResult paddock(String name) {
    return report.paddocks().stream()
        .filter(of -> of.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Farm withPrices(double lamb, double supplement) {
    Farm farm = decision.model().farm();
    Supplement fed = farm.supplement();
    return FarmCopy.of(farm)
        .netValuePerLamb(exactly(farm.prices().netValuePerLamb(), lamb))
        .supplement(
            new Supplement(
                fed.name(),
                exactly(fed.pricePerTonne(), supplement),
                fed.energyMjPerKgDm(),
                fed.dryMatterFraction(),
                fed.wasteFraction()))
        .build();
  }

  private static Assumption exactly(Assumption of, double value) {
    return Assumption.ofFarm(of.name(), Range.exactly(value), of.unit());
  }
}
