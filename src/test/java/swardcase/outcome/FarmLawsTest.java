package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.OtherCurrency;
import swardcase.OtherHemisphere;
import swardcase.RandomFarms;
import swardcase.farm.Action;
import swardcase.farm.CostLine;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Identification;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.UseRule;
import swardcase.reproduction.FlockEffect;
import swardcase.search.FixedChoice;
import swardcase.search.LikelySearch;
import swardcase.search.LikelySearch.Found;
import swardcase.search.PlanFarms;
import swardcase.tables.Cultivar;

/** What must hold for the answer of any farm, and when the same farm is told in another way. */
class FarmLawsTest {

  /** Rounding of sums of some ten thousands. */
  private static final double ROUNDING = 1e-6;

  private static final double TIMES = 4;

  private static final int SMALL_FARMS = 24;

  private interface Law {
    void check(Farm farm, SplittableRandom random);
  }

  private static void forAnyFarm(long seed, int farms, Law law) {
    for (int k = 0; k < farms; k++) {
      SplittableRandom random = new SplittableRandom(1000 * seed + k);
      law.check(RandomFarms.any(random), random);
    }
  }

  /** Small farms over few years, so that the best plan is soon proved; half have dear lambs. */
  private static void forAnySmallFarm(long seed, Law law) {
    for (int k = 0; k < SMALL_FARMS; k++) {
      SplittableRandom random = new SplittableRandom(1000 * seed + k);
      int paddocks = 1 + random.nextInt(3);
      Farm any = RandomFarms.any(random, paddocks);
      Farm few = any.withFinance(any.finance().withHorizonYears(1 + random.nextInt(4)));
      law.check(k % 2 == 0 ? few : PlanFarms.small(random, paddocks), random);
    }
  }

  private static FarmModel model(Farm farm) {
    return new FarmModel(farm, RandomFarms.TABLES);
  }

  private static Plan randomPlan(FarmModel model, SplittableRandom random) {
    OutcomeFunction run = model.newRun();
    Plan plan = model.keepAll();
    for (int i = 0; i < plan.paddocks(); i++) {
      int action = random.nextInt(model.actions().size());
      if (run.allowed(i, action)) {
        plan = plan.with(i, action, random.nextInt(Math.min(FarmModel.START_YEARS, model.years())));
      }
    }
    return plan;
  }

  private static Plan withoutRules(FarmModel model, Plan plan) {
    return without(model, plan, rule -> true);
  }

  /** The plan that keeps paddocks with these rules. */
  private static Plan without(FarmModel model, Plan plan, Predicate<UseRule> rules) {
    Plan without = plan;
    for (int i = 0; i < plan.paddocks(); i++) {
      boolean has = model.actions().get(plan.action(i)).use().stream().anyMatch(rules);
      without = has ? without.with(i, model.keep(), 0) : without;
    }
    return without;
  }

  /** The plan whose actions have the same keys on another farm. */
  private static Plan byKey(Plan plan, FarmModel from, FarmModel to) {
    List<String> keys = to.actions().stream().map(Action::key).toList();
    Plan same = to.keepAll();
    for (int i = 0; i < plan.paddocks(); i++) {
      same = same.with(i, keys.indexOf(from.actions().get(plan.action(i)).key()), plan.start(i));
    }
    return same;
  }

  private static Outcome outcome(FarmModel model, Plan plan) {
    Outcome outcome = model.newOutcome();
    model.newRun().evaluate(plan, outcome);
    return outcome;
  }

  /** All money that a plan moves, whichever way. */
  private static double moved(Outcome outcome) {
    double moved = outcome.endValue;
    for (int t = 0; t < outcome.actionCost.length; t++) {
      moved +=
          outcome.cost(t)
              + Math.abs(outcome.supplementSaved(t))
              + Math.abs(outcome.lambsSaved(t))
              + Math.abs(outcome.cropMargin(t))
              + Math.abs(outcome.spareFeed(t));
    }
    return moved;
  }

  private static void assertSame(Outcome actual, Outcome expected, double times) {
    double rounding = ROUNDING * Math.max(1, moved(expected));
    assertThat(actual.npv()).isCloseTo(times * expected.npv(), within(rounding));
    for (int t = 0; t < expected.actionCost.length; t++) {
      assertThat(actual.actionCost(t)).isCloseTo(times * expected.actionCost(t), within(rounding));
      assertThat(actual.labourCost(t)).isCloseTo(times * expected.labourCost(t), within(rounding));
      assertThat(actual.supplementSaved(t))
          .isCloseTo(times * expected.supplementSaved(t), within(rounding));
      assertThat(actual.lambsSaved(t)).isCloseTo(times * expected.lambsSaved(t), within(rounding));
      assertThat(actual.spareFeed(t)).isCloseTo(times * expected.spareFeed(t), within(rounding));
      assertThat(actual.oldShare(t)).isCloseTo(expected.oldShare(t), within(1e-9));
    }
  }

