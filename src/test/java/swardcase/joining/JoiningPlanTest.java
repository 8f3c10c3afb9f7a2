package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.draws.Draws;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.UseRule;
import swardcase.joining.JoiningMeasures.Pair;
import swardcase.joining.Stay.Where;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.reproduction.ByFormula;
import swardcase.tables.ResponseStory;

/** The coming year of plans, found or made up: what is shut, and who is where. */
class JoiningPlanTest {

  private static FarmModel model;

  @BeforeAll
  static void readFarm() {
    model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
  }

  private static Draws draws(FarmModel of) {
    return new Draws(of, 1, 20, 5);
  }

  private static JoiningPlan joining(FarmModel of, Plan plan) {
    return JoiningPlan.of(draws(of), plan).orElseThrow();
  }

  /** A plan with any rules and actions in some of its paddocks, allowed or not. */
  private static Plan anyPlan(FarmModel of, SplittableRandom random) {
    Plan plan = of.keepAll();
    for (int i = 0; i < plan.paddocks(); i++) {
      if (random.nextInt(2) == 0) {
        plan = plan.with(i, random.nextInt(of.actions().size()), random.nextInt(2));
      }
    }
    int inOrder = plan.paddocks() + FarmRule.IN_ORDER.ordinal();
    return random.nextInt(3) == 0 ? plan.with(inOrder, 1, 0) : plan;
  }

  private interface Law {
    void check(FarmModel of, Plan plan, JoiningPlan joining);
  }

