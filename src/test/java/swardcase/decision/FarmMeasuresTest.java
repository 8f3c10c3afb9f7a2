package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.decision.FarmMeasures.OfMonth;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.draws.Draws;
import swardcase.draws.Simulation;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.feed.FeedResult;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.PlanFarms;

/** Each number of a decision, put together again from what a run says of paddocks and mobs. */
class FarmMeasuresTest {

  private static final double ROUNDING = 1e-9;
  private static final int RANDOM_FARMS = 60;

  /** Percentages; everything else is an amount, but two results that may be losses. */
  private static final Set<OfFarm> PERCENT_OF_FARM =
      EnumSet.of(OfFarm.UNAFFECTED_PERCENT, OfFarm.PREGNANT_PERCENT, OfFarm.STERILE_PERCENT);

  private static final Set<OfMob> PERCENT_OF_MOB =
      EnumSet.of(OfMob.DOSE_AT_JOINING, OfMob.UNAFFECTED_PERCENT, OfMob.PREGNANT_PERCENT);

  private static final Set<OfPaddock> PERCENT_OF_PADDOCK =
      EnumSet.of(OfPaddock.LEAF_FORMONONETIN, OfPaddock.GREEN_DOSE);

  private final FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
  private final Farm farm = model.farm();
  private final OutcomeFunction run = model.newRun();
  private final Plan plan = anyPlan(model, new SplittableRandom(3));
  private final FarmMeasures measures = measures(model, plan);
  private final double[] read = new double[measures.size()];

  private static FarmMeasures measures(FarmModel model, Plan plan) {
    return new FarmMeasures(model, plan, OtherDates.of(model, model.newRun()));
  }

  FarmMeasuresTest() {
    measures.read(model.newRun(), model.inputs().likely(), read);
  }

  private static Plan anyPlan(FarmModel model, SplittableRandom random) {
    OutcomeFunction run = model.newRun();
    Plan any = model.keepAll();
    for (int i = 0; i < any.paddocks(); i++) {
      int action = random.nextInt(model.actions().size());
      boolean can = run.allowed(i, action) && random.nextInt(3) > 0;
      any =
          can
              ? any.with(i, action, random.nextInt(Math.min(FarmModel.START_YEARS, model.years())))
              : any;
    }
    return any;
  }

  private double of(OfFarm measure) {
    return read[measures.at(measure)];
  }

  private double of(int mob, OfMob measure) {
    return read[measures.at(mob, measure)];
  }

  private double of(int paddock, OfPaddock measure) {
    return read[measures.at(paddock, measure)];
  }

