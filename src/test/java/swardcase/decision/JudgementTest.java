package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class JudgementTest {

  private static double[] gains(double mean, double deviation, int draws, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] gains = new double[draws];
    Arrays.setAll(gains, d -> mean + deviation * random.nextGaussian());
    return gains;
  }

  @Test
  void of_fewGains_matchesHandArithmetic() {
    // 3 of 4 gain; lost 2 of 4 draws' worth, missed 1 + 2 + 3 of them: 0.5 and 1.5.
    Judgement judgement = Judgement.of(new double[] {-2, 1, 2, 3});
    assertThat(judgement.chanceItPays()).isEqualTo(0.75);
    assertThat(judgement.regretOfActing()).isEqualTo(0.5);
    assertThat(judgement.regretOfKeeping()).isEqualTo(1.5);
    assertThat(judgement.regretShare()).isEqualTo(0.25);
    assertThat(judgement.regretOfKeeping() - judgement.regretOfActing()).isEqualTo(1.0);
  }

  @Test
  void speaks_clearCases_forOneSideOnly() {
    assertThat(Judgement.of(gains(2, 1, 500, 1)).speaksForActing()).isTrue();
    assertThat(Judgement.of(gains(-2, 1, 500, 1)).speaksForKeeping()).isTrue();
    Judgement even = Judgement.of(gains(0, 1, 500, 1));
    assertThat(even.speaksForActing()).isFalse();
    assertThat(even.speaksForKeeping()).isFalse();
  }

  @Test
  void speaks_smallChanceOfALargeGain_isNeitherToActNorToKeep() {
    double[] lottery = new double[1000];
    Arrays.fill(lottery, -1);
    Arrays.fill(lottery, 0, 100, 50);
    Judgement judgement = Judgement.of(lottery);
    assertThat(judgement.speaksForActing()).isFalse();
    assertThat(judgement.speaksForKeeping()).isFalse();
  }

  @Test
  void speaks_actionWithoutEffect_isToKeep() {
    assertThat(Judgement.of(new double[500]).speaksForKeeping()).isTrue();
  }

  /** Both calls from one distribution would need its chance to be off by a third: never seen. */
  @Test
  void speaks_anyMeanOverSeeds_neverForBothSides() {
    for (double mean = -1; mean <= 1; mean += 0.1) {
      boolean act = false;
      boolean keep = false;
      for (int seed = 0; seed < 20; seed++) {
        Judgement judgement = Judgement.of(gains(mean, 1, 200, seed));
        act |= judgement.speaksForActing();
        keep |= judgement.speaksForKeeping();
      }
      assertThat(act && keep).as("mean %s", mean).isFalse();
    }
  }

  /** Independent: the spread of the share over 400 samples of 300. */
  @Test
  void regretShareError_overManySamples_isTheirSpread() {
    double[] shares = new double[400];
    double error = 0;
    for (int seed = 0; seed < shares.length; seed++) {
      Judgement judgement = Judgement.of(gains(0.3, 1, 300, 1000L + seed));
      shares[seed] = judgement.regretShare();
      error += judgement.regretShareError() / shares.length;
    }
    double spread = swardcase.chance.Sample.standardDeviation(shares);
    assertThat(error).isCloseTo(spread, within(0.15 * spread));
  }
}
