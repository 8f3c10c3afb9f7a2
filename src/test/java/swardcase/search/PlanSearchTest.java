package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import swardcase.FarmCopy;
import swardcase.OtherCurrency;
import swardcase.RandomFarms;
import swardcase.chance.CertaintyGain;
import swardcase.draws.Draws;
import swardcase.evidence.Assumption;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.farm.Management;
import swardcase.farm.Paddock;
import swardcase.farm.SeasonGrowth;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.Aim.Gain;
import swardcase.search.DrawnSample.Trial;
import swardcase.search.Found.BestStart;
import swardcase.search.Found.Worth;

/** The plan found over the draws against full enumeration, and the laws that it must keep. */
class PlanSearchTest {

  private static final long SEED = 7;

  /** 600 a hectare of farm, in money. */
  private static double tolerance(FarmModel model) {
    return 600 * model.farm().areaHa();
  }

  private static Draws draws(FarmModel model) {
    return new Draws(model, SEED, 20, 20);
  }

  /** Few, for what does not hang on how well the worth of a plan is known. */
  private static Draws fewDraws(FarmModel model) {
    return new Draws(model, SEED, 20, 5);
  }

  private static Found rough(FarmModel model) {
    return new PlanSearch(fewDraws(model), List.of(), true).find().orElseThrow();
  }

  private static Found find(FarmModel model, List<FixedChoice> fixed) {
    return new PlanSearch(draws(model), fixed).find().orElseThrow();
  }

  private static Found find(FarmModel model) {
    return find(model, List.of());
  }

  /** What one plan has more than another, and the standard error of that. */
  private static double[] more(FarmModel model, Draws draws, Plan plan, Plan than) {
    PlanTable table = new PlanTable(model, model.newRun(), List.of());
    double[][][] values =
        DrawnSample.setAnew(table, draws)
            .values(List.of(new Trial(table.pick(plan)), new Trial(table.pick(than))));
    CertaintyGain gain = new CertaintyGain(values[1][0], tolerance(model));
    return new double[] {
      gain.of(values[0][0]), draws.uniforms().standardError(gain.influence(values[0][0]))
    };
  }

  /**
   * The most that any plan within the limits has more than a plan, less what a change must add to
   * be made for each paddock more that it does not keep.
   */
  private static double mostMore(FarmModel model, Plan plan) {
    PlanTable table = new PlanTable(model, model.newRun(), List.of());
    Position at = new Position(table);
    int last = table.places() - 1;
    List<Change> changes =
        IntStream.range(table.first(last), table.first(last + 1)).mapToObj(Change::of).toList();
    List<Trial> trials = new ArrayList<>(List.of(new Trial(table.pick(plan))));
    int[] pick = new int[table.places()];
    Arrays.setAll(pick, table::first);
    do {
      at.set(pick);
      trials.add(new Trial(pick, changes.stream().filter(at::fits).toList()));
    } while (next(table, pick));
    double[][][] values = DrawnSample.setAnew(table, draws(model)).values(trials);
    Aim aim = new Aim(table, tolerance(model), 1e-3 * tolerance(model) / table.paddocks());
    double[] gains = aim.gains(trials, values);
    double most = Double.NEGATIVE_INFINITY;
    for (int k = 1; k < values.length; k++) {
      for (Gain more : aim.gains(trials.get(k), values[k])) {
        most = Math.max(most, gains[k] + more.gain());
      }
    }
    return most;
  }

  /** Counts on through the choices of all paddocks but the last; false at the end. */
  private static boolean next(PlanTable table, int[] pick) {
    for (int i = 0; i < pick.length - 1; i++) {
      if (++pick[i] < table.first(i + 1)) {
        return true;
      }
      pick[i] = table.first(i);
    }
    return false;
  }

  private static long changed(FarmModel model, Plan plan) {
    return IntStream.range(0, plan.paddocks()).filter(i -> plan.action(i) != model.keep()).count();
  }

  /** Fails if any plan has more than what the search says it could still find, or leaves alone. */
  private static double assertNearTheBest(FarmModel model, String as) {
    Found found = find(model);
    double most = mostMore(model, found.plan().plan());
    double ignored = 1e-4 * tolerance(model);
    assertThat(most).as(as).isLessThanOrEqualTo(found.stillToFind().mean() + ignored);
    return found.plan().certaintyEquivalent();
  }

