package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WinterGrowthTest {

  /** Hand arithmetic: 1 − 0.5 × 0.1 = 0.95; at the trade's ceiling of 30 % on pure clover, 0.70. */
  @Test
  void factor_halfClover_matchesHandArithmetic() {
    assertThat(WinterGrowth.factor(0.5, 0.9)).isCloseTo(0.95, within(1e-12));
    assertThat(WinterGrowth.factor(1, 0.7)).isCloseTo(0.70, within(1e-12));
  }

  /**
   * Nichols et al. 2007: Izmir grew 10 % more than Nungarin in winter, so a pure stand of Nungarin
   * gives 1/1.10 = 0.909 of one of Izmir.
   */
  @Test
  void factor_pureNungarin_isWhatIzmirGaveMore() {
    assertThat(1 / WinterGrowth.factor(1, 1 / 1.10)).isCloseTo(1.10, within(1e-12));
  }

  @Test
  void factor_noCloverOrNoDifference_isOne() {
    assertThat(WinterGrowth.factor(0, 0.7)).isEqualTo(1);
    assertThat(WinterGrowth.factor(0.8, 1)).isEqualTo(1);
  }

  @Test
  void factor_anyStand_liesBetweenItsCloverAndOneAndFallsWithClover() {
    SplittableRandom random = new SplittableRandom(8);
    for (int i = 0; i < 500; i++) {
      double share = random.nextDouble();
      double yield = random.nextDouble(0.5, 1);
      double factor = WinterGrowth.factor(share, yield);
      assertThat(factor).as("%s of %s", share, yield).isBetween(yield, 1d);
      assertThat(WinterGrowth.factor(share / 2, yield)).isGreaterThanOrEqualTo(factor);
    }
  }
}
