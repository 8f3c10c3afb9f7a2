package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Paddock;
import swardcase.farm.SeasonType;
import swardcase.tables.Tables;

/** Laws that hold for any farm: seeded random farms, so that a failure repeats. */
class FeedBudgetLawsTest {

  private static final Tables TABLES = RandomFarms.TABLES;
  private static final int FARMS = 100;

  /** Rounding of sums of some thousands of kilograms. */
  private static final double ROUNDING = 1e-8;

  private record Case(Farm farm, FeedParameters parameters, double[] growth, int season) {

    static Case random(SplittableRandom random) {
      double[] five = {
        random.nextDouble(0, 0.2),
        random.nextDouble(0, 0.8),
        random.nextDouble(500, 1000),
        random.nextDouble(0.85, 1.15),
        random.nextDouble(0.7, 1.4)
      };
      double[] growth = new double[HalfMonths.COUNT];
      for (int p = 0; p < growth.length; p++) {
        growth[p] = random.nextDouble(0.5, 1.2);
      }
      Farm farm = RandomFarms.any(random);
      int season = random.nextInt(3);
      FeedParameters parameters =
          FeedFixtures.set(
              FeedParameters.likely(farm, TABLES), five[0], five[1], five[2], five[3], five[4]);
      parameters
          .set(FeedNumber.GROWTH, random.nextDouble(0.85, 1.15))
          .set(FeedNumber.INTAKE, random.nextDouble(0.85, 1.15))
          .set(FeedNumber.GREEN_DIGESTIBILITY, random.nextDouble(-0.04, 0.03))
          .set(FeedNumber.DRY_SELECTION, random.nextDouble(0, 0.1))
          .set(FeedNumber.GREEN_DYING, random.nextDouble(0.7, 1.4));
      for (SeasonType type : SeasonType.values()) {
        parameters.setBreak(type.ordinal(), random.nextDouble(-5, 5));
      }
      for (int mob = 0; mob < farm.mobs().size(); mob++) {
        parameters.setInLamb(mob, random.nextDouble());
      }
      parameters.setLegumeShare(random.nextDouble());
      return new Case(farm, parameters, growth, season);
    }

    FeedResult run(double growthFactor, double eweMultiplier) {
      return run(farm, growthFactor, eweMultiplier);
    }

    FeedResult run(Farm other, double growthFactor, double eweMultiplier) {
      double[] multiplied = growth.clone();
      for (int p = 0; p < multiplied.length; p++) {
        multiplied[p] *= growthFactor;
      }
      FeedResult result = new FeedResult();
      FeedBudget budget = new FeedBudget(other, FeedFixtures.demand(other, TABLES), TABLES);
      budget.run(season, multiplied, budget.rates(parameters, eweMultiplier), result);
      assertThat(result.year.repeats()).isTrue();
      return result;
    }
  }

  private interface Law {
    void check(Case any, SplittableRandom random);
  }

