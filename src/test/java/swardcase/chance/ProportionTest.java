package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /** Posterior of a flat prior after 100 points, recomputed in R with pbeta and qbeta. */
  @ParameterizedTest
  @CsvSource({"10, .0050", "15, .1189", "20, .5396", "25, .9037", "30, .9929"})
  void betaAbove_twentyPerCentAfterAHundredPoints_matchesPbeta(int hits, double chance) {
    assertThat(Proportion.betaAbove(0.2, hits + 1, 101 - hits)).isCloseTo(chance, within(5e-5));
  }

  @Test
  void quantile_twentyOfAHundred_matchesQbeta() {
    assertThat(Proportion.quantile(0.025, 21, 81)).isCloseTo(0.134, within(5e-4));
    assertThat(Proportion.quantile(0.975, 21, 81)).isCloseTo(0.289, within(5e-4));
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
    assertThat(Proportion.betaAbove(0, 3, 2)).isEqualTo(1);
  }
}
