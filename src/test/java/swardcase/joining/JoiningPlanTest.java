package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.FarmCopy;
import swardcase.draws.Draws;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.OtherStock;
import swardcase.intake.FarmFolder;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class JoiningPlanTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static FarmModel model;
  private static JoiningPlan plan;
  private static JoiningCase setting;
  private static JoiningCalendar calendar;

  private static FarmModel model(String folder) {
    return new FarmModel(FarmFolder.read(Path.of("demo-data", folder), TABLES).farm(), TABLES);
  }

  private static Draws draws(FarmModel of) {
    return new Draws(of, 1, 20, 5);
  }

  @BeforeAll
  static void plan() {
    model = model("risky-farm");
    plan = JoiningPlan.of(draws(model)).orElseThrow();
    OutcomeFunction run = model.newRun();
    setting =
        new JoiningCase(
            model,
            run,
            JoiningCase.cautiousStrength(model, run),
            0,
            new ComingYear(model, run, model.keepAll()));
    calendar = new JoiningCalendar(setting);
  }

  private static int paddock(String name) {
    List<String> names = model.farm().paddocks().stream().map(p -> p.name()).toList();
    return names.indexOf(name);
  }

  /** Two ways to the same number: the plan's own walk, and the outcome function's. */
  @Test
  void grazingAsNow_losesWhatTheOutcomeFunctionLoses() {
    double lambs = 0;
    OutcomeFunction run = plan.likely();
    for (int g = 0; g < model.farm().mobs().size(); g++) {
      double sound = 1 - run.flock(g).sterileNow();
      double lost = sound * run.flock(g).unaffectedShare() - run.flock(g).shareNow();
      lambs += lost * model.farm().mobs().get(g).ewes() * run.lambsPerPregnantEwe(g);
    }
    // The outcome function reads its year from a grid, hence half a lamb.
    Grazing asNow = new Planner(setting, setting.strength).asNow();
    double[] likely = new double[model.farm().paddocks().size()];
    Arrays.setAll(likely, run::greenDose);
    assertThat(setting.losses(likely).lambs(asNow)).isCloseTo(lambs, within(0.5));
  }

  @Test
  void plan_neverCostsMoreThanTheOtherWays() {
    Planner planner = new Planner(setting, setting.strength);
    Grazing asNow = planner.asNow();
    Grazing avoiding = planner.avoiding(calendar);
    double cost = planner.cost(planner.plan(asNow, avoiding));
    assertThat(cost).isLessThanOrEqualTo(planner.cost(asNow));
    assertThat(cost).isLessThanOrEqualTo(planner.cost(avoiding));
    assertThat(cost).isCloseTo(plan.leastCost(), within(1e-9));
  }

  @Test
  void losses_ofOneWayOfGrazing_neverRiseWhenPaddocksGetSafer() {
    SplittableRandom random = new SplittableRandom(21);
    int halves = setting.halfMonths.size();
    for (int trial = 0; trial < 60; trial++) {
      double[][][] share = new double[setting.mobs()][halves][setting.paddocks()];
      for (double[][] ofMob : share) {
        for (double[] ofHalf : ofMob) {
          Arrays.setAll(ofHalf, i -> random.nextDouble());
          double sum = Arrays.stream(ofHalf).sum();
          Arrays.setAll(ofHalf, i -> ofHalf[i] / sum);
        }
      }
      Grazing grazing = new Grazing(share);
      double[] strength = new double[setting.paddocks()];
      Arrays.setAll(strength, i -> random.nextDouble(0, 1));
      double before = setting.losses(strength).lambs(grazing);
      strength[random.nextInt(strength.length)] *= random.nextDouble();
      assertThat(setting.losses(strength).lambs(grazing))
          .as("trial %s", trial)
          .isLessThanOrEqualTo(before + 1e-9);
    }
  }

  @Test
  void leastCost_whenAnyPaddockIsMadeSafe_neverRises() {
    for (int i = 0; i < setting.paddocks(); i += 3) {
      double[] strength = setting.strength.clone();
      strength[i] = 0;
      Planner safer = new Planner(setting, strength);
      Planner now = new Planner(setting, setting.strength);
      Grazing best = now.plan(now.asNow(), now.avoiding(calendar));
      double cost = safer.cost(safer.plan(best));
      assertThat(cost).isLessThanOrEqualTo(now.cost(best) + 1e-9);
    }
  }

  @Test
  void joining_entirelyOnDryFeedWithoutActivity_losesNothing() {
    double[] x = model.inputs().likely();
    Assumption dry = TABLES.parameter("dose.dry-factor");
    x[model.inputs().all().indexOf(dry)] = 0;
    OutcomeFunction run = model.newRun();
    run.set(x);
    double[] doses = new double[HalfMonths.COUNT];
    for (int p = 0; p < doses.length; p++) {
      doses[p] = setting.halfMonths.contains(p) ? 0 : 0.6;
    }
    assertThat(run.flock(0).lossOfJoining(new double[24], setting.joiningDay[0])).isZero();
    // Eight weeks off strong clover: what is left cannot be told from nothing.
    assertThat(100 * run.flock(0).lossOfJoining(doses, setting.joiningDay[0])).isLessThan(0.3);
  }

  @Test
  void mixedFarm_joinedInSummer_hasNothingToShut(@TempDir Path folder) throws IOException {
    Path mixed = Path.of("demo-data", "mixed-farm");
    for (String file : List.of("farm.yaml", "paddocks.csv", "plants.csv")) {
      String text = Files.readString(mixed.resolve(file));
      Files.writeString(folder.resolve(file), text.replace("5 May", "30 January"));
    }
    FarmModel allInSummer = new FarmModel(FarmFolder.read(folder, TABLES).farm(), TABLES);
    JoiningPlan summer = JoiningPlan.of(draws(allInSummer)).orElseThrow();
    for (int g = 0; g < summer.farm().mobs().size(); g++) {
      for (int p : summer.halfMonths()) {
        for (int i = 0; i < summer.farm().paddocks().size(); i++) {
          assertThat(summer.daysAllowed(g, p, i)).isEqualTo(summer.daysIn(p));
        }
      }
    }
    assertThat(summer.isShort()).isFalse();
    assertThat(summer.shifts()).isEmpty();
    assertThat(summer.resown()).isEmpty();
    assertThat(summer.lambs(Policy.AS_NOW).mean()).isLessThan(5);
  }

  @Test
  void calendar_usedToTheFullInOnePaddock_costsNoMoreThanCanBeTold() {
    for (int g = 0; g < setting.mobs(); g++) {
      for (int i = 0; i < setting.paddocks(); i++) {
        double[] early = Losses.noDoseByDay();
        double[] late = Losses.noDoseByDay();
        for (int p = 0; p < HalfMonths.COUNT; p++) {
          if (calendar.isRated(g, p)) {
            int first = JoiningCalendar.firstDay(p);
            int end = JoiningCalendar.firstDay(p + 1);
            int days = calendar.daysAllowed(g, p, i);
            double dose = setting.strength[i] * setting.run.greenShare(p);
            Arrays.fill(early, first, first + days, dose);
            Arrays.fill(late, end - days, end, dose);
          }
        }
        for (double[] doses : List.of(early, late)) {
          assertThat(Losses.points(setting.run, g, doses, setting.joiningDay[g]))
              .as("mob %s, paddock %s", g, i)
              .isLessThanOrEqualTo(3 + 1e-9);
        }
      }
    }
  }

  @Test
  void calendar_ofAPaddockWithoutFormononetin_isOpenThroughout() {
    JoiningCalendar other = calendar.with(paddock("Lagoon"), 0);
    for (int g = 0; g < setting.mobs(); g++) {
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        assertThat(other.isOpen(g, p, paddock("Lagoon"))).isTrue();
      }
    }
  }

  @Test
  void calendar_ofLeafTestedPaddocks_keepsMaidensOffTheStrongOnly() {
    int middleOfJoining = HalfMonths.ofDay(setting.joiningDay[1] + 3);
    assertThat(calendar.isKeptOff(1, middleOfJoining, paddock("Lagoon"))).isTrue();
    assertThat(calendar.isOpen(1, middleOfJoining, paddock("New Ground"))).isTrue();
    // A quarter of the draws take the story in which clover does nothing.
    assertThat(plan.chanceRight(1, middleOfJoining, paddock("Lagoon"))).isBetween(0.7, 0.76);
  }

  @Test
  void paddock_thatNobodyWalked_isNotTakenForSafe() {
    int lease = paddock("Lease");
    assertThat(plan.isUnknown(lease)).isTrue();
    assertThat(setting.strength[lease]).isGreaterThan(3 * setting.run.greenDose(lease));
    int middleOfJoining = HalfMonths.ofDay(setting.joiningDay[1] + 3);
    assertThat(calendar.isKeptOff(1, middleOfJoining, lease)).isTrue();
    assertThat(plan.resown()).noneMatch(resown -> resown.paddock() == lease);
  }

  @Test
  void wethers_inThePlan_keepToTheirDaysOnRiskyFeed() {
    int wethers = model.farm().mobs().size();
    OtherStock stock = model.farm().otherStock().get(0);
    double most = stock.mostRiskyDays().orElseThrow().likely();
    assertThat(model.farm().otherStock().get(1).mostRiskyDays()).isEmpty();
    double days = 0;
    for (int k = 0; k < plan.halfMonths().size(); k++) {
      for (int i = 0; i < setting.paddocks(); i++) {
        double dose = setting.strength[i] * setting.run.greenShare(plan.halfMonths().get(k));
        boolean risky = dose >= JoiningCase.RISKY_DOSE;
        days += risky ? plan.share(Policy.PLAN, wethers, k, i) * plan.days(k) : 0;
      }
    }
    assertThat(days).isLessThanOrEqualTo(most + 1e-6);
  }

  @Test
  void shortage_ofSafeFeed_isSaidWithWaysOut() {
    assertThat(plan.isShort()).isTrue();
    assertThat(plan.shortMj()).isPositive();
    assertThat(plan.shifts()).hasSize(1);
    assertThat(plan.shifts().get(0).daysLater()).isEqualTo(-28);
    assertThat(plan.shifts().get(0).cost()).isLessThan(plan.leastCost());
    assertThat(plan.resown()).anyMatch(resown -> resown.freed() > 100);
  }

  @Test
  void worth_ofSafeFeed_isNeverMoreThanThePriceOfFeedBought() {
    for (int k = 0; k < plan.halfMonths().size(); k++) {
      assertThat(plan.worthOfSafeMj(k)).isBetween(0.0, 1.001 * plan.likely().pricePerMj());
    }
  }

  @Test
  void plan_ofTheRiskyFarm_putsNoEwesWhereTheyAreToBeKeptOff() {
    int keptOff = 0;
    for (int g = 0; g < 2; g++) {
      for (int k = 0; k < plan.halfMonths().size(); k++) {
        for (int i = 0; i < plan.farm().paddocks().size(); i++) {
          if (plan.daysAllowed(g, plan.halfMonths().get(k), i) == 0) {
            assertThat(plan.share(Policy.PLAN, g, k, i)).isZero();
            keptOff++;
          }
        }
      }
    }
    assertThat(keptOff).isGreaterThan(20);
  }

  @Test
  void lambs_ofEveryWay_areNoFewerThanNoneAndThePlanLosesFewest() {
    double mayCost = Planner.MOST_FOR_PRACTICE * plan.lambMoney(Policy.AS_NOW).mean();
    for (Policy policy : Policy.values()) {
      assertThat(plan.lambs(policy).low()).isNotNegative();
      assertThat(plan.saved(policy).mean())
          .isLessThanOrEqualTo(plan.saved(Policy.PLAN).mean() + mayCost);
    }
    assertThat(plan.saved(Policy.AS_NOW).isExact()).isTrue();
  }

  @Test
  void youngEwes_daysAllowed_followTheirEquation() {
    // ln(1 - 0.03) / ln(1 - 0.12) x 180 = 42.9, by hand.
    assertThat(YoungEwes.daysAllowed(12, 180, 3)).isCloseTo(42.9, within(0.05));
    assertThat(YoungEwes.daysAllowed(3, 180, 3)).isEqualTo(180);
    assertThat(YoungEwes.daysAllowed(100, 180, 3)).isZero();
  }

  @Test
  void farm_withoutEwes_hasNoPlan() {
    Farm without = FarmCopy.of(model.farm()).mobs(List.of()).build();
    assertThat(JoiningPlan.of(draws(new FarmModel(without, TABLES)))).isEmpty();
  }

  @Test
  void farm_ofOnePaddockWithoutOtherStock_hasAPlan() {
    Farm farm = model.farm();
    Farm one =
        FarmCopy.of(farm).paddocks(farm.paddocks().subList(2, 3)).otherStock(List.of()).build();
    JoiningPlan alone = JoiningPlan.of(draws(new FarmModel(one, TABLES))).orElseThrow();
    assertThat(alone.saved(Policy.PLAN).mean()).isNotNegative();
  }

  @Test
  void plan_madeTwice_isTheSame() {
    JoiningPlan again = JoiningPlan.of(draws(model)).orElseThrow();
    assertThat(again.leastCost()).isEqualTo(plan.leastCost());
    assertThat(again.lambs(Policy.PLAN)).isEqualTo(plan.lambs(Policy.PLAN));
  }
}
