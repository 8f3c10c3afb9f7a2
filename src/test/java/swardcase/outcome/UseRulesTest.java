package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.UseRule;
import swardcase.farm.UseRule.When;

/**
 * Who is kept off a paddock, what that does to the mobs and to the feed, and the order of grazing.
 */
class UseRulesTest {

  private static final Farm RISKY = RandomFarms.demo("risky-farm");

  private final FarmModel model = new FarmModel(RISKY, RandomFarms.TABLES);
  private final OutcomeFunction run = model.newRun();
  private final int sums = YearSums.size(run.mobs());

  private int place(String paddock) {
    return RISKY.paddocks().stream().map(Paddock::name).toList().indexOf(paddock);
  }

  private int rule(String who, When when) {
    return IntStream.range(0, model.actions().size())
        .filter(a -> model.actions().get(a).kind() == ActionKind.KEEP_OFF)
        .filter(
            a ->
                model.actions().get(a).use().orElseThrow().who().equals(who)
                    && model.actions().get(a).use().orElseThrow().when() == when)
        .findFirst()
        .orElseThrow();
  }

  private double[] years(int paddock, int action) {
    double[] of = new double[model.years() * sums];
    run.addYears(paddock, action, 0, of);
    return of;
  }

  @Test
  void rules_ofAFarm_areAllEwesAndEachMobAtTwoTimes() {
    assertThat(UseRule.of(RISKY))
        .extracting(UseRule::name)
        .containsExactly(
            "all ewes off before joining",
            "mature ewes off before joining",
            "maidens off before joining",
            "all ewes off while green",
            "mature ewes off while green",
            "maidens off while green");
    Mob maidens = RISKY.mobs().get(1);
    Farm three =
        FarmCopy.of(RISKY)
            .mobs(List.of(RISKY.mobs().get(0), maidens, FarmCopy.named(maidens, "ewe lambs")))
            .build();
    assertThat(UseRule.of(three)).extracting(UseRule::who).contains(UseRule.YOUNG_EWES);
    assertThat(UseRule.of(FarmCopy.of(RISKY).mobs(List.of(maidens)).build())).hasSize(2);
    assertThat(UseRule.of(FarmCopy.of(RISKY).mobs(List.of()).build())).isEmpty();
  }

  /** Home is grazed by both mobs, a paddock without oestrogen needs no rule. */
  @Test
  void rule_isOfferedWhereItsMobsGrazeAndTheCloverIsStrong() {
    int home = place("Home");
    int clean = place("New Ground");
    for (int a = 0; a < model.actions().size(); a++) {
      if (model.actions().get(a).kind() == ActionKind.KEEP_OFF) {
        assertThat(run.allowed(home, a)).as(model.actions().get(a).name()).isTrue();
      }
    }
    assertThat(run.greenDose(clean)).isLessThan(0.02);
    assertThat(run.allowed(clean, rule(UseRule.ALL_EWES, When.WHILE_GREEN))).isFalse();
  }

  /** Mobs that are joined on dry feed find nothing to avoid. */
  @Test
  void ruleBeforeJoining_whereAllFeedIsDry_isNotOffered() {
    Farm mixed = RandomFarms.demo("mixed-farm");
    FarmModel dry = new FarmModel(mixed, RandomFarms.TABLES);
    OutcomeFunction likely = dry.newRun();
    for (int a = 0; a < dry.actions().size(); a++) {
      Optional<UseRule> use = dry.actions().get(a).use();
      if (use.isEmpty() || use.get().when() != When.BEFORE_JOINING) {
        continue;
      }
      boolean green =
          use.get().mobs().stream()
              .anyMatch(
                  g ->
                      IntStream.range(0, 24)
                          .anyMatch(p -> likely.flock(g).isHeld(p) && likely.greenShare(p) > 0.15));
      for (int i = 0; i < mixed.paddocks().size() && !green; i++) {
        assertThat(likely.allowed(i, a)).isFalse();
      }
    }
  }