  @Test
  void find_smallFarms_isTheBestOfAllPlansWithinWhatCouldStillBeFound() {
    SplittableRandom random = new SplittableRandom(2026);
    int changed = 0;
    for (int round = 0; round < 16; round++) {
      FarmModel model = PlanFarms.model(PlanFarms.small(random, 2));
      changed += assertNearTheBest(model, "small farm " + round) > 0 ? 1 : 0;
    }
    for (int round = 0; round < 2; round++) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random, 2));
      changed += assertNearTheBest(model, "any farm " + round) > 0 ? 1 : 0;
    }
    assertThat(changed).isGreaterThan(8);
  }

  @Test
  void find_anyNumberOfThreads_isTheSameToTheLastBit() throws Exception {
    FarmModel model = PlanFarms.model(PlanFarms.demo("risky-farm"));
    Found once = rough(model);
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertThat(pool.submit(() -> rough(model)).get()).isEqualTo(once);
      } finally {
        pool.shutdown();
      }
    }
  }

  @Test
  void find_paddocksInAnotherOrder_isAsGoodWithinWhatCouldStillBeFound() {
    for (String name : List.of("mixed-farm", "risky-farm")) {
      Farm farm = PlanFarms.demo(name);
      List<Paddock> order = new ArrayList<>(farm.paddocks());
      Collections.reverse(order);
      FarmModel model = PlanFarms.model(farm);
      Found found = find(model);
      Plan turned = find(PlanFarms.model(PlanFarms.withPaddocks(farm, order))).plan().plan();
      Plan back = model.keepAll();
      for (int i = 0; i < back.paddocks(); i++) {
        int there = back.paddocks() - 1 - i;
        back = back.with(i, turned.action(there), turned.start(there));
      }
      for (int i = back.paddocks(); i < back.places(); i++) {
        back = back.with(i, turned.action(i), 0);
      }
      double[] more = more(model, draws(model), found.plan().plan(), back);
      double still = found.stillToFind().mean();
      assertThat(Math.abs(more[0])).as(name).isLessThanOrEqualTo(still + 3 * more[1]);
    }
  }

  @Test
  void find_moreBudget_neverLowersTheWorth() {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < 3; round++) {
      Farm farm = PlanFarms.small(random, 4);
      Plan before = null;
      for (double budget : new double[] {0, 4000, 8000, 16000, 64000}) {
        FarmModel model =
            PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(budget)));
        Found found = find(model);
        if (before != null) {
          double[] more = more(model, draws(model), found.plan().plan(), before);
          double still = found.stillToFind().mean();
          assertThat(more[0]).as("budget " + budget).isGreaterThanOrEqualTo(-still - 3 * more[1]);
        }
        before = found.plan().plan();
      }
    }
  }

  @Test
  void find_choicesMadeBeforehand_areKept() {
    SplittableRandom random = new SplittableRandom(12);
    for (int round = 0; round < 3; round++) {
      FarmModel model = PlanFarms.model(PlanFarms.small(random, 3));
      Plan free = find(model).plan().plan();
      OutcomeFunction run = model.newRun();
      List<Integer> ways =
          IntStream.range(0, model.actions().size())
              .filter(
                  a -> a == model.keep() || model.actions().get(a).kind() == ActionKind.KEEP_OFF)
              .filter(a -> run.allowed(1, a))
              .limit(2)
              .boxed()
              .toList();
      for (int a : ways) {
        Found forced = find(model, List.of(new FixedChoice(1, a, OptionalInt.empty())));
        assertThat(forced.plan().plan().action(1)).isEqualTo(a);
        assertThat(forced.others())
            .allMatch(other -> other.plan().action(1) == forced.plan().plan().action(1));
        assertThat(forced.nearEqual())
            .noneMatch(
                near ->
                    near.paddock() == 1
                        && near.course().action() != forced.plan().plan().action(1));
        double[] more = more(model, draws(model), forced.plan().plan(), free);
        assertThat(more[0]).isLessThanOrEqualTo(3 * more[1]);
      }
    }
  }

  @Test
  void find_choicesThatPassALimit_isEmpty() {
    Farm farm = PlanFarms.small(new SplittableRandom(13), 3);
    FarmModel model = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(0)));
    OutcomeFunction run = model.newRun();
    int dear = model.farm().actions().size() - 1;
    int paddock = IntStream.range(0, 3).filter(i -> run.allowed(i, dear)).findFirst().orElseThrow();
    List<FixedChoice> fixed = List.of(new FixedChoice(paddock, dear, OptionalInt.of(0)));
    assertThat(new PlanSearch(draws(model), fixed).find()).isEmpty();
  }

  @Test
  void find_anyFarm_keepsWithinTheLimitsAndTellsWorthOnTheSameDraws() {
    SplittableRandom random = new SplittableRandom(14);
    for (int round = 0; round < 6; round++) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random, 6));
      LikelySearch limits = new LikelySearch(model);
      Found found = find(model);
      Plan plan = found.plan().plan();
      assertThat(limits.feasible(plan)).isTrue();
      assertThat(found.plan().behind()).isCloseTo(0, within(1e-6 * tolerance(model)));
      assertThat(found.stillToFind().mean()).isNotNegative();
      for (Worth other : found.others()) {
        assertThat(limits.feasible(other.plan())).isTrue();
        assertThat(other.behind())
            .isCloseTo(
                found.plan().certaintyEquivalent() - other.certaintyEquivalent(),
                within(1e-6 * tolerance(model)));
      }
      found
          .nearEqual()
          .forEach(
              near -> {
                Course course = near.course();
                Plan changed = plan.with(near.paddock(), course.action(), course.start());
                assertThat(changed).isNotEqualTo(plan);
                assertThat(limits.feasible(changed)).isTrue();
                double[] more = more(model, draws(model), plan, changed);
                assertThat(near.behind()).isCloseTo(more[0], within(1e-6 * tolerance(model)));
                assertThat(near.behind()).isLessThanOrEqualTo(found.stillToFind().mean());
              });
      found
          .careful()
          .ifPresent(
              careful -> {
                assertThat(careful.plan()).isNotEqualTo(plan);
                assertThat(careful.behind()).isNegative();
                assertThat(limits.feasible(careful.plan())).isTrue();
              });
    }
  }

  @Test
  void find_inAnotherCurrency_isTheSamePlanOfAsManyTimesTheWorth() {
    Farm farm = PlanFarms.demo("risky-farm");
    FarmModel other = new OtherCurrency(7).model(farm);
    Worth here = rough(PlanFarms.model(farm)).plan();
    Worth there = rough(other).plan();
    assertThat(there.plan()).isEqualTo(here.plan());
    assertThat(there.certaintyEquivalent() / here.certaintyEquivalent()).isCloseTo(7, within(1e-6));
  }

  /** A pair is taken here after which others that were looked at pass a limit. */
  @Test
  void find_pairsThatNoLongerFit_areLeftOut() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("risky-farm"));
    Plan plan =
        new PlanSearch(new Draws(model, 2, 20, 2), List.of()).find().orElseThrow().plan().plan();
    assertThat(new LikelySearch(model).feasible(plan)).isTrue();
  }

  @Test
  void bestStarts_anyBudget_areJudgedWhetherOrNotTheyFit() {
    Farm farm = PlanFarms.small(new SplittableRandom(15), 3);
    List<FixedChoice> keepAll =
        IntStream.range(0, 3)
            .mapToObj(i -> new FixedChoice(i, PlanFarms.model(farm).keep(), OptionalInt.empty()))
            .toList();
    FarmModel poor = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(0)));
    FarmModel rich = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(1e9)));
    List<List<BestStart>> without = find(poor, keepAll).bestStarts();
    List<List<BestStart>> with = find(rich, keepAll).bestStarts();
    OutcomeFunction run = poor.newRun();
    for (int i = 0; i < 3; i++) {
      int paddock = i;
      assertThat(
              without.get(i).stream()
                  .map(start -> poor.base(start.course().action()))
                  .filter(a -> a != poor.keep())
                  .toList())
          .isEqualTo(
              IntStream.range(0, poor.actions().size())
                  .filter(a -> a < poor.farm().actions().size())
                  .filter(a -> a != poor.keep() && run.allowed(paddock, a))
                  .boxed()
                  .toList());
      for (int k = 0; k < without.get(i).size(); k++) {
        BestStart there = with.get(i).get(k);
        assertThat(without.get(i).get(k).course()).isEqualTo(there.course());
        assertThat(without.get(i).get(k).gain()).isEqualTo(there.gain());
        assertThat(there.course().start() == 0 || there.gain() > 0).isTrue();
      }
    }
    assertThat(without.stream().flatMap(List::stream)).anyMatch(start -> !start.passes().isEmpty());
  }

  @Test
  void find_whatPaysNextToNothing_isNotDone() {
    Farm farm = PlanFarms.demo("current-farm");
    Management of = farm.management();
    Assumption nothing = RandomFarms.exactly("own time", 0);
    Management free =
        new Management(
            of.conditionDeficit(),
            of.mostEweIncrease(),
            of.weaningWeeks(),
            of.lossLimit(),
            nothing,
            of.scanPerEwe(),
            nothing);
    FarmModel model = PlanFarms.model(FarmCopy.of(withBreakAsUsual(farm)).management(free).build());
    assertThat(new LikelySearch(model).best()).isNotEqualTo(model.keepAll());
    Found found = find(model);
    assertThat(found.plan().plan()).isEqualTo(model.keepAll());
    assertThat(found.plan().certaintyEquivalent()).isZero();
  }

  private static Farm withBreakAsUsual(Farm farm) {
    return FarmCopy.withSeasons(
        farm,
        season ->
            new SeasonGrowth(
                season.type(),
                season.chance(),
                season.growthKgDmPerHaPerDay(),
                Optional.empty(),
                season.evidence(),
                season.source(),
                season.setBy()));
  }

  /** What is told is there: the farm without the limit has a plan that is worth as much more. */
  @Test
  void worthOfLifting_aLimitThatStopsWhatPays_isFoundWithoutIt() {
    Farm farm = PlanFarms.demo("large-farm");
    FarmModel poor = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(2000)));
    Found found = new PlanSearch(fewDraws(poor), List.of()).find().orElseThrow();
    double worth = found.worthOfLifting().get(PlanLimit.MONEY);
    assertThat(worth).isPositive();
    assertThat(found.bestStarts().stream().flatMap(List::stream))
        .anyMatch(start -> start.gain() > 0 && start.passes().contains(PlanLimit.MONEY));
    FarmModel rich = PlanFarms.model(farm.withFinance(farm.finance().withBudgetPerYear(1e9)));
    Found without = new PlanSearch(fewDraws(rich), List.of()).find().orElseThrow();
    double[] more = more(rich, fewDraws(rich), without.plan().plan(), found.plan().plan());
    assertThat(worth).isLessThanOrEqualTo(more[0] + without.stillToFind().mean() + 3 * more[1]);
    assertThat(worth).isGreaterThan(0.5 * more[0]);
    assertThat(without.worthOfLifting()).doesNotContainKey(PlanLimit.MONEY);
    assertThat(new LikelySearch(poor).feasible(found.plan().plan())).isTrue();
  }

  @Test
  void bestStart_ofAPayingAction_isItsBestYear() {
    FarmModel model = PlanFarms.model(PlanFarms.demo("risky-farm"));
    Found found = find(model);
    Plan plan = found.plan().plan();
    Draws draws = new Draws(model, 99, 16, 16);
    for (BestStart best : found.bestStarts().get(1)) {
      Course course = best.course();
      int first = model.firstStart(course.action());
      for (int s = first; s < model.startYears(course.action()) && best.gain() > 0; s++) {
        double[] more =
            more(
                model,
                draws,
                plan.with(1, course.action(), s),
                plan.with(1, course.action(), course.start()));
        assertThat(more[0]).isLessThanOrEqualTo(3 * more[1]);
      }
    }
  }

  /** Figures of many farms; how many, and of which kind, by system properties. */
  @Test
  @EnabledIfSystemProperty(named = "swardcase.search.trial", matches = "true")
  void find_manySmallFarms_isTheBestOfAllPlansWithinWhatCouldStillBeFound() {
    SplittableRandom random = new SplittableRandom(Long.getLong("swardcase.search.seed", 1));
    for (int round = 0; round < 60; round++) {
      assertNearTheBest(PlanFarms.model(PlanFarms.small(random, 2)), "small " + round);
      assertNearTheBest(PlanFarms.model(RandomFarms.any(random, 2)), "any " + round);
    }
  }

  @Test
  @EnabledIfSystemProperty(named = "swardcase.search.trial", matches = "true")
  void find_demoFarms_isWorthAtLeastThePlanAtLikelyInputs() {
    for (String name :
        List.of("mixed-farm", "current-farm", "northern-farm", "risky-farm", "large-farm")) {
      FarmModel model = PlanFarms.model(PlanFarms.demo(name));
      Plan likely = new LikelySearch(model).best();
      Draws draws = new Draws(model, 1, 20, 50);
      Plan plan = new PlanSearch(draws, List.of()).find().orElseThrow().plan().plan();
      double[] more = more(model, new Draws(model, 424_242, 40, 250), plan, likely);
      System.out.printf(Locale.ROOT, "%s: %.0f (%.0f)%n", name, more[0], more[1]);
      long fewer = changed(model, likely) - changed(model, plan);
      double left = fewer * 1e-3 * tolerance(model) / model.farm().paddocks().size();
      assertThat(more[0] + left).as(name).isGreaterThanOrEqualTo(-2 * more[1]);
      if (List.of("mixed-farm", "large-farm").contains(name)) {
        assertThat(more[0]).isGreaterThan(2 * more[1]);
      }
    }
  }
}