  private static void forAnyFarm(long seed, Law law) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < FARMS; i++) {
      law.check(Case.random(random), random);
    }
  }

  @Test
  void feed_inAnyYear_isConserved() {
    forAnyFarm(
        1,
        (any, random) -> {
          FeedResult r = any.run(1, 1);
          assertThat(FeedSums.grown(r) + r.year.carriedInKgDmPerHa())
              .isCloseTo(
                  FeedSums.eaten(r) + FeedSums.uneaten(r) + FeedSums.carriedOut(r),
                  within(ROUNDING));
          assertThat(FeedSums.carriedOut(r)).isCloseTo(r.year.carriedInKgDmPerHa(), within(2e-6));
        });
  }

  /** From the year of other numbers, as the runs of a draw start; pools within 0.001 kg. */
  @Test
  void supplement_runFromAnotherYear_isThatOfTheYearThatRepeats() {
    forAnyFarm(
        9,
        (any, random) -> {
          FeedBudget budget =
              new FeedBudget(any.farm(), FeedFixtures.demand(any.farm(), TABLES), TABLES);
          FeedParameters likely = FeedParameters.likely(any.farm(), TABLES);
          FeedRates usual = budget.rates(likely, 1);
          FeedResult[] from = FeedFixtures.everySeason(budget, FeedFixtures.ONES, usual);
          FeedRates rates = budget.rates(any.parameters(), 1);
          FeedResult[] exact = FeedFixtures.everySeason(budget, any.growth(), rates);
          RepeatingYear close = new RepeatingYear();
          for (int season = 0; season < from.length; season++) {
            budget.runNear(from[season], season, any.growth(), rates, close);
            assertThat(close.repeats()).isTrue();
            assertThat(close.boughtMjPerHa())
                .isCloseTo(FeedSums.bought(exact[season]), within(0.01));
            assertThat(close.uneatenKgDmPerHa())
                .isCloseTo(FeedSums.uneaten(exact[season]), within(0.002));
            FeedResult one = new FeedResult();
            budget.runFrom(from[season], season, any.growth(), rates, one);
            assertThat(FeedSums.bought(one))
                .isCloseTo(FeedSums.bought(exact[season]), within(1e-5));
          }
        });
  }

  @Test
  void pools_atAnyTime_areNotNegativeAndEatenFeedWasThere() {
    forAnyFarm(
        2,
        (any, random) -> {
          FeedResult r = any.run(1, random.nextDouble(0, 5));
          for (int p = 0; p < HalfMonths.COUNT; p++) {
            assertThat(r.greenKgDmPerHa[p]).isNotNegative();
            assertThat(r.dryKgDmPerHa[p]).isNotNegative();
            assertThat(r.boughtMjPerHa[p]).isNotNegative();
            assertThat(r.decayedKgDmPerHa[p]).isNotNegative();
            assertThat(r.diedKgDmPerHa[p]).isNotNegative();
          }
        });
  }

  @Test
  void supplement_withMoreGrowth_neverRises() {
    forAnyFarm(
        3,
        (any, random) -> {
          double factor = 1 + random.nextDouble(0, 0.5);
          assertThat(FeedSums.bought(any.run(factor, 1)))
              .isLessThanOrEqualTo(FeedSums.bought(any.run(1, 1)) + ROUNDING);
        });
  }

  @Test
  void supplement_withMoreEwes_neverFalls() {
    forAnyFarm(
        4,
        (any, random) -> {
          double factor = 1 + random.nextDouble(0, 0.5);
          assertThat(FeedSums.bought(any.run(1, factor)))
              .isGreaterThanOrEqualTo(FeedSums.bought(any.run(1, 1)) - ROUNDING);
        });
  }

  @Test
  void farm_ofTwiceTheAreaAndStock_isTheSamePerHectare() {
    forAnyFarm(
        5,
        (any, random) -> {
          List<Paddock> twice = new ArrayList<>(any.farm().paddocks());
          any.farm().paddocks().stream()
              .map(p -> FarmCopy.paddock(p, p.name() + " again", p.areaHa()))
              .forEach(twice::add);
          Farm doubled =
              FarmCopy.of(any.farm())
                  .paddocks(twice)
                  .mobs(
                      any.farm().mobs().stream()
                          .map(mob -> FarmCopy.mob(mob, 2 * mob.ewes()))
                          .toList())
                  .otherStock(
                      any.farm().otherStock().stream()
                          .map(stock -> FarmCopy.stock(stock, 2 * stock.head()))
                          .toList())
                  .build();
          assertSame(any.run(doubled, 1, 1), any.run(1, 1));
        });
  }

  @Test
  void paddocks_inAnyOrder_giveTheSame() {
    forAnyFarm(
        6,
        (any, random) -> {
          List<Paddock> reversed = new ArrayList<>(any.farm().paddocks());
          Collections.reverse(reversed);
          Farm shuffled = FarmCopy.of(any.farm()).paddocks(reversed).build();
          assertSame(any.run(shuffled, 1, 1), any.run(1, 1));
        });
  }

  @Test
  void farm_withoutStock_buysAndEatsNothing() {
    Farm empty =
        FeedFixtures.farm(List.of(FeedFixtures.paddock("Home", 50, 0.3, 1)), List.of(), List.of());
    FeedResult result = FeedFixtures.run(empty, FeedFixtures.ONES, 1);
    assertThat(FeedSums.bought(result)).isZero();
    assertThat(FeedSums.eaten(result)).isZero();
    assertThat(FeedSums.uneaten(result)).isCloseTo(FeedSums.grown(result), within(1e-5));
  }

  /** What more ewes in lamb eat is bought where it is missing; it is never less. */
  @Test
  void supplement_withMoreEwesInLamb_neverFalls() {
    forAnyFarm(
        11,
        (any, random) -> {
          for (int mob = 0; mob < any.farm().mobs().size(); mob++) {
            FeedResult few = any.run(1, 1);
            double share = any.parameters().inLamb(mob);
            any.parameters().setInLamb(mob, Math.min(1, share + random.nextDouble(0.01, 0.3)));
            FeedResult more = any.run(1, 1);
            assertThat(FeedSums.bought(more)).isGreaterThanOrEqualTo(FeedSums.bought(few) - 1e-4);
            for (int p = 0; p < HalfMonths.COUNT; p++) {
              assertThat(more.demandMjPerHa[p])
                  .isGreaterThanOrEqualTo(few.demandMjPerHa[p] - ROUNDING);
            }
          }
        });
  }

  @Test
  void quality_withMoreClover_neverFalls() {
    SplittableRandom random = new SplittableRandom(12);
    PastureIntake intake = new PastureIntake(TABLES);
    for (int k = 0; k < 1000; k++) {
      double digestibility = random.nextDouble();
      double clover = random.nextDouble();
      double more = random.nextDouble(clover, 1);
      assertThat(intake.quality(digestibility, more))
          .isGreaterThanOrEqualTo(intake.quality(digestibility, clover));
    }
  }

  @Test
  void ewes_takenAway_leaveTheNeedOfOtherStock() {
    forAnyFarm(
        7,
        (any, random) -> {
          FeedResult r = any.run(1, 0);
          StockDemand demand = FeedFixtures.demand(any.farm(), TABLES);
          for (int p = 0; p < HalfMonths.COUNT; p++) {
            double other = demand.otherMjPerDay(p) * HalfMonths.days(p) / any.farm().areaHa();
            assertThat(r.demandMjPerHa[p])
                .isCloseTo(other * any.parameters().get(FeedNumber.DEMAND), within(ROUNDING));
          }
        });
  }

  /** A winter growth loss shows in supplement only when the farm is short. */
  @Test
  void winterLoss_onALightlyStockedFarm_costsLittleBesideAHeavilyStocked() {
    double[] loss = FeedFixtures.filled(1);
    for (int p = 8; p < 16; p++) {
      loss[p] = 0.9;
    }
    double light = perEwe(loss, 100);
    double heavy = perEwe(loss, 600);
    assertThat(light).isNotNegative();
    assertThat(heavy).isGreaterThan(light);
  }

  private static double perEwe(double[] growth, int ewes) {
    Farm farm = FeedFixtures.farm(ewes);
    double lost =
        FeedSums.bought(FeedFixtures.run(farm, growth, 1))
            - FeedSums.bought(FeedFixtures.run(farm, FeedFixtures.ONES, 1));
    return lost / ewes;
  }

  private static void assertSame(FeedResult actual, FeedResult expected) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      assertThat(actual.greenKgDmPerHa[p]).isCloseTo(expected.greenKgDmPerHa[p], within(1e-6));
      assertThat(actual.dryKgDmPerHa[p]).isCloseTo(expected.dryKgDmPerHa[p], within(1e-6));
      assertThat(actual.boughtMjPerHa[p]).isCloseTo(expected.boughtMjPerHa[p], within(1e-6));
    }
  }
}
