package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;

class StandDensityTest {

  private static double row(String key) {
    return RandomFarms.TABLES.parameter(key).likely();
  }

  /**
   * Ru, Fortune and Bellotti 1997, abstract: 460 and 4,600 plants per m2 grew 88.5 and 362.8 g/m2
   * to day 60. The pair is printed to 0.05 g; half of that last digit on both moves their ratio of
   * 4.099 by 0.003. k = 2,400 is rounded to two figures, which moves it by up to 0.025.
   */
  @Test
  void growth_atTheTableRow_givesThePublishedPair() {
    double ratio =
        StandDensity.growth(4600, row("density.half-growth"))
            / StandDensity.growth(460, row("density.half-growth"));
    assertThat(ratio).isCloseTo(362.8 / 88.5, within(0.003 + 0.025));
  }

  /** Hand arithmetic: 150/2,550 over 1,000/3,400 is 0.2; 1 − 0.5 x 0.4 x 0.4 x 0.8 = 0.936. */
  @Test
  void factor_thinStand_matchesHandArithmetic() {
    double relative = StandDensity.relative(150, 1000, 2400);
    assertThat(relative).isCloseTo(0.2, within(1e-12));
    assertThat(StandDensity.factor(0.5, relative, 0.6, 0.4)).isCloseTo(0.936, within(1e-12));
  }

  /** 10 kg/ha are 1,000 mg per m2. */
  @Test
  void perM2_tenKilograms_areSomeHundredAndThirtySeeds() {
    assertThat(StandDensity.perM2(10, 7.5)).isCloseTo(1000 / 7.5, within(1e-12));
  }

  @Test
  void factor_atTheReferenceOrBeyondOrWithoutClover_losesNothing() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 500; i++) {
      double reference = random.nextDouble(600, 2000);
      double k = random.nextDouble(1000, 4000);
      double more = random.nextDouble(1, 10);
      for (double p : new double[] {reference, reference * more}) {
        double relative = StandDensity.relative(p, reference, k);
        assertThat(StandDensity.factor(random.nextDouble(), relative, 0.3, 0.5)).isEqualTo(1);
      }
      double thin = StandDensity.relative(reference / 10, reference, k);
      assertThat(thin).isLessThan(1);
      assertThat(StandDensity.factor(0, thin, 0.3, 0.5)).isEqualTo(1);
    }
  }

  @Test
  void factor_denserStand_neverGrowsLess() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 500; i++) {
      double reference = random.nextDouble(600, 2000);
      double k = random.nextDouble(1000, 4000);
      double clover = random.nextDouble();
      double before = 0;
      for (double p = 0; p < 3000; p += 50) {
        double factor =
            StandDensity.factor(clover, StandDensity.relative(p, reference, k), 0.6, 0.4);
        assertThat(factor).isBetween(before, 1d);
        before = factor;
      }
    }
  }
}