  private static double tolerance(Found found) {
    return Math.max(0.51, 1.01e-4 * Math.abs(found.value()));
  }

  /**
   * Half a year on, what fell in August falls in February, which is a tenth shorter; so money may
   * differ by a twentieth of all that the plan moves. Weeks of joining are counted in whole
   * half-months: farms where one more of these is touched half a year on are left out.
   */
  @Test
  void outcome_seasonsHalfAYearLater_isTheSame() {
    AtomicInteger checked = new AtomicInteger();
    forAnyFarm(
        1,
        160,
        (farm, random) -> {
          Farm later = OtherHemisphere.of(farm);
          if (!heldAlike(farm, later)) {
            return;
          }
          Plan plan = withoutRules(model(farm), randomPlan(model(farm), random));
          Outcome here = outcome(model(farm), plan);
          Outcome there = outcome(model(later), plan);
          assertThat(there.npv()).isCloseTo(here.npv(), within(0.05 * moved(here) + 1e-6));
          checked.incrementAndGet();
        });
    assertThat(checked).hasValueGreaterThan(100);
  }

  private static boolean heldAlike(Farm farm, Farm later) {
    for (int g = 0; g < farm.mobs().size(); g++) {
      FlockEffect here = effect(farm, g);
      FlockEffect there = effect(later, g);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        if (here.isHeld(p) != there.isHeld((p + HalfMonths.COUNT / 2) % HalfMonths.COUNT)) {
          return false;
        }
      }
    }
    return true;
  }

  private static FlockEffect effect(Farm farm, int mob) {
    return new FlockEffect(
        farm, farm.mobs().get(mob), new FarmModel(farm, RandomFarms.TABLES).inputs());
  }

  @Test
  void find_seasonsHalfAYearLater_isAsGoodAPlan() {
    AtomicInteger checked = new AtomicInteger();
    forAnySmallFarm(
        2,
        (farm, random) -> {
          Farm later = OtherHemisphere.of(farm);
          if (!heldAlike(farm, later)) {
            return;
          }
          LikelySearch there = new LikelySearch(model(later));
          Plan plan = new LikelySearch(model(farm)).best();
          Plan best = there.best();
          double may =
              0.05 * (moved(outcome(model(later), best)) + moved(outcome(model(later), plan)));
          OutcomeFunction run = model(later).newRun();
          assertThat(run.setBase(plan)).isGreaterThanOrEqualTo(run.setBase(best) - may - 0.51);
          checked.incrementAndGet();
        });
    assertThat(checked).hasValueGreaterThan(SMALL_FARMS / 2);
  }

  @Test
  void outcome_paddockSplitInTwo_isTheSameUnderOneAction() {
    forAnyFarm(
        3,
        100,
        (farm, random) -> {
          int split = random.nextInt(farm.paddocks().size());
          Plan plan = randomPlan(model(farm), random);
          Farm apart = split(farm, split, random.nextDouble(0.1, 0.9));
          Plan both = model(apart).keepAll();
          for (int i = 0; i < both.paddocks(); i++) {
            int from = i < farm.paddocks().size() ? i : split;
            both = both.with(i, plan.action(from), plan.start(from));
          }
          assertSame(outcome(model(apart), both), outcome(model(farm), plan), 1);
        });
  }

  /** The part split off stands last. */
  private static Farm split(Farm farm, int paddock, double share) {
    List<Paddock> paddocks = new ArrayList<>(farm.paddocks());
    Paddock whole = paddocks.get(paddock);
    paddocks.set(paddock, FarmCopy.paddock(whole, "one part", share * whole.areaHa()));
    paddocks.add(FarmCopy.paddock(whole, "other part", (1 - share) * whole.areaHa()));
    return FarmCopy.of(farm).paddocks(paddocks).build();
  }

  @Test
  void find_paddockSplitInTwo_isNeverWorthLess() {
    forAnySmallFarm(
        4,
        (farm, random) -> {
          Found whole = new LikelySearch(model(farm)).find().orElseThrow();
          Farm apart = split(farm, random.nextInt(farm.paddocks().size()), 0.5);
          assertThat(new LikelySearch(model(apart)).find().orElseThrow().value())
              .isGreaterThanOrEqualTo(whole.value() - tolerance(whole));
        });
  }

  @Test
  void outcome_mobCountedAsTwo_isTheSame() {
    forAnyFarm(
        5,
        80,
        (farm, random) -> {
          boolean namesAMob = farm.paddocks().stream().anyMatch(p -> p.mob().isPresent());
          if (namesAMob || farm.mobs().isEmpty()) {
            return;
          }
          List<Mob> whole = new ArrayList<>(farm.mobs());
          Mob mob = whole.remove(whole.size() - 1);
          List<Mob> halves = new ArrayList<>(whole);
          whole.add(FarmCopy.mob(mob, 2 * mob.ewes()));
          halves.add(mob);
          halves.add(FarmCopy.named(mob, "the other half"));
          Farm one = FarmCopy.of(farm).mobs(whole).build();
          Farm two = FarmCopy.of(farm).mobs(halves).build();
          Plan plan = randomPlan(model(one), random);
          plan = without(model(one), plan, rule -> !rule.who().equals(UseRule.ALL_EWES));
          assertSame(
              outcome(model(two), byKey(plan, model(one), model(two))),
              outcome(model(one), plan),
              1);
        });
  }

  @Test
  void outcome_mobsInAnotherOrder_isTheSame() {
    forAnyFarm(
        6,
        80,
        (any, random) -> {
          List<Mob> other = new ArrayList<>(any.mobs());
          Collections.reverse(other);
          Plan plan = randomPlan(model(any), random);
          Farm reversed = FarmCopy.of(any).mobs(other).build();
          assertSame(
              outcome(model(reversed), byKey(plan, model(any), model(reversed))),
              outcome(model(any), plan),
              1);
        });
  }

  @Test
  void outcome_paddocksInAnotherOrder_isTheSame() {
    forAnyFarm(
        7,
        100,
        (farm, random) -> {
          List<Integer> order = new ArrayList<>();
          for (int i = 0; i < farm.paddocks().size(); i++) {
            order.add(i);
          }
          Collections.shuffle(order, new Random(random.nextLong()));
          Plan plan = randomPlan(model(farm), random);
          Farm shuffled =
              FarmCopy.of(farm).paddocks(order.stream().map(farm.paddocks()::get).toList()).build();
          Plan same = model(shuffled).keepAll();
          for (int i = 0; i < same.paddocks(); i++) {
            same = same.with(i, plan.action(order.get(i)), plan.start(order.get(i)));
          }
          assertSame(outcome(model(shuffled), same), outcome(model(farm), plan), 1);
        });
  }

  @Test
  void outcome_areasAndStockDoubled_isDoubled() {
    forAnyFarm(
        8,
        100,
        (farm, random) -> {
          Plan plan = randomPlan(model(farm), random);
          assertSame(outcome(model(doubled(farm)), plan), outcome(model(farm), plan), 2);
        });
  }

  private static Farm doubled(Farm farm) {
    return FarmCopy.of(farm)
        .paddocks(
            farm.paddocks().stream()
                .map(paddock -> FarmCopy.paddock(paddock, paddock.name(), 2 * paddock.areaHa()))
                .toList())
        .mobs(farm.mobs().stream().map(mob -> FarmCopy.mob(mob, 2 * mob.ewes())).toList())
        .otherStock(
            farm.otherStock().stream()
                .map(stock -> FarmCopy.stock(stock, 2 * stock.head()))
                .toList())
        .build();
  }

  @Test
  void outcome_moneyInAnotherCurrency_isTheSameInIt() {
    forAnyFarm(
        9,
        100,
        (farm, random) -> {
          Plan plan = randomPlan(model(farm), random);
          FarmModel other = new OtherCurrency(TIMES).model(farm);
          assertSame(outcome(other, plan), outcome(model(farm), plan), TIMES);
        });
  }

  /** Money within half a unit is not told apart, so plans may differ by that. */
  @Test
  void find_moneyInAnotherCurrency_isAsGoodAPlan() {
    forAnySmallFarm(
        10,
        (farm, random) -> {
          Found here = new LikelySearch(model(farm)).find().orElseThrow();
          FarmModel inOther = new OtherCurrency(TIMES).model(farm);
          LikelySearch other = new LikelySearch(inOther);
          Found there = other.find().orElseThrow();
          assertThat(there.value())
              .isCloseTo(TIMES * here.value(), within(TIMES * tolerance(here)));
          assertThat(other.feasible(here.plan())).isTrue();
          assertThat(inOther.newRun().setBase(here.plan()))
              .isCloseTo(there.value(), within(TIMES * tolerance(here)));
        });
  }

  @Test
  void farm_ofCurrentCultivarsOnly_losesNoFeed() {
    List<String> current =
        RandomFarms.TABLES.cultivars().values().stream()
            .filter(cultivar -> cultivar.era() == Cultivar.Era.CURRENT)
            .map(Cultivar::name)
            .toList();
    forAnyFarm(
        11,
        100,
        (any, random) -> {
          List<Paddock> paddocks =
              any.paddocks().stream()
                  .map(paddock -> FarmCopy.paddock(paddock, someOf(current, random)))
                  .toList();
          Farm farm = FarmCopy.of(any).paddocks(paddocks).build();
          OutcomeFunction run = model(farm).newRun();
          assertThat(run.winterGrowthNow()).isEqualTo(1);
          for (int i = 0; i < paddocks.size(); i++) {
            assertThat(run.winterLossKgDmPerHa(i)).isZero();
            assertThat(run.oldShare(model(farm).keepAll(), i, 0)).isZero();
          }
        });
  }

  private static List<Identification> someOf(List<String> names, SplittableRandom random) {
    List<Identification> plants = new ArrayList<>(RandomFarms.plants(random, names));
    plants.add(new Identification(List.of(names.get(random.nextInt(names.size()))), 20));
    return plants;
  }

  @Test
  void keepAll_underAnyDraw_isWithinTheLimitsAndWorthNothing() {
    forAnyFarm(
        12,
        100,
        (farm, random) -> {
          FarmModel model = model(farm);
          OutcomeFunction run = model.newRun();
          Outcome outcome = model.newOutcome();
          assertThat(new LikelySearch(model).feasible(model.keepAll())).isTrue();
          for (int round = 0; round < 3; round++) {
            run.set(RandomFarms.draw(model.inputs().all(), random));
            run.evaluate(model.keepAll(), outcome);
            assertThat(outcome.npv()).isZero();
          }
        });
  }

  @Test
  void find_moreMoney_neverLowersTheValue() {
    forAnySmallFarm(
        13,
        (farm, random) -> {
          double budget = farm.areaHa() * random.nextDouble(0, 100);
          Found before = found(farm, budget);
          Found more = found(farm, budget * random.nextDouble(1, 4));
          assertThat(before.value()).isNotNegative();
          assertThat(more.value()).isGreaterThanOrEqualTo(before.value() - tolerance(before));
        });
  }

  private static Found found(Farm farm, double budget) {
    Farm limited = farm.withFinance(farm.finance().withBudgetPerYear(budget));
    return new LikelySearch(model(limited)).find().orElseThrow();
  }

  @Test
  void find_aChoiceMadeBeforehand_isKeptAndNeverRaisesTheValue() {
    AtomicInteger possible = new AtomicInteger();
    forAnySmallFarm(
        14,
        (farm, random) -> {
          FarmModel model = model(farm);
          int paddock = random.nextInt(farm.paddocks().size());
          OutcomeFunction run = model.newRun();
          List<Integer> open =
              IntStream.range(0, farm.actions().size())
                  .filter(a -> run.allowed(paddock, a) && model.startYears(a) > 0)
                  .boxed()
                  .toList();
          int action = open.get(random.nextInt(open.size()));
          Found free = new LikelySearch(model).find().orElseThrow();
          FixedChoice choice = new FixedChoice(paddock, action, OptionalInt.empty());
          new LikelySearch(model, List.of(choice))
              .find()
              .ifPresent(
                  forced -> {
                    assertThat(forced.plan().action(paddock)).isEqualTo(action);
                    assertThat(forced.value()).isLessThanOrEqualTo(free.value() + tolerance(free));
                    possible.incrementAndGet();
                  });
        });
    assertThat(possible).hasValueGreaterThan(SMALL_FARMS / 3);
  }

  @Test
  void winterGrowth_moreOfThePoorestCultivarInAPaddock_isNeverHigher() {
    String poorest =
        RandomFarms.TABLES.cultivars().values().stream()
            .min(Comparator.comparingDouble(c -> c.relativeWinterYield().likely()))
            .map(Cultivar::name)
            .orElseThrow();
    forAnyFarm(
        15,
        100,
        (farm, random) -> {
          List<Paddock> paddocks = new ArrayList<>(farm.paddocks());
          int worse = random.nextInt(paddocks.size());
          List<Identification> plants = new ArrayList<>(paddocks.get(worse).identifications());
          OutcomeFunction now = model(farm).newRun();
          plants.add(new Identification(List.of(poorest), 1 + random.nextInt(100)));
          if (plants.size() == 1) {
            return; // nobody had looked, so nothing was known to be better
          }
          paddocks.set(worse, FarmCopy.paddock(paddocks.get(worse), plants));
          OutcomeFunction then = model(FarmCopy.of(farm).paddocks(paddocks).build()).newRun();
          assertThat(then.winterFactorNow(worse))
              .isLessThanOrEqualTo(now.winterFactorNow(worse) + 1e-12);
          assertThat(then.winterGrowthNow()).isLessThanOrEqualTo(now.winterGrowthNow() + 1e-12);
          assertThat(then.boughtMj(then.winterGrowthNow()))
              .isGreaterThanOrEqualTo(now.boughtMj(now.winterGrowthNow()) * (1 - 1e-9));
        });
  }

  @Test
  void outcome_ofAFarmWithoutEwes_savesNoLambs() {
    forAnyFarm(
        16,
        60,
        (any, random) -> {
          List<Paddock> paddocks = any.paddocks().stream().map(FarmCopy::ofNoMob).toList();
          Farm farm = FarmCopy.of(any).paddocks(paddocks).mobs(List.of()).build();
          Outcome outcome = outcome(model(farm), randomPlan(model(farm), random));
          assertThat(outcome.lambsSaved).containsOnly(0);
          assertThat(outcome.ewesInLamb).containsOnly(0);
        });
  }

  @Test
  void evaluate_twoPlansInTurn_forgetsTheFirst() {
    forAnyFarm(
        17,
        60,
        (farm, random) -> {
          FarmModel model = model(farm);
          double[] x = RandomFarms.draw(model.inputs().all(), random);
          Plan plan = randomPlan(model, random);
          Outcome fresh = model.newOutcome();
          Outcome used = model.newOutcome();
          OutcomeFunction one = model.newRun();
          one.set(x);
          one.evaluate(plan, fresh);
          OutcomeFunction other = model.newRun();
          other.evaluate(randomPlan(model, random), used);
          other.set(RandomFarms.draw(model.inputs().all(), random));
          other.evaluate(plan, used);
          other.set(x);
          other.evaluate(plan, used);
          assertThat(used.npv()).isEqualTo(fresh.npv());
          assertThat(used.lambsSaved).isEqualTo(fresh.lambsSaved);
          assertThat(used.supplementSaved).isEqualTo(fresh.supplementSaved);
        });
  }

  private static Farm labour(Farm farm, boolean own) {
    return FarmCopy.of(farm)
        .actions(
            farm.actions().stream()
                .map(action -> action.withCosts(labour(action.costs(), own)))
                .toList())
        .build();
  }

  private static List<CostLine> labour(List<CostLine> lines, boolean own) {
    return lines.stream()
        .map(line -> new CostLine(line.name(), line.phase(), own, line.costPerHa()))
        .toList();
  }

  /** Whether a line is paid or own labour moves no total. */
  @Test
  void cost_linesMarkedAsLabourOrNot_isTheSameInAll() {
    forAnyFarm(
        31,
        20,
        (farm, random) -> {
          FarmModel some = model(farm);
          Plan plan = withoutRules(some, randomPlan(some, random));
          Outcome mixed = outcome(some, plan);
          Outcome paid = outcome(model(labour(farm, false)), plan);
          Outcome own = outcome(model(labour(farm, true)), plan);
          double rounding = ROUNDING * Math.max(1, moved(mixed));
          for (int t = 0; t < mixed.years(); t++) {
            assertThat(paid.labourCost(t)).isZero();
            assertThat(own.actionCost(t)).isZero();
            assertThat(mixed.actionCost(t) + mixed.labourCost(t)).isEqualTo(mixed.cost(t));
            assertThat(mixed.cost(t)).isCloseTo(paid.actionCost(t), within(rounding));
            assertThat(mixed.cost(t)).isCloseTo(own.labourCost(t), within(rounding));
            assertThat(mixed.net(t)).isCloseTo(own.net(t), within(rounding));
          }
          assertThat(mixed.npv()).isCloseTo(paid.npv(), within(rounding));
        });
  }
}
