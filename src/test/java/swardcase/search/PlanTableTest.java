package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.YearSums;

class PlanTableTest {

  private static PlanTable table(FarmModel model, FixedChoice... fixed) {
    return new PlanTable(model, model.newRun(), List.of(fixed));
  }

  private static int[] anyPick(PlanTable table, SplittableRandom random) {
    int[] pick = new int[table.places()];
    for (int i = 0; i < pick.length; i++) {
      pick[i] = random.nextInt(table.first(i), table.first(i + 1));
    }
    return pick;
  }

  @Test
  void choices_ofAPaddock_areEveryActionAllowedAtEveryStart() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
    PlanTable table = table(model);
    OutcomeFunction run = model.newRun();
    assertThat(table.years()).isEqualTo(model.years());
    assertThat(table.sums()).isEqualTo(YearSums.size(model.farm().mobs().size()));
    for (int i = 0; i < table.paddocks(); i++) {
      int expected = 1;
      for (int a = 0; a < model.actions().size(); a++) {
        expected +=
            a != model.keep() && run.allowed(i, a) ? model.startYears(a) - model.firstStart(a) : 0;
      }
      assertThat(table.first(i + 1) - table.first(i)).isEqualTo(expected);
      assertThat(table.keeps(table.first(i))).isTrue();
      for (int c = table.first(i) + 1; c < table.first(i + 1); c++) {
        assertThat(table.keeps(c)).isFalse();
        assertThat(table.paddock(c)).isEqualTo(i);
        assertThat(run.allowed(i, table.action(c))).isTrue();
        assertThat(table.start(c)).isBetween(0, model.startYears(table.action(c)) - 1);
      }
    }
  }

  @Test
  void pick_ofAPlan_isThePlanAgain() {
    SplittableRandom random = new SplittableRandom(41);
    for (int round = 0; round < 30; round++) {
      PlanTable table = table(PlanFarms.model(RandomFarms.any(random)));
      int[] pick = anyPick(table, random);
      assertThat(table.pick(table.plan(pick))).isEqualTo(pick);
    }
  }

  @Test
  void sum_ofAnyPick_isThatOfItsChoices() {
    SplittableRandom random = new SplittableRandom(42);
    for (int round = 0; round < 60; round++) {
      PlanTable table = table(PlanFarms.model(RandomFarms.any(random)));
      int[] pick = anyPick(table, random);
      double[] sums = new double[table.years() * table.sums()];
      table.sum(pick, sums);
      for (int k = 0; k < sums.length; k++) {
        double all = 0;
        for (int c : pick) {
          all += table.added(c, k);
        }
        assertThat(sums[k]).isCloseTo(all, within(1e-9 * Math.max(1, Math.abs(all))));
      }
    }
  }

  @Test
  void exchange_ofOneChoice_isTheSumOfTheOtherPick() {
    SplittableRandom random = new SplittableRandom(43);
    for (int round = 0; round < 30; round++) {
      PlanTable table = table(PlanFarms.model(RandomFarms.any(random)));
      int[] pick = anyPick(table, random);
      int[] other = pick.clone();
      int paddock = random.nextInt(pick.length);
      other[paddock] = random.nextInt(table.first(paddock), table.first(paddock + 1));
      double[] sums = new double[table.years() * table.sums()];
      double[] expected = sums.clone();
      table.sum(pick, sums);
      table.exchange(pick[paddock], other[paddock], sums, sums);
      table.sum(other, expected);
      for (int k = 0; k < sums.length; k++) {
        assertThat(sums[k])
            .isCloseTo(expected[k], within(1e-9 * Math.max(1, Math.abs(expected[k]))));
      }
    }
  }

  /** Crops alone and crops before a sowing count alike; 1 ha less than both take is too little. */
  @Test
  void mostCropHa_countsCropsAloneAndBeforeASowingTogether() {
    Farm open = RandomFarms.withCropOnly(PlanFarms.demo("mixed-farm"));
    int cropOnly = RandomFarms.place(open, "crop-only");
    int cropThenSow = RandomFarms.place(open, "crop-3");
    double both = open.paddocks().get(0).areaHa() + open.paddocks().get(1).areaHa();
    for (double most : new double[] {both - 1, both}) {
      Farm farm = FarmCopy.of(open).finance(withMostCropHa(open.finance(), most)).build();
      FarmModel model = PlanFarms.model(farm);
      PlanTable table = table(model);
      int[] pick = table.pick(model.keepAll().with(0, cropOnly, 0).with(1, cropThenSow, 0));
      double[] sums = new double[table.years() * table.sums()];
      table.sum(pick, sums);
      assertThat(table.passed(sums).contains(PlanLimit.CROP)).isEqualTo(most < both);
      table.lift(PlanLimit.CROP);
      assertThat(table.passed(sums)).doesNotContain(PlanLimit.CROP);
      table.restoreLimits();
      // The same two years apart: no two seasons of crop meet.
      table.sum(table.pick(model.keepAll().with(0, cropOnly, 0).with(1, cropThenSow, 3)), sums);
      assertThat(table.passed(sums)).doesNotContain(PlanLimit.CROP);
    }
  }

  /** Limits are looked up on the farm; how far beyond is a share of the limit, added up. */
  @Test
  void excess_ofAnyPick_isWhatItsYearsPassTheLimitsBy() {
    SplittableRandom random = new SplittableRandom(44);
    int beyond = 0;
    for (int round = 0; round < 60; round++) {
      Farm farm = RandomFarms.any(random);
      FarmModel model = PlanFarms.model(farm);
      OutcomeFunction run = model.newRun();
      PlanTable table = table(model);
      int[] pick = anyPick(table, random);
      double[] sums = new double[table.years() * table.sums()];
      table.sum(pick, sums);
      double budget = farm.finance().budgetPerYear().orElse(Double.POSITIVE_INFINITY);
      double out = farm.finance().mostOutOfGrazing().likely() * farm.areaHa();
      double excess = 0;
      double ofMoney = 0;
      for (int t = 0; t < table.years(); t++) {
        int at = t * table.sums();
        ofMoney += over(sums[at + YearSums.COST], budget);
        excess += over(sums[at + YearSums.OUT], out);
        for (int g = 0; g < run.mobs(); g++) {
          excess += over(run.feedNeeded(g), sums[at + YearSums.at(g, YearSums.OPEN)]);
          excess += over(run.feedNeededInWinter(g), sums[at + YearSums.at(g, YearSums.OPEN_GREEN)]);
        }
      }
      double before = table.excess(sums);
      beyond += before > 0 ? 1 : 0;
      assertThat(before > 0).isEqualTo(excess + ofMoney > 1e-6);
      table.lift(PlanLimit.MONEY);
      assertThat(table.excess(sums) > 0).isEqualTo(excess > 1e-6);
      table.lift(PlanLimit.OUT_OF_GRAZING);
      table.lift(PlanLimit.FEED_AT_JOINING);
      assertThat(table.excess(sums)).isZero();
      table.restoreLimits();
      assertThat(table.excess(sums)).isEqualTo(before);
    }
    assertThat(beyond).isBetween(10, 59);
  }

  private static double over(double value, double limit) {
    return value > limit + 1e-5 ? 1 : 0;
  }

  @Test
  void choices_madeBeforehand_areTheOnlyOnesOfTheirPaddock() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
    int hold = 1;
    assertThat(hold).isNotEqualTo(model.keep());
    PlanTable free = table(model, new FixedChoice(2, hold, OptionalInt.empty()));
    assertThat(free.first(3) - free.first(2)).isEqualTo(model.startYears(hold));
    PlanTable fixed = table(model, new FixedChoice(2, hold, OptionalInt.of(3)));
    assertThat(fixed.first(3) - fixed.first(2)).isEqualTo(1);
    assertThat(fixed.start(fixed.first(2))).isEqualTo(3);
    assertThat(fixed.first(2)).isEqualTo(free.first(2));
    PlanTable kept = table(model, new FixedChoice(2, model.keep(), OptionalInt.of(3)));
    assertThat(kept.first(3) - kept.first(2)).isEqualTo(1);
    assertThat(kept.keeps(kept.first(2))).isTrue();
    assertThatThrownBy(() -> fixed.pick(model.keepAll()))
        .hasMessageContaining("a choice for paddock 2 that is not open");
  }

  private static Finance withMostCropHa(Finance of, double most) {
    return new Finance(
        of.discountRate(),
        of.horizonYears(),
        of.budgetPerYear(),
        of.mostOutOfGrazing(),
        OptionalDouble.of(most),
        of.endValuePerHa(),
        of.riskTolerance(),
        of.loan());
  }
}
