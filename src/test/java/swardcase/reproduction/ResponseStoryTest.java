package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.ScanningBasis;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.ResponseStory;

class ResponseStoryTest {

  private static final int FARMS = 40;

  @Test
  void chances_ofTheTables_addUpToOne() {
    assertThat(Arrays.stream(ResponseStory.chances(RandomFarms.TABLES)).sum())
        .isCloseTo(1, within(1e-12));
    assertThat(ResponseStory.otherChances(RandomFarms.TABLES))
        .allSatisfy(
            of -> {
              assertThat(Arrays.stream(of).sum()).isCloseTo(1, within(1e-12));
              assertThat(Arrays.stream(of).min().orElseThrow()).isNotNegative();
            });
  }

  @Test
  void of_uniformNumbers_takesEachStoryByItsChance() {
    double[] chances = {0.25, 0.6, 0.15};
    int[] taken = new int[3];
    for (int k = 0; k < 100; k++) {
      taken[ResponseStory.of((k + 0.5) / 100, chances).ordinal()]++;
    }
    assertThat(taken).containsExactly(25, 60, 15);
    assertThat(ResponseStory.of(0, new double[] {0, 1, 0})).isEqualTo(ResponseStory.TRIAL);
    assertThat(ResponseStory.of(0.999, new double[] {0, 1, 0})).isEqualTo(ResponseStory.TRIAL);
  }

  @Test
  void highestUnaffected_isTheHighEndOfTheBenchmark() {
    assertThat(100 * Pregnancy.HIGHEST_UNAFFECTED)
        .isEqualTo(RandomFarms.TABLES.parameter("flock.pregnant-percent").range().high());
  }

  /** A farm in two stories at numbers that stand as far up or down in their ranges. */
  private interface Pair {
    void check(OutcomeFunction first, OutcomeFunction second, int mob);
  }

  private static void forAnyFlock(ResponseStory first, ResponseStory second, Pair pair) {
    SplittableRandom random = new SplittableRandom(17);
    int flocks = 0;
    for (int f = 0; f < FARMS; f++) {
      Farm farm = RandomFarms.any(random);
      FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
      if (farm.mobs().isEmpty()) {
        continue;
      }
      double[] x = RandomFarms.draw(model.inputs().all(), random);
      UncertainNumbers inputs = model.inputs();
      atOneQuantile(inputs, x, "oestrogen.d50", random.nextDouble());
      atOneQuantile(inputs, x, "oestrogen.sterility-q", random.nextDouble());
      double[] y = x.clone();
      x[inputs.place(ResponseStory.KEY)] = first.ordinal();
      y[inputs.place(ResponseStory.KEY)] = second.ordinal();
      OutcomeFunction one = model.newRun();
      one.set(x);
      OutcomeFunction other = model.newRun();
      other.set(y);
      for (int g = 0; g < farm.mobs().size(); g++) {
        pair.check(one, other, g);
        flocks++;
      }
    }
    assertThat(flocks).isGreaterThan(FARMS / 2);
  }

  private static void atOneQuantile(UncertainNumbers inputs, double[] x, String key, double u) {
    for (String of : new String[] {key, key + "-outbreaks"}) {
      int place = inputs.place(of);
      var range = inputs.get(place).range();
      x[place] = range.low() + u * (range.high() - range.low());
    }
  }

  @Test
  void none_onAnyFarm_losesNothingToOestrogen() {
    forAnyFlock(
        ResponseStory.NONE,
        ResponseStory.TRIAL,
        (none, trial, g) -> {
          assertThat(none.lambsLost(g)).isCloseTo(0, within(1e-9));
          assertThat(none.flock(g).sterileNow()).isCloseTo(0, within(1e-12));
          assertThat(none.flock(g).barrenAfterYearOn(none.flock(g).power(2)))
              .isCloseTo(0, within(1e-12));
          assertThat(none.flock(g).shareNow())
              .isCloseTo(none.flock(g).unaffectedShare(), within(1e-12));
          assertThat(none.isPossible()).isTrue();
        });
  }

  /** An observed figure is worked back to a better flock, so the law is one of told flocks. */
  @Test
  void outbreaks_onAnyFarmWithFiguresUnaffected_loseAtLeastAsManyLambsAsTheTrial() {
    double[] most = new double[1];
    forAnyFlock(
        ResponseStory.OUTBREAKS,
        ResponseStory.TRIAL,
        (outbreaks, trial, g) -> {
          if (trial.flock(g).mob().scanningBasis() == ScanningBasis.UNAFFECTED) {
            double more = outbreaks.lambsLost(g) - trial.lambsLost(g);
            assertThat(more).isGreaterThan(-1e-9 * (1 + trial.lambsLost(g)));
            assertThat(outbreaks.flock(g).sterileNow())
                .isGreaterThanOrEqualTo(trial.flock(g).sterileNow());
            most[0] = Math.max(most[0], more);
          }
        });
    assertThat(most[0]).isPositive();
  }

  @Test
  void likelyRun_takesTheDosedTrial() {
    FarmModel model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
    double[] x = model.inputs().likely();
    assertThat(ResponseStory.of(x[model.inputs().place(ResponseStory.KEY)]))
        .isEqualTo(ResponseStory.TRIAL);
  }

  @Test
  void canBeSeen_ofAFigureBeyondGoodFlocks_onlyWithoutEffect() {
    double[] none = {1, 1, 1};
    double[] half = {0.5, 0.5, 0.5};
    assertThat(Pregnancy.canBeSeen(0.995, 7, none, 0)).isTrue();
    assertThat(Pregnancy.canBeSeen(0.995, 7, half, 0)).isFalse();
    // Half conceive in each of three cycles at most: 1 - (1 - 0.5 p)^f, p from 99 %.
    double best = Pregnancy.pregnantShare(Pregnancy.perCycleConception(0.99, 7), 7, half, 0.1);
    assertThat(Pregnancy.canBeSeen(best - 1e-6, 7, half, 0.1)).isTrue();
    assertThat(Pregnancy.canBeSeen(best + 1e-6, 7, half, 0.1)).isFalse();
  }
}