  private static void forAnyPlan(long seed, Law law) {
    int checked = 0;
    for (int k = 0; k < 40; k++) {
      SplittableRandom random = new SplittableRandom(1000 * seed + k);
      Farm farm = RandomFarms.any(random, 2 + random.nextInt(5));
      if (farm.ewesJoined() > 0) {
        FarmModel of = new FarmModel(farm, RandomFarms.TABLES);
        Plan plan = anyPlan(of, random);
        law.check(of, plan, joining(of, plan));
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(25);
  }

  /** The place of the action that is this rule and nothing else. */
  private static int rule(FarmModel of, String who, UseRule.When when) {
    return IntStream.range(0, of.actions().size())
        .filter(a -> of.actions().get(a).use().isPresent() && !of.actions().get(a).sows())
        .filter(a -> of.actions().get(a).runDownYears() == 0)
        .filter(a -> of.actions().get(a).use().get().who().equals(who))
        .filter(a -> of.actions().get(a).use().get().when() == when)
        .findFirst()
        .orElseThrow();
  }

  private static int paddock(String name) {
    return model.farm().paddocks().stream().map(Paddock::name).toList().indexOf(name);
  }

  @Test
  void planThatKeepsAll_shutsNothingAndLeavesEveryMobWhereItIs() {
    JoiningPlan plan = joining(model, model.keepAll());
    assertThat(plan.instructions()).isEmpty();
    assertThat(plan.lambsSaved().mean()).isZero();
    assertThat(plan.moneySaved().mean()).isZero();
  }

  /** The sheet says what the plan says: nobody is told to be where the plan keeps him off. */
  @Test
  void stays_ofAnyPlan_areInPaddocksThatItLeavesOpen() {
    int[] named = new int[1];
    forAnyPlan(
        1,
        (of, plan, joining) -> {
          for (int g = 0; g < of.farm().mobs().size(); g++) {
            for (Stay stay : joining.stays(g)) {
              for (int i : stay.paddocks()) {
                Action action = of.actions().get(plan.action(i));
                boolean out = plan.start(i) == 0 && joining.likely().isShut(plan.action(i), 0);
                assertThat(out).isFalse();
                boolean before =
                    action.use().isPresent()
                        && action.use().get().keepsOff(g)
                        && action.use().get().when() == UseRule.When.BEFORE_JOINING;
                assertThat(before).isFalse();
                boolean green =
                    action.use().isPresent()
                        && action.use().get().keepsOff(g)
                        && action.use().get().when() == UseRule.When.WHILE_GREEN
                        && halfMonths(joining, g, stay).anyMatch(joining.likely()::isGreen);
                assertThat(green).isFalse();
                named[0]++;
              }
            }
          }
        });
    assertThat(named[0]).isGreaterThan(50);
  }

  private static IntStream halfMonths(JoiningPlan joining, int mob, Stay stay) {
    List<Integer> weeks = joining.weeks(mob);
    return IntStream.rangeClosed(weeks.indexOf(stay.from()), weeks.indexOf(stay.to()))
        .map(weeks::get);
  }

  @Test
  void stays_ofAnyPlan_coverAllWeeksOnce() {
    forAnyPlan(
        2,
        (of, plan, joining) -> {
          for (int g = 0; g < of.farm().mobs().size(); g++) {
            List<Integer> covered = new ArrayList<>();
            int mob = g;
            joining.stays(g).forEach(stay -> halfMonths(joining, mob, stay).forEach(covered::add));
            assertThat(covered).isEqualTo(joining.weeks(g));
          }
        });
  }

  @Test
  void instructions_ofAnyPlan_areThoseOfItsComingYear() {
    forAnyPlan(
        3,
        (of, plan, joining) -> {
          for (int i = 0; i < plan.paddocks(); i++) {
            int paddock = i;
            boolean out = plan.start(i) == 0 && joining.likely().isShut(plan.action(i), 0);
            boolean rule = of.actions().get(plan.action(i)).use().isPresent();
            assertThat(joining.instructions().stream().anyMatch(at -> at.paddock() == paddock))
                .isEqualTo(out || rule);
          }
        });
  }

  /** The lambs of the sheet are those of the plan: read from the outcome in the same draws. */
  @Test
  void lambsSaved_areThoseOfThePlansFirstYear() {
    Plan plan =
        model
            .keepAll()
            .with(paddock("Lagoon"), rule(model, UseRule.ALL_EWES, UseRule.When.BEFORE_JOINING), 0);
    JoiningMeasures measures =
        new JoiningMeasures(model.farm().mobs(), List.of(), plan, model.newOutcome());
    OutcomeFunction run = model.newRun();
    double[] read = new double[measures.size()];
    measures.read(run, model.inputs().likely(), read);
    Outcome outcome = model.newOutcome();
    run.evaluate(plan, outcome);
    assertThat(read[measures.lambs()]).isEqualTo(outcome.lambs(0)).isPositive();
    assertThat(read[measures.money()]).isEqualTo(outcome.lambsSaved(0)).isPositive();
    assertThat(joining(model, plan).lambsSaved().mean()).isPositive();
  }

  /** A tenth of a hectare of clean clover is no place for 1,900 ewes, however clean. */
  @Test
  void paddockTooSmallForAMob_isNotNamed() {
    List<Paddock> paddocks = new ArrayList<>(model.farm().paddocks());
    int small = paddock("New Ground");
    paddocks.set(small, FarmCopy.paddock(paddocks.get(small), "New Ground", 0.1));
    FarmModel other =
        new FarmModel(FarmCopy.of(model.farm()).paddocks(paddocks).build(), RandomFarms.TABLES);
    for (int inOrder = 0; inOrder < 2; inOrder++) {
      Plan plan = other.keepAll();
      plan = plan.with(plan.paddocks() + FarmRule.IN_ORDER.ordinal(), inOrder, 0);
      JoiningPlan joining = joining(other, plan);
      for (int g = 0; g < other.farm().mobs().size(); g++) {
        assertThat(joining.stays(g))
            .filteredOn(stay -> stay.where() == Where.NAMED)
            .isNotEmpty()
            .noneMatch(stay -> stay.paddocks().contains(small));
      }
    }
  }

  /** What is named costs a mob less than spreading does, and never more than grazing as now. */
  @Test
  void named_onTheRiskyFarm_loseFewerEwesInLamb() {
    JoiningPlan joining = joining(model, model.keepAll());
    int named = 0;
    for (int g = 0; g < model.farm().mobs().size(); g++) {
      boolean isNamed = joining.stays(g).stream().anyMatch(stay -> stay.where() == Where.NAMED);
      named += isNamed ? 1 : 0;
      for (int season = 0; season < joining.seasons(); season++) {
        double less = joining.lostNow(season, g) - joining.lostByPlan(season, g);
        assertThat(less).isGreaterThan(isNamed ? 0.1 : -0.01);
      }
    }
    assertThat(named).isPositive();
  }

  /** Nobody would name paddocks by half-month on 400 paddocks; the cleanest are listed once. */
  @Test
  void farmOfManyPaddocks_listsTheCleanestOnce() {
    List<Paddock> many = new ArrayList<>();
    for (int k = 0; k < 400; k++) {
      Paddock like = model.farm().paddocks().get(k % 10);
      many.add(FarmCopy.paddock(like, like.name() + " " + k, like.areaHa()));
    }
    Farm farm = FarmCopy.of(model.farm()).paddocks(many).build();
    FarmModel large = new FarmModel(farm, RandomFarms.TABLES);
    JoiningPlan joining = joining(large, large.keepAll());
    for (int g = 0; g < farm.mobs().size(); g++) {
      assertThat(joining.stays(g)).hasSize(1);
    }
    Stay stay = joining.stays(1).get(0);
    assertThat(stay.where()).isEqualTo(Where.NAMED);
    double most = 0;
    for (int i : stay.paddocks()) {
      assertThat(joining.isUnknown(i)).isFalse();
      most = Math.max(most, joining.likely().greenDose(i));
    }
    for (int i = 0; i < many.size(); i++) {
      if (!stay.paddocks().contains(i) && !joining.isUnknown(i)) {
        assertThat(joining.likely().greenDose(i)).isGreaterThanOrEqualTo(most - 1e-12);
      }
    }
  }

  @Test
  void lostThere_isMoreOnStrongerCloverAndNothingOnNone() {
    int rule = rule(model, UseRule.ALL_EWES, UseRule.When.BEFORE_JOINING);
    Plan plan = model.keepAll();
    for (int i = 0; i < plan.paddocks(); i++) {
      plan = plan.with(i, rule, 0);
    }
    JoiningPlan joining = joining(model, plan);
    int lagoon = paddock("Lagoon");
    int newGround = paddock("New Ground");
    for (int g = 0; g < 2; g++) {
      assertThat(joining.lostThere(g, lagoon).mean())
          .isGreaterThan(joining.lostThere(g, newGround).mean() + 5);
      assertThat(joining.lostThere(g, newGround).mean()).isLessThan(1);
      assertThat(joining.chanceOfLoss(g, lagoon)).isBetween(0.3, 1.0);
      assertThat(joining.chanceOfLoss(g, newGround)).isLessThan(0.1);
    }
    assertThat(joining.isUnknown(paddock("Lease"))).isTrue();
    assertThat(joining.isUnknown(lagoon)).isFalse();
  }

  /** The numbers of any run by their short ways, and dose by dose. */
  @Test
  void measures_ofAnyRun_areThoseOfTheWholeDoseResponse() {
    for (int k = 0; k < 30; k++) {
      SplittableRandom random = new SplittableRandom(11_000 + k);
      Farm farm = RandomFarms.any(random, 1 + random.nextInt(4));
      if (farm.ewesJoined() == 0) {
        continue;
      }
      FarmModel of = new FarmModel(farm, RandomFarms.TABLES);
      List<Pair> pairs = new ArrayList<>();
      for (int g = 0; g < farm.mobs().size(); g++) {
        for (int i = 0; i < farm.paddocks().size(); i++) {
          pairs.add(new Pair(g, i));
        }
      }
      JoiningMeasures measures =
          new JoiningMeasures(farm.mobs(), pairs, of.keepAll(), of.newOutcome());
      double[] x = RandomFarms.draw(of.inputs().all(), random);
      OutcomeFunction run = of.newRun();
      run.set(x);
      double[] read = new double[measures.size()];
      measures.read(run, x, read);
      for (Pair pair : pairs) {
        double[] year = new double[HalfMonths.COUNT];
        double[] doses = new double[HalfMonths.COUNT];
        for (int p = 0; p < year.length; p++) {
          year[p] = run.greenDose(pair.paddock()) * run.greenShare(p);
          boolean held = run.flock(pair.mob()).isHeld(p);
          doses[p] = held ? year[p] : run.flock(pair.mob()).doseNow(p);
        }
        Mob mob = farm.mobs().get(pair.mob());
        int day = HalfMonths.dayOfYear(mob.joiningStart());
        double expected = 100 * run.flock(pair.mob()).lossOfJoining(doses, day);
        assertThat(read[measures.lost(pair)]).isCloseTo(expected, within(1e-9));
        ResponseStory story = ResponseStory.of(value(of, x, ResponseStory.KEY));
        String as = story == ResponseStory.OUTBREAKS ? "-outbreaks" : "";
        double exposure =
            ByFormula.seasonExposure(
                year,
                value(of, x, "oestrogen.d50" + as),
                value(of, x, "oestrogen.steepness"),
                value(of, x, "oestrogen.sterility-reference-dose"));
        double q = value(of, x, "oestrogen.sterility-q" + as);
        double barren = 100 * ByFormula.sterileShare(exposure, q);
        assertThat(read[measures.barren(pair.paddock())])
            .isCloseTo(story == ResponseStory.NONE ? 0 : barren, within(1e-9));
      }
    }
  }

  private static double value(FarmModel of, double[] x, String parameter) {
    return x[of.inputs().all().indexOf(RandomFarms.TABLES.parameter(parameter))];
  }

  @Test
  void farm_withoutEwes_hasNoPlan() {
    FarmModel without =
        new FarmModel(FarmCopy.of(model.farm()).mobs(List.of()).build(), RandomFarms.TABLES);
    assertThat(JoiningPlan.of(draws(without), without.keepAll())).isEmpty();
  }
}
