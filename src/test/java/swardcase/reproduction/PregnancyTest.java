package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PregnancyTest {

  private static final double TWO_CYCLES_WEEKS = 34 / 7.0;

  /** Arithmetic: 1 - 0.11^(1/2) = 0.668. */
  @Test
  void perCycleConception_89PercentAfterTwoCycles_isTwoThirds() {
    assertThat(Pregnancy.perCycleConception(0.89, TWO_CYCLES_WEEKS)).isCloseTo(0.67, within(0.005));
  }

  /** Arithmetic: 1 - (1 - 0.5 x 0.8) (1 - 0.5 x 0.6)^(1/17) = 0.4125 for 18 days of joining. */
  @Test
  void pregnantShare_partOfALastCycle_countsByItsPart() {
    double[] m = {0.8, 0.6};
    double expected = 1 - 0.6 * Math.pow(0.7, 1 / 17.0);
    assertThat(Pregnancy.pregnantShare(0.5, 18 / 7.0, m, 0)).isCloseTo(expected, within(1e-12));
    assertThat(expected).isCloseTo(0.4125, within(0.0001));
  }

  @Test
  void pregnantShare_noEffect_isTheUnaffectedShare() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 500; i++) {
      double share = random.nextDouble(0.01, 1);
      double weeks = random.nextDouble(1, 12);
      double[] ones = multipliers(random, weeks, 1, 1);
      double perCycle = Pregnancy.perCycleConception(share, weeks);
      assertThat(Pregnancy.pregnantShare(perCycle, weeks, ones, 0)).isCloseTo(share, within(1e-12));
      assertThat(Pregnancy.unaffectedShare(share, weeks, ones, 0)).isCloseTo(share, within(1e-12));
      assertThat(Pregnancy.pregnantShare(perCycle, weeks, ones, 1)).isZero();
    }
  }

  @Test
  void unaffectedShare_ofTheShareItGave_isTheShareStartedFrom() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 2000; i++) {
      double unaffected = random.nextDouble(0.05, 0.98);
      double weeks = random.nextDouble(1, 12);
      double sterile = random.nextDouble(0.6);
      double[] m = multipliers(random, weeks, 0.05, 1);
      double seen =
          Pregnancy.pregnantShare(
              Pregnancy.perCycleConception(unaffected, weeks), weeks, m, sterile);
      assertThat(Pregnancy.unaffectedShare(seen, weeks, m, sterile))
          .as("case %s", i)
          .isCloseTo(unaffected, within(1e-9));
    }
  }

  @Test
  void unaffectedShare_effectTooStrongForWhatWasSeen_stopsAt99Percent() {
    double[] m = {0.1, 0.1};
    assertThat(Pregnancy.unaffectedShare(0.85, TWO_CYCLES_WEEKS, m, 0.3)).isEqualTo(0.99);
    assertThat(Pregnancy.unaffectedShare(0.85, TWO_CYCLES_WEEKS, new double[2], 1)).isEqualTo(0.99);
    assertThat(Pregnancy.unaffectedShare(1, TWO_CYCLES_WEEKS, m, 0.3)).isEqualTo(1);
  }

  @Test
  void unaffectedShare_moreSeenOrMoreEffect_neverFalls() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 1000; i++) {
      double weeks = random.nextDouble(1, 10);
      double[] m = multipliers(random, weeks, 0.2, 1);
      double[] worse = m.clone();
      worse[random.nextInt(worse.length)] *= random.nextDouble();
      double seen = random.nextDouble(0.1, 0.95);
      double sterile = random.nextDouble(0.4);
      double share = Pregnancy.unaffectedShare(seen, weeks, m, sterile);
      assertThat(share).isBetween(seen, 0.99);
      assertThat(Pregnancy.unaffectedShare(seen, weeks, worse, sterile))
          .isGreaterThanOrEqualTo(share - 1e-12);
      assertThat(Pregnancy.unaffectedShare(seen + 0.02, weeks, m, sterile))
          .isGreaterThanOrEqualTo(share - 1e-12);
    }
  }

  private static double[] multipliers(
      SplittableRandom random, double weeks, double low, double high) {
    double[] m = new double[JoiningWalk.cycles(weeks)];
    for (int j = 0; j < m.length; j++) {
      m[j] = low == high ? low : random.nextDouble(low, high);
    }
    return m;
  }
}
