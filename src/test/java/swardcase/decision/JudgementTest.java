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
  void isSure_clearCases_forOneSideOnly() {
    Judgement clear = Judgement.of(gains(2, 1, 500, 1));
    assertThat(clear.isSure()).isTrue();
    assertThat(clear.isOpen()).isTrue();
    Judgement against = Judgement.of(gains(-2, 1, 500, 1));
    assertThat(against.isSure()).isFalse();
    assertThat(against.isOpen()).isFalse();
    Judgement even = Judgement.of(gains(0, 1, 500, 1));
    assertThat(even.isSure()).isFalse();
    assertThat(even.isOpen()).isTrue();
  }

  @Test
  void isSure_smallChanceOfALargeGain_isOpenButNotSure() {
    double[] lottery = new double[1000];
    Arrays.fill(lottery, -1);
    Arrays.fill(lottery, 0, 100, 9);
    // Loses 1 in 900 draws, gains 9 in 100: as much missed as lost.
    Judgement judgement = Judgement.of(lottery);
    assertThat(judgement.regretShare()).isCloseTo(0.5, within(1e-12));
    assertThat(judgement.isSure()).isFalse();
    assertThat(judgement.isOpen()).isTrue();
  }

  @Test
  void isSure_gainsInFewDraws_hangsOnWhatItLosesInOthers() {
    double[] gains = new double[500];
    Arrays.fill(gains, 0, 50, 3);
    assertThat(Judgement.of(gains).isSure()).isTrue();
    // 10 lost against 150 gained, then 75: the last is a share of a third, but not beyond doubt.
    gains[499] = -10;
    assertThat(Judgement.of(gains).isSure()).isTrue();
    gains[499] = -75;
    assertThat(Judgement.of(gains).isSure()).isFalse();
  }

  @Test
  void isOpen_actionWithoutEffect_isNot() {
    assertThat(Judgement.of(new double[500]).isOpen()).isFalse();
    assertThat(Judgement.of(new double[500]).isSure()).isFalse();
  }

  /** A share within two errors of a third, or of two thirds, is near its line. */
  @Test
  void near_shareOnEitherSideOfALine_isTold() {
    for (double mean = -1.5; mean <= 1.5; mean += 0.02) {
      Judgement judgement = Judgement.of(gains(mean, 1, 200, 5));
      double share = judgement.regretShare();
      double error = 2 * judgement.regretShareError();
      assertThat(judgement.isSure()).isEqualTo(share + error <= 1.0 / 3);
      assertThat(judgement.isOpen()).isEqualTo(share - error < 2.0 / 3);
      assertThat(judgement.isJustNotSure()).isEqualTo(share <= 1.0 / 3 && !judgement.isSure());
      assertThat(judgement.isJustOpen()).isEqualTo(share >= 2.0 / 3 && judgement.isOpen());
    }
  }

  /** Both calls from one distribution would need its share to be off by a third: never seen. */
  @Test
  void isSure_anyMeanOverSeeds_isNeverBesideKeep() {
    for (double mean = -1; mean <= 1; mean += 0.1) {
      boolean act = false;
      boolean keep = false;
      for (int seed = 0; seed < 20; seed++) {
        Judgement judgement = Judgement.of(gains(mean, 1, 200, seed));
        act |= judgement.isSure();
        keep |= !judgement.isOpen();
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
