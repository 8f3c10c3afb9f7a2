package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BetaBinomialTest {

  /** α = β = 1 is a mean of a half and a correlation of a third: a flat chance of every count. */
  @Test
  void counts_withAFlatChance_areAllAsLikely() {
    for (int count = 0; count <= 12; count++) {
      assertThat(Math.exp(BetaBinomial.logProbability(count, 12, 0.5, 1 / 3.0)))
          .isCloseTo(1 / 13.0, within(1e-12));
    }
  }

  @Test
  void counts_together_haveProbabilityOneAndTheMeanAndVarianceStated() {
    double sum = 0;
    double mean = 0;
    double square = 0;
    for (int count = 0; count <= 40; count++) {
      double chance = Math.exp(BetaBinomial.logProbability(count, 40, 0.85, 0.02));
      sum += chance;
      mean += chance * count / 40;
      square += chance * count * count / 1600;
    }
    assertThat(sum).isCloseTo(1, within(1e-10));
    assertThat(mean).isCloseTo(0.85, within(1e-10));
    assertThat(square - mean * mean)
        .isCloseTo(BetaBinomial.varianceOfShare(40, 0.85, 0.02), within(1e-10));
  }

  /** 4.9 points at 85 of 100 are √(0.85 × 0.15 × (1 + 999 × 0.02)/1000). */
  @Test
  void share_atTheMiddleAndOneDeviationUp_isMeanAndMeanMoreThatDeviation() {
    assertThat(BetaBinomial.shareAt(0.5, 1000, 0.85, 0.02)).isCloseTo(0.85, within(1e-12));
    assertThat(BetaBinomial.shareAt(0.841344746068543, 1000, 0.85, 0.02))
        .isCloseTo(0.85 + Math.sqrt(0.85 * 0.15 * 20.98 / 1000), within(1e-9));
    assertThat(BetaBinomial.shareAt(0.999999, 1000, 0.97, 0.05)).isEqualTo(1);
  }

  @Test
  void counts_thatCannotBe_areRefused() {
    assertThatThrownBy(() -> BetaBinomial.logProbability(5, 4, 0.5, 0.1))
        .hasMessageContaining("count must be from 0 to 4, but was 5");
    assertThatThrownBy(() -> BetaBinomial.logProbability(1, 4, 0.5, 0))
        .hasMessageContaining("correlation must be above 0");
  }
}
