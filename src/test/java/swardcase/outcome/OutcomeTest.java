package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleBiFunction;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.money.NetPresentValue;

/** What a plan brings, told by kinds of money, by a change of the base, and as a sum. */
class OutcomeTest {

  private static final int FARMS = 60;
  private static final int CHANGES = 12;

  /** Every line that a change of the base fills in. */
  private static final List<ToDoubleBiFunction<Outcome, Integer>> LINES =
      List.of(
          Outcome::actionCost,
          Outcome::labourCost,
          Outcome::supplementSaved,
          Outcome::lambsSaved,
          Outcome::lambs,
          Outcome::ewesInLamb,
          Outcome::cropMargin,
          Outcome::spareFeed,
          Outcome::endValue);

  private interface Law {
    void check(FarmModel model, OutcomeFunction run, SplittableRandom random);
  }

  /** Any farm, its numbers anywhere in their ranges. */
  private static void forAnyFarm(long seed, Law law) {
    for (int k = 0; k < FARMS; k++) {
      SplittableRandom random = new SplittableRandom(1000 * seed + k);
      FarmModel model = new FarmModel(RandomFarms.any(random), RandomFarms.TABLES);
      OutcomeFunction run = model.newRun();
      run.set(RandomFarms.draw(model.inputs().all(), random));
      law.check(model, run, random);
    }
  }

  private static Plan anyPlan(FarmModel model, OutcomeFunction run, SplittableRandom random) {
    Plan plan = model.keepAll();
    for (int i = 0; i < plan.paddocks(); i++) {
      plan = changed(model, run, plan, i, random);
    }
    return plan;
  }

  private static Plan changed(
      FarmModel model, OutcomeFunction run, Plan plan, int paddock, SplittableRandom random) {
    int action = random.nextInt(model.actions().size());
    return run.allowed(paddock, action)
        ? plan.with(paddock, action, random.nextInt(Math.min(FarmModel.START_YEARS, model.years())))
        : plan;
  }

  private static Outcome outcome(FarmModel model, OutcomeFunction run, Plan plan) {
    Outcome outcome = model.newOutcome();
    run.evaluate(plan, outcome);
    return outcome;
  }

  private static void assertSame(
      Outcome actual, Outcome expected, ToDoubleBiFunction<Outcome, Integer> line) {
    for (int t = 0; t < expected.years(); t++) {
      double of = line.applyAsDouble(expected, t);
      assertThat(line.applyAsDouble(actual, t)).isCloseTo(of, within(1e-9 * (1e3 + Math.abs(of))));
    }
  }

  private static void assertSame(Outcome actual, Outcome expected) {
    LINES.forEach(line -> assertSame(actual, expected, line));
    assertThat(actual.npv())
        .isCloseTo(expected.npv(), within(1e-9 * (1e4 + Math.abs(expected.npv()))));
  }

  @Test
  void money_ofAllKinds_addsUpToWhatTheYearBrings() {
    boolean[] seen = new boolean[MoneyKind.values().length];
    forAnyFarm(
        1,
        (model, run, random) -> {
          Outcome outcome = outcome(model, run, anyPlan(model, run, random));
          for (int t = 0; t < outcome.years(); t++) {
            double sum = 0;
            for (MoneyKind kind : MoneyKind.values()) {
              sum += outcome.money(kind, t);
              seen[kind.ordinal()] |= outcome.money(kind, t) != 0;
            }
            double year = outcome.net(t) + outcome.endValue(t);
            assertThat(sum).isCloseTo(year, within(1e-9 * (1e3 + Math.abs(year))));
            assertThat(outcome.cashFlow()[t]).isEqualTo(year);
            assertThat(outcome.money(MoneyKind.COSTS, t)).isNotPositive();
            assertThat(outcome.money(MoneyKind.LABOUR, t)).isNotPositive();
          }
          double rate = model.farm().finance().discountRate().likely();
          assertThat(outcome.npv())
              .isCloseTo(
                  NetPresentValue.of(rate, outcome.cashFlow()),
                  within(1e-9 * (1e4 + Math.abs(outcome.npv()))));
        });
    assertThat(seen).containsOnly(true);
  }

  @Test
  void evaluateBaseWith_anyOtherChoice_isTheChangedPlanLineByLine() {
    int[] differ = new int[1];
    forAnyFarm(
        2,
        (model, run, random) -> {
          Plan base = anyPlan(model, run, random);
          for (int k = 0; k < CHANGES; k++) {
            int paddock = random.nextInt(base.paddocks());
            Plan plan = changed(model, run, base, paddock, random);
            Outcome expected = outcome(model, run, plan);
            run.setBase(base);
            Outcome actual = model.newOutcome();
            actual.add(expected, 7);
            double npv =
                run.evaluateBaseWith(paddock, plan.action(paddock), plan.start(paddock), actual);
            assertSame(actual, expected);
            assertThat(actual.npv()).isEqualTo(npv);
            assertThat(run.npvOfBaseWith(paddock, plan.action(paddock), plan.start(paddock)))
                .isCloseTo(npv, within(1e-9 * (1e4 + Math.abs(npv))));
            for (int t = 0; t < actual.years(); t++) {
              assertThat(actual.oldShare(t)).isZero();
            }
            differ[0] += plan.equals(base) ? 0 : 1;
          }
        });
    assertThat(differ[0]).isGreaterThan(FARMS);
  }

  @Test
  void evaluateBaseWith_theChoiceItHas_isTheBaseToTheLastBit() {
    forAnyFarm(
        3,
        (model, run, random) -> {
          Plan base = anyPlan(model, run, random);
          double npv = run.setBase(base);
          for (int i = 0; i < base.paddocks(); i++) {
            Outcome same = model.newOutcome();
            assertThat(run.evaluateBaseWith(i, base.action(i), base.start(i), same)).isEqualTo(npv);
          }
        });
  }

  @Test
  void addShares_ofAPaddock_areThoseOfThePlanYearByYear() {
    forAnyFarm(
        4,
        (model, run, random) -> {
          Plan plan = anyPlan(model, run, random);
          for (int i = 0; i < plan.paddocks(); i++) {
            Outcome of = model.newOutcome();
            run.addShares(plan, i, 0.5, of);
            run.addShares(plan, i, 1.5, of);
            for (int t = 0; t < of.years(); t++) {
              assertThat(of.oldShare(t)).isCloseTo(2 * run.oldShare(plan, i, t), within(1e-12));
              assertThat(of.cloverShare(t))
                  .isCloseTo(2 * run.cloverShare(plan, i, t), within(1e-12));
            }
          }
        });
  }

  @Test
  void add_severalOutcomes_isEachLineTimesAsMuch() {
    forAnyFarm(
        5,
        (model, run, random) -> {
          Outcome one = outcome(model, run, anyPlan(model, run, random));
          Outcome two = outcome(model, run, anyPlan(model, run, random));
          Outcome sum = model.newOutcome();
          sum.add(one, 3);
          sum.add(two, -0.5);
          for (ToDoubleBiFunction<Outcome, Integer> line : LINES) {
            for (int t = 0; t < sum.years(); t++) {
              double expected = 3 * line.applyAsDouble(one, t) - 0.5 * line.applyAsDouble(two, t);
              assertThat(line.applyAsDouble(sum, t))
                  .isCloseTo(expected, within(1e-9 * (1e3 + Math.abs(expected))));
            }
          }
          double npv = 3 * one.npv() - 0.5 * two.npv();
          assertThat(sum.npv()).isCloseTo(npv, within(1e-9 * (1e4 + Math.abs(npv))));
          assertThat(new Outcome(sum.years()).npv()).isZero();
        });
  }
}