  @Test
  void sums_whereAllEwesAreOffBeforeJoining_areThoseOfKeepingWithoutTheHeldWeeks() {
    int home = place("Home");
    double[] kept = years(home, model.keep());
    double[] off = years(home, rule(UseRule.ALL_EWES, When.BEFORE_JOINING));
    double area = RISKY.paddocks().get(home).areaHa();
    for (int g = 0; g < 2; g++) {
      assertThat(off[YearSums.at(g, YearSums.DOSE)]).isEqualTo(kept[YearSums.at(g, YearSums.DOSE)]);
      assertThat(off[YearSums.at(g, YearSums.GRAZED_HELD)]).isZero();
      assertThat(off[YearSums.at(g, YearSums.SAFE)]).isZero();
      assertThat(off[YearSums.at(g, YearSums.OFF)]).isZero();
    }
    assertThat(off[YearSums.HELD]).isEqualTo(kept[YearSums.at(0, YearSums.GRAZED)]);
    assertThat(off[YearSums.COST]).isZero();
    assertThat(off[YearSums.LABOUR])
        .isCloseTo(area * RISKY.management().useRule().likely(), within(1e-9));
  }

  /** What the mature ewes leave falls to the maidens, as far as feed is used. */
  @Test
  void sums_whereOneMobIsOff_leaveItsPartToTheOther() {
    int home = place("Home");
    double[] kept = years(home, model.keep());
    double[] off = years(home, rule("mature ewes", When.BEFORE_JOINING));
    double all = kept[YearSums.at(1, YearSums.GRAZED)];
    double safe = kept[YearSums.at(1, YearSums.SAFE)];
    assertThat(off[YearSums.at(1, YearSums.SAFE)]).isCloseTo(all, within(1e-9));
    double times = 1 + run.window().used(1) * (all / safe - 1);
    assertThat(off[YearSums.at(1, YearSums.GRAZED_HELD)]).isCloseTo(times * all, within(1e-9));
    assertThat(off[YearSums.HELD]).isZero();
    assertThat(off[YearSums.at(0, YearSums.OFF)]).isEqualTo(kept[YearSums.at(0, YearSums.GRAZED)]);
    assertThat(off[YearSums.at(1, YearSums.OFF)]).isZero();
  }

  @Test
  void dose_ofAMobKeptOffStrongClover_fallsAndThatOfTheOtherNeverDoes() {
    Outcome kept = model.newOutcome();
    Outcome off = model.newOutcome();
    int home = place("Home");
    run.evaluate(model.keepAll(), kept);
    run.evaluate(model.keepAll().with(home, rule("maidens", When.BEFORE_JOINING), 0), off);
    assertThat(off.lambsSaved(0)).isPositive();
    assertThat(kept.lambsSaved(0)).isZero();
  }

  /** A rule before a sowing ends once the new stand is weak, which at likely numbers it soon is. */
  @Test
  void rule_beforeASowing_holdsUntilTheNewStandIsWeak() {
    int sow =
        IntStream.range(0, model.actions().size())
            .filter(a -> model.actions().get(a).key().startsWith("crop-3+keep-off-all-ewes"))
            .findFirst()
            .orElseThrow();
    double limit = RandomFarms.TABLES.parameter("grazing.keep-off-limit").likely();
    double[] of = new double[model.years() * sums];
    int ended = 0;
    for (int i = 0; i < RISKY.paddocks().size(); i++) {
      if (!run.allowed(i, sow)) {
        continue;
      }
      int paddock = i;
      run.addYears(i, sow, 2, of);
      for (int t = 0; t < model.years(); t++) {
        boolean isWeak =
            t >= 2
                && IntStream.range(t - 2, model.years())
                    .allMatch(k -> run.greenDose(paddock, sow, k) < limit);
        boolean isGrazed = of[t * sums + YearSums.WINTER] > 0;
        assertThat(of[t * sums + YearSums.HELD] > 0)
            .as("%s in year %s", RISKY.paddocks().get(i).name(), t)
            .isEqualTo(!isWeak && isGrazed);
        ended += isWeak ? 1 : 0;
      }
      assertThat(of[YearSums.HELD]).isPositive();
    }
    assertThat(ended).isPositive();
  }

