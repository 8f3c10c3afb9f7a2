package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /** Wilson (1927) formula by hand arithmetic, in per cent to one decimal. */
  @ParameterizedTest
  @CsvSource({
    "5, 100, 2.2, 11.2",
    "10, 100, 5.5, 17.4",
    "20, 100, 13.3, 28.9",
    "30, 100, 21.9, 39.6"
  })
  void wilson_ofAHundredPoints_matchesHandArithmetic(
      int hits, int trials, double low, double high) {
    Range interval = Proportion.of(hits, trials).wilson(0.95);
    assertThat(interval.low() * 100).isCloseTo(low, within(0.05));
    assertThat(interval.high() * 100).isCloseTo(high, within(0.05));
  }

  /** Hand arithmetic, to whole per cent: clumping turns 100 points into about 50. */
  @Test
  void wilson_tenOfFifty_isElevenToThirtyThree() {
    Range interval = Proportion.of(10, 50).wilson(0.95);
    assertThat(interval.low()).isCloseTo(0.11, within(0.005));
    assertThat(interval.high()).isCloseTo(0.33, within(0.005));
  }

  /** Posterior of a flat prior after 100 points, recomputed in R with pbeta and qbeta. */
  @ParameterizedTest
  @CsvSource({"10, .0050", "15, .1189", "20, .5396", "25, .9037", "30, .9929"})
  void chanceAbove_twentyPerCentAfterAHundredPoints_matchesPbeta(int hits, double chance) {
    assertThat(Proportion.of(hits, 100).chanceAbove(0.2, 1)).isCloseTo(chance, within(5e-5));
  }

  @Test
  void quantile_twentyOfAHundred_matchesQbeta() {
    assertThat(Proportion.of(20, 100).quantile(0.025, 1)).isCloseTo(0.134, within(5e-4));
    assertThat(Proportion.of(20, 100).quantile(0.975, 1)).isCloseTo(0.289, within(5e-4));
  }

  @Test
  void wilson_ofAnyCount_holdsTheShareAndMirrors() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 500; i++) {
      double trials = random.nextDouble(0.5, 300);
      double hits = i < 5 ? 0 : random.nextDouble(0, trials);
      Range own = Proportion.of(hits, trials).wilson(0.9);
      Range other = Proportion.of(trials - hits, trials).wilson(0.9);
      assertThat(own.low()).as("%s of %s", hits, trials).isBetween(0d, hits / trials);
      assertThat(own.high()).isBetween(hits / trials, 1d);
      assertThat(own.low()).isCloseTo(1 - other.high(), within(1e-12));
    }
  }

  @Test
  void wilson_nothingLookedAt_isNoKnowledge() {
    assertThat(Proportion.of(0, 0).wilson(0.95)).isEqualTo(Range.of(0, 0.5, 1));
  }

  @Test
  void chanceAbove_limits_areCertain() {
    assertThat(Proportion.of(3, 10).chanceAbove(0, 1)).isEqualTo(1);
    assertThat(Proportion.of(3, 10).chanceAbove(1, 1)).isZero();
  }

  /** A share of which there is nothing is 0, one of which there is all is 1. */
  @Test
  void betaAbove_nothingOrAll_isCertain() {
    assertThat(Proportion.betaAbove(-0.1, 0, 3)).isEqualTo(1);
    assertThat(Proportion.betaAbove(0, 0, 3)).isZero();
    assertThat(Proportion.betaAbove(0.5, 0, 3)).isZero();
    assertThat(Proportion.betaAbove(0.99, 3, 0)).isEqualTo(1);
    assertThat(Proportion.betaAbove(1, 3, 0)).isZero();
    assertThat(Proportion.betaAbove(1, 3, 2)).isZero();
  }

  @Test
  void of_badCounts_areRefused() {
    assertThatThrownBy(() -> Proportion.of(11, 10))
        .hasMessage("hits must be from 0 to 10, but was 11");
    assertThatThrownBy(() -> Proportion.of(Double.NaN, 10)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> Proportion.of(1, 10).wilson(1))
        .hasMessage("confidence must be between 0 and 1, but was 1.0");
  }
}