  private static void assertNear(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(ROUNDING * Math.max(1, Math.abs(expected))));
  }

  /** Season by season and half-month by half-month, whole farm. */
  private double boughtInWinterMj(double winterGrowth) {
    FeedResult year = new FeedResult();
    double sum = 0;
    for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
      run.feedYear(season, winterGrowth, year);
      double chance = farm.feedYear().seasons().get(season).chance().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        boolean winter = farm.feedYear().winterMonths().contains(HalfMonths.month(p));
        sum += winter ? chance * year.boughtMjPerHa[p] * farm.areaHa() : 0;
      }
    }
    return sum;
  }

  @Test
  void winterFeed_ofTheFarm_isWhatItsPaddocksLose() {
    double loss = 0;
    double shortfall = 0;
    double tonnes = 0;
    double cost = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      double perHa = of(i, OfPaddock.WINTER_LOSS_KG_DM_PER_HA);
      assertNear(perHa, run.winterLossKgDmPerHa(i));
      loss += perHa * farm.paddocks().get(i).areaHa();
      shortfall += of(i, OfPaddock.SHORTFALL_MJ);
      tonnes += of(i, OfPaddock.SUPPLEMENT_TONNES);
      cost += of(i, OfPaddock.SUPPLEMENT_COST);
    }
    assertThat(loss).isPositive();
    assertNear(of(OfFarm.WINTER_LOSS_KG_DM), loss);
    double now = run.winterGrowthNow();
    double more = boughtInWinterMj(now) - boughtInWinterMj(1);
    assertThat(more).isPositive();
    assertNear(of(OfFarm.WINTER_SHORTFALL_MJ), more);
    assertNear(shortfall, more);
    assertNear(of(OfFarm.WINTER_SUPPLEMENT_TONNES), more * run.tonnesPerMj());
    assertNear(tonnes, more * run.tonnesPerMj());
    assertNear(of(OfFarm.WINTER_SUPPLEMENT_COST), more * run.pricePerMj());
    assertNear(cost, more * run.pricePerMj());
    double year = run.boughtMj(now) - run.boughtMj(1);
    assertNear(of(OfFarm.YEAR_SUPPLEMENT_COST), year * run.pricePerMj());
  }

  @Test
  void supplementNow_perEwe_isTheFarmsOverItsEwes() {
    double tonnes = run.boughtMj(run.winterGrowthNow()) * run.tonnesPerMj();
    assertNear(of(OfFarm.SUPPLEMENT_TONNES_NOW), tonnes);
    assertNear(of(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW), 1000 * tonnes / farm.ewesJoined());
    assertNear(of(OfFarm.EXTRA_EWES), run.extraEwesWithCurrent());
    assertNear(of(OfFarm.MORE_EWES_GAIN), run.gainOfMoreEwes(run.extraEwesWithCurrent()));
    double result = -run.boughtMj(run.winterGrowthNow()) * run.pricePerMj();
    for (int g = 0; g < farm.mobs().size(); g++) {
      double inLamb = run.flock(g).shareNow() * farm.mobs().get(g).ewes();
      double dry = farm.mobs().get(g).ewes() - inLamb;
      result +=
          inLamb * run.lambsPerPregnantEwe(g) * farm.prices().netValuePerLamb().likely()
              - dry * farm.prices().costPerDryEwe().likely();
    }
    assertNear(of(OfFarm.STANDING_RESULT), result);
  }

  @Test
  void flock_ofSeveralMobs_isTheirMeanByEwes() {
    double unaffected = 0;
    double pregnant = 0;
    double sterile = 0;
    double lambs = 0;
    double cost = 0;
    for (int g = 0; g < farm.mobs().size(); g++) {
      Mob mob = farm.mobs().get(g);
      unaffected += mob.ewes() * run.flock(g).unaffectedShare();
      pregnant += mob.ewes() * run.flock(g).shareNow();
      sterile += mob.ewes() * run.flock(g).sterileNow();
      lambs += run.lambsLost(g);
      cost += run.lambCost(g);
      assertNear(of(g, OfMob.DOSE_AT_JOINING), run.flock(g).doseAtJoining());
      assertNear(of(g, OfMob.UNAFFECTED_PERCENT), 100 * run.flock(g).unaffectedShare());
      assertNear(of(g, OfMob.PREGNANT_PERCENT), 100 * run.flock(g).shareNow());
      assertNear(of(g, OfMob.LAMBS_LOST), run.lambsLost(g));
      assertNear(of(g, OfMob.LAMB_COST), run.lambCost(g));
    }
    double ewes = farm.ewesJoined();
    assertNear(of(OfFarm.UNAFFECTED_PERCENT), 100 * unaffected / ewes);
    assertNear(of(OfFarm.PREGNANT_PERCENT), 100 * pregnant / ewes);
    assertNear(of(OfFarm.STERILE_PERCENT), 100 * sterile / ewes);
    assertThat(lambs).isPositive();
    assertNear(of(OfFarm.LAMBS_LOST), lambs);
    assertNear(of(OfFarm.LAMB_COST), cost);
  }

  @Test
  void months_ofTheYear_areTheirHalvesAndAddUpToTheYear() {
    double bought = 0;
    double withCurrent = 0;
    for (int m = 0; m < 12; m++) {
      assertNear(
          read[measures.ofMonth(m, OfMonth.DOSE)], (run.dose(2 * m) + run.dose(2 * m + 1)) / 2);
      bought += read[measures.ofMonth(m, OfMonth.BOUGHT_MJ)];
      withCurrent += read[measures.ofMonth(m, OfMonth.BOUGHT_WITH_CURRENT_MJ)];
    }
    // A year is repeated until two pools end within 1e-6 kg/ha of where they began: 10 MJ a kg.
    assertThat(bought * farm.areaHa())
        .isCloseTo(run.boughtMj(run.winterGrowthNow()), within(2e-5 * farm.areaHa()));
    assertThat(withCurrent * farm.areaHa())
        .isCloseTo(run.boughtMj(1), within(2e-5 * farm.areaHa()));
  }

  @Test
  void costs_ofThePlan_areThoseOfItsPaddocks() {
    double cost = 0;
    int changed = 0;
    for (int i = 0; i < farm.paddocks().size(); i++) {
      assertNear(of(i, OfPaddock.LEAF_FORMONONETIN), run.leafFormononetin(i));
      assertNear(of(i, OfPaddock.GREEN_DOSE), run.greenDose(i));
      double own =
          farm.paddocks().get(i).areaHa() * run.costPerHa(i, plan.action(i), plan.start(i));
      assertNear(of(i, OfPaddock.PLAN_COST), own);
      cost += own;
      changed += plan.action(i) == model.keep() ? 0 : 1;
    }
    assertThat(changed).isBetween(2, farm.paddocks().size());
    assertNear(of(OfFarm.PLAN_COST), cost);
  }

  /** Every number is read into a place of its own. */
  @Test
  void places_ofAllMeasures_areAllDifferent() {
    Set<Integer> places = new TreeSet<>();
    int count = 0;
    for (OfFarm measure : OfFarm.values()) {
      places.add(measures.at(measure));
      count++;
    }
    for (OfMob measure : OfMob.values()) {
      for (int g = 0; g < farm.mobs().size(); g++) {
        places.add(measures.at(g, measure));
        count++;
      }
    }
    for (OfMonth measure : OfMonth.values()) {
      for (int month = 0; month < 12; month++) {
        places.add(measures.ofMonth(month, measure));
        count++;
      }
    }
    for (OfPaddock measure : OfPaddock.values()) {
      for (int i = 0; i < farm.paddocks().size(); i++) {
        places.add(measures.at(i, measure));
        count++;
      }
    }
    assertThat(places).hasSize(count).hasSize(measures.size());
    assertThat(places).allMatch(place -> place >= 0 && place < measures.size());
  }

  @Test
  void farm_withoutEwes_hasNoneOfTheirNumbers() {
    Farm none =
        FarmCopy.of(RandomFarms.demo("mixed-farm"))
            .mobs(List.of())
            .paddocks(farm.paddocks().stream().map(FarmCopy::ofNoMob).toList())
            .build();
    FarmModel empty = PlanFarms.model(none);
    FarmMeasures of = measures(empty, empty.keepAll());
    double[] into = new double[of.size()];
    of.read(empty.newRun(), empty.inputs().likely(), into);
    assertThat(into[of.at(OfFarm.SUPPLEMENT_KG_PER_EWE_NOW)]).isZero();
    assertThat(into[of.at(OfFarm.LAMBS_LOST)]).isZero();
    assertThat(into[of.at(OfFarm.PREGNANT_PERCENT)]).isZero();
    assertThat(into).doesNotContain(Double.NaN);
  }

  /** Any plan of a farm, its numbers in each of a few draws. */
  private record InDraws(String name, FarmModel model, Draws draws, Plan plan, double[][] read) {

    static InDraws of(String name, Farm farm, long seed) {
      FarmModel model = PlanFarms.model(farm);
      Plan any = anyPlan(model, new SplittableRandom(seed));
      Draws draws = Decision.draws(model, seed, 40);
      return new InDraws(
          name, model, draws, any, Simulation.measured(draws, () -> measures(model, any)));
    }

    void isBetween(String what, int place, double least, double most) {
      for (double value : read[place]) {
        assertThat(value).as("%s of %s", what, name).isBetween(least - ROUNDING, most + ROUNDING);
      }
      Drawn drawn = Spread.of(read[place], draws.uniforms()).drawn();
      assertThat(drawn.low())
          .as("%s of %s", what, name)
          .isBetween(least - ROUNDING, most + ROUNDING);
      assertThat(drawn.mean())
          .as("%s of %s", what, name)
          .isBetween(least - ROUNDING, most + ROUNDING);
      assertThat(drawn.high())
          .as("%s of %s", what, name)
          .isBetween(least - ROUNDING, most + ROUNDING);
    }
  }

  private interface Law {
    void check(InDraws farm, FarmMeasures places);
  }

  private static void forAnyFarm(Law law) {
    List<String> demo =
        List.of("mixed-farm", "northern-farm", "current-farm", "risky-farm", "large-farm");
    for (String name : demo) {
      check(InDraws.of(name, RandomFarms.demo(name), 1), law);
    }
    for (int k = 0; k < RANDOM_FARMS; k++) {
      Farm any = RandomFarms.any(new SplittableRandom(9000 + k));
      check(InDraws.of("random farm " + k, any, k), law);
    }
  }

  private static void check(InDraws farm, Law law) {
    law.check(farm, measures(farm.model(), farm.plan()));
  }

  private static double most(boolean isPercent) {
    return isPercent ? 100 : Double.MAX_VALUE;
  }

  @Test
  void numbers_inAnyDraw_stayWithinWhatIsPossible() {
    forAnyFarm(
        (of, places) -> {
          for (OfFarm measure : OfFarm.values()) {
            boolean mayLose = measure == OfFarm.MORE_EWES_GAIN || measure == OfFarm.STANDING_RESULT;
            of.isBetween(
                measure.name(),
                places.at(measure),
                mayLose ? -Double.MAX_VALUE : 0,
                most(PERCENT_OF_FARM.contains(measure)));
          }
          for (int g = 0; g < of.model().farm().mobs().size(); g++) {
            for (OfMob measure : OfMob.values()) {
              of.isBetween(
                  measure.name(), places.at(g, measure), 0, most(PERCENT_OF_MOB.contains(measure)));
            }
          }
          for (int m = 0; m < 12; m++) {
            for (OfMonth measure : OfMonth.values()) {
              of.isBetween(
                  measure.name(), places.ofMonth(m, measure), 0, most(measure == OfMonth.DOSE));
            }
          }
          for (int i = 0; i < of.plan().paddocks(); i++) {
            for (OfPaddock measure : OfPaddock.values()) {
              of.isBetween(
                  measure.name(),
                  places.at(i, measure),
                  0,
                  most(PERCENT_OF_PADDOCK.contains(measure)));
            }
          }
        });
  }

  @Test
  void paddocks_inAnyDraw_addUpToTheFarm() {
    int[] shortOfFeed = new int[1];
    forAnyFarm(
        (of, places) -> {
          double[][] read = of.read();
          for (int d = 0; d < of.draws().count(); d++) {
            double[] sum = new double[OfPaddock.values().length];
            for (int i = 0; i < of.plan().paddocks(); i++) {
              for (OfPaddock measure : OfPaddock.values()) {
                sum[measure.ordinal()] += read[places.at(i, measure)][d];
              }
            }
            assertNear(
                sum[OfPaddock.SUPPLEMENT_TONNES.ordinal()],
                read[places.at(OfFarm.WINTER_SUPPLEMENT_TONNES)][d]);
            assertNear(
                sum[OfPaddock.SUPPLEMENT_COST.ordinal()],
                read[places.at(OfFarm.WINTER_SUPPLEMENT_COST)][d]);
            assertNear(
                sum[OfPaddock.SHORTFALL_MJ.ordinal()],
                read[places.at(OfFarm.WINTER_SHORTFALL_MJ)][d]);
            assertNear(sum[OfPaddock.PLAN_COST.ordinal()], read[places.at(OfFarm.PLAN_COST)][d]);
            shortOfFeed[0] += read[places.at(OfFarm.WINTER_SHORTFALL_MJ)][d] > 0 ? 1 : 0;
          }
          assertThat(Arrays.stream(read).flatMapToDouble(Arrays::stream))
              .doesNotContain(Double.NaN);
        });
    assertThat(shortOfFeed[0]).isGreaterThan(500);
  }
}