  /** A mob that may not move stays on what it uses. */
  @Test
  void sums_ofAMobThatMayNotMove_haveNothingElsewhere() {
    Farm mixed = RandomFarms.demo("mixed-farm");
    List<Mob> mobs = new ArrayList<>();
    for (Mob mob : mixed.mobs()) {
      mobs.add(FarmCopy.staying(mob));
    }
    FarmModel stay = new FarmModel(FarmCopy.of(mixed).mobs(mobs).build(), RandomFarms.TABLES);
    FarmModel move = new FarmModel(mixed, RandomFarms.TABLES);
    assertThat(elsewhere(stay)).isZero();
    assertThat(elsewhere(move)).isPositive();
    assertThat(stay.choices(FarmRule.IN_ORDER)).isEqualTo(1);
    assertThat(move.choices(FarmRule.IN_ORDER)).isEqualTo(2);
  }

  private static double elsewhere(FarmModel of) {
    OutcomeFunction likely = of.newRun();
    double[] into = new double[of.years() * YearSums.size(likely.mobs())];
    double sum = 0;
    for (int i = 0; i < of.farm().paddocks().size(); i++) {
      likely.addYears(i, of.keep(), 0, into);
      for (int g = 0; g < likely.mobs(); g++) {
        sum += into[YearSums.at(g, YearSums.GRAZED_ELSE)];
      }
    }
    return sum;
  }

  /** In order no money is won by a farm of one strength, and none lost by any. */
  @Test
  void inOrder_onAnyFarm_costsItsTimeAndMovesOnlyLambs() {
    SplittableRandom random = new SplittableRandom(17);
    int moved = 0;
    for (int round = 0; round < 60; round++) {
      Farm farm = RandomFarms.any(random);
      FarmModel any = new FarmModel(farm, RandomFarms.TABLES);
      if (any.choices(FarmRule.IN_ORDER) < 2) {
        continue;
      }
      OutcomeFunction likely = any.newRun();
      Outcome out = any.newOutcome();
      Plan order = any.keepAll().with(farm.paddocks().size(), 1, 0);
      likely.evaluate(order, out);
      assertThat(out.labourCost(0))
          .isCloseTo(farm.ewesJoined() * farm.management().grazingInOrder().likely(), within(1e-9));
      assertThat(out.actionCost(0)).isZero();
      moved += Math.abs(out.lambsSaved(0)) > 1 ? 1 : 0;
    }
    assertThat(moved).isGreaterThan(5);
  }

  /** The weight of other choices is the same whether they are added one by one or at once. */
  @Test
  void npvOfBaseWith_anyChoiceAndRule_isThatOfTheWholePlan() {
    SplittableRandom random = new SplittableRandom(18);
    for (int round = 0; round < 40; round++) {
      Farm farm = RandomFarms.any(random);
      FarmModel any = new FarmModel(farm, RandomFarms.TABLES);
      OutcomeFunction base = any.newRun();
      OutcomeFunction whole = any.newRun();
      Outcome out = any.newOutcome();
      Plan plan = any.keepAll();
      for (int i = 0; i < plan.paddocks(); i++) {
        int action = random.nextInt(any.actions().size());
        plan = base.allowed(i, action) ? plan.with(i, action, 0) : plan;
      }
      base.setBase(plan);
      int ordered = plan.paddocks();
      whole.evaluate(plan.with(ordered, 1, 0), out);
      assertThat(base.npvOfBaseWith(ordered, 1, 0)).isCloseTo(out.npv(), within(1e-6));
      int paddock = random.nextInt(plan.paddocks());
      whole.evaluate(plan.with(ordered, 1, 0).with(paddock, any.keep(), 0), out);
      assertThat(base.npvOfBaseWith(paddock, any.keep(), 0, ordered, 1, 0))
          .isCloseTo(out.npv(), within(1e-6));
    }
  }
}
