package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.LikelySearch.Found;

/** The plan against full enumeration, and the laws that any plan must keep. */
class LikelySearchTest {

  private static final double HALF_A_UNIT = 0.51;

  private static Found find(Farm farm, List<FixedChoice> fixed) {
    return new LikelySearch(PlanFarms.model(farm), fixed).find().orElseThrow();
  }

  private static Found find(Farm farm) {
    return find(farm, List.of());
  }

  private static double tolerance(Found found) {
    return Math.max(HALF_A_UNIT, 1.01e-4 * Math.abs(found.value()));
  }

  /** Every choice for every paddock, those that pass limits left out. */
  private static double bestOfAll(FarmModel model) {
    LikelySearch search = new LikelySearch(model);
    List<Plan> plans = new ArrayList<>(List.of(model.keepAll()));
    OutcomeFunction run = model.newRun();
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      List<Plan> more = new ArrayList<>();
      for (Plan plan : plans) {
        for (int a = 0; a < model.actions().size(); a++) {
          int starts = a == model.keep() ? 1 : model.startYears(a);
          for (int s = 0; s < starts && run.allowed(i, a); s++) {
            more.add(plan.with(i, a, s));
          }
        }
      }
      plans = more;
    }
    Outcome outcome = new Outcome(model.years());
    double best = Double.NEGATIVE_INFINITY;
    for (Plan plan : plans) {
      if (search.feasible(plan)) {
        run.evaluate(plan, outcome);
        best = Math.max(best, outcome.npv());
      }
    }
    return best;
  }

  @Test
  void find_farmsOfTwoPaddocks_isTheBestOfAllPlans() {
    SplittableRandom random = new SplittableRandom(10);
    for (int round = 0; round < 8; round++) {
      Farm farm = PlanFarms.small(random, 2);
      Found found = find(farm);
      assertThat(found.value())
          .isGreaterThanOrEqualTo(bestOfAll(PlanFarms.model(farm)) - tolerance(found));
    }
  }

  @Test
  void find_moreBudget_neverLowersTheValue() {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < 6; round++) {
      Farm farm = PlanFarms.small(random, 4);
      double before = Double.NEGATIVE_INFINITY;
      for (double budget : new double[] {0, 4000, 8000, 16000, 64000}) {
        Found found = find(farm.withFinance(farm.finance().withBudgetPerYear(budget)));
        assertThat(found.value()).isGreaterThanOrEqualTo(before - tolerance(found));
        before = found.value();
      }
    }
  }

  @Test
  void find_choicesMadeBeforehand_areKeptAndNeverRaiseTheValue() {
    SplittableRandom random = new SplittableRandom(12);
    for (int round = 0; round < 6; round++) {
      Farm farm = PlanFarms.small(random, 3);
      FarmModel model = PlanFarms.model(farm);
      Found free = find(farm);
      OutcomeFunction run = model.newRun();
      List<Integer> ways =
          IntStream.range(0, model.actions().size())
              .filter(a -> !model.actions().get(a).changesStand() && run.allowed(1, a))
              .limit(2)
              .boxed()
              .toList();
      for (int a : ways) {
        Found forced = find(farm, List.of(new FixedChoice(1, a, OptionalInt.empty())));
        assertThat(forced.plan().action(1)).isEqualTo(a);
        assertThat(forced.value()).isLessThanOrEqualTo(free.value() + tolerance(free));
      }
      Plan same = free.plan();
      Found fixed =
          find(farm, List.of(new FixedChoice(0, same.action(0), OptionalInt.of(same.start(0)))));
      assertThat(fixed.value()).isCloseTo(free.value(), within(2 * tolerance(free)));
      assertThat(farm.actions()).hasSize(2);
    }
  }

  @Test
  void find_choiceBeyondTheMoney_isImpossible() {
    Farm farm = PlanFarms.demo("mixed-farm");
    FarmModel model = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(100)));
    List<FixedChoice> sow = List.of(new FixedChoice(0, 3, OptionalInt.empty()));
    assertThat(model.actions().get(3).sows()).isTrue();
    LikelySearch search = new LikelySearch(model, sow);
    assertThat(search.isImpossible()).isTrue();
    assertThat(search.find()).isEmpty();
  }

  @Test
  void keepAll_onEveryFarm_isWithinTheLimitsAndWorthNothing() {
    for (String name : List.of("mixed-farm", "northern-farm", "current-farm", "large-farm")) {
      FarmModel model = PlanFarms.model(PlanFarms.demo(name));
      LikelySearch search = new LikelySearch(model);
      assertThat(search.feasible(model.keepAll())).as(name).isTrue();
      assertThat(model.newRun().setBase(model.keepAll())).as(name).isZero();
    }
  }

  @Test
  void find_paddocksInAnotherOrder_isWorthTheSame() {
    SplittableRandom random = new SplittableRandom(13);
    for (int round = 0; round < 5; round++) {
      Farm farm = PlanFarms.small(random, 4);
      List<Paddock> shuffled = new ArrayList<>(farm.paddocks());
      Collections.shuffle(shuffled, new Random(round));
      Found found = find(farm);
      assertThat(find(PlanFarms.withPaddocks(farm, shuffled)).value())
          .isCloseTo(found.value(), within(2 * tolerance(found)));
    }
  }

  @Test
  void find_largerFarms_isNearTheBestOfManyRandomStarts() {
    SplittableRandom random = new SplittableRandom(1407);
    List<Farm> farms = new ArrayList<>();
    for (int paddocks = 6; paddocks <= 14; paddocks += 2) {
      farms.add(PlanFarms.small(random, paddocks));
    }
    farms.add(PlanFarms.demo("risky-farm"));
    farms.add(PlanFarms.demo("mixed-farm"));
    for (Farm farm : farms) {
      FarmModel model = PlanFarms.model(farm);
      LikelySearch search = new LikelySearch(model);
      Found found = search.find().orElseThrow();
      PlanTable table = search.table();
      OutcomeFunction run = model.newRun();
      double best = Double.NEGATIVE_INFINITY;
      for (int draw = 0; draw < 60; draw++) {
        int[] pick = new int[table.places()];
        for (int i = 0; i < pick.length; i++) {
          int choices = table.first(i + 1) - table.first(i);
          pick[i] = table.first(i) + (random.nextInt(3) > 0 ? 0 : random.nextInt(choices));
        }
        if (search.improve(pick)) {
          best = Math.max(best, run.setBase(table.plan(pick)));
        }
      }
      assertThat(best).isFinite();
      assertThat(found.value()).isGreaterThanOrEqualTo(best - 0.015 * Math.abs(best));
    }
  }

  @Test
  void improve_anyPick_keepsWithinTheLimitsAndLeavesNoChangeOfOnePaddockThatGains() {
    SplittableRandom random = new SplittableRandom(62);
    int improved = 0;
    for (int round = 0; round < 60; round++) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random));
      LikelySearch search = new LikelySearch(model);
      PlanTable table = search.table();
      OutcomeFunction run = model.newRun();
      int[] pick = PlanFarms.anyPick(table, random);
      double before =
          table.fits(table.plan(pick)) ? run.setBase(table.plan(pick)) : Double.NEGATIVE_INFINITY;
      if (!search.improve(pick)) {
        continue;
      }
      improved++;
      double value = run.setBase(table.plan(pick));
      assertThat(table.fits(table.plan(pick))).isTrue();
      assertThat(value).isGreaterThanOrEqualTo(before - 1e-6);
      for (int c = 0; c < table.choices(); c++) {
        Plan changed = table.with(table.plan(pick), Change.of(c));
        if (table.fits(changed)) {
          assertThat(run.setBase(changed))
              .isLessThanOrEqualTo(value + 1e-3 + 1e-9 * Math.abs(value));
        }
      }
    }
    assertThat(improved).isGreaterThan(30);
  }
}
