package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PertTest {

  /**
   * Means: a set of lecture exercises on project scheduling, which prints 5, 4, 4, 7.5, 5.5 and 6.
   * Variances: our arithmetic from the exact formula, recomputed in R; the lecture prints the
   * approximate ones. Both of the quantile function over evenly spread probabilities.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 5, 8, 5, 1.285714",
    "1, 4, 7, 4, 1.285714",
    "2, 4, 6, 4, 0.571429",
    "5, 7, 12, 7.5, 1.607143",
    "3, 5, 10, 5.5, 1.607143",
    "3, 6, 9, 6, 1.285714"
  })
  void quantile_averaged_givesMeanAndVariance(
      double low, double likely, double high, double mean, double variance) {
    Pert pert = Pert.of(Range.of(low, likely, high));
    int n = 100_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double x = pert.quantile((i + 0.5) / n);
      sum += x;
      squares += x * x;
    }
    assertThat(sum / n).isCloseTo(mean, within(1e-5));
    assertThat(squares / n - sum / n * sum / n).isCloseTo(variance, within(1e-4));
  }

  /**
   * Independent: the inverse of the Commons Math beta distribution, solved to 1e-12. Tolerance: the
   * accuracy the class promises.
   */
  @ParameterizedTest
  @CsvSource({"0, 0, 1", "0, 0.1, 1", "0, 0.5, 1", "0, 0.77, 1", "0, 1, 1"})
  void quantile_overTheWholeRange_matchesTheBetaInverse(double low, double likely, double high) {
    Pert pert = Pert.of(Range.of(low, likely, high));
    BetaDistribution beta = new BetaDistribution(null, 1 + 4 * likely, 1 + 4 * (1 - likely), 1e-12);
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 400; i++) {
      double u = i < 20 ? Math.pow(10, -i / 2.0) : random.nextDouble();
      assertThat(pert.quantile(u))
          .as("mode %s, u %s", likely, u)
          .isCloseTo(beta.inverseCumulativeProbability(u), within(1e-5));
      assertThat(pert.quantile(1 - u))
          .as("mode %s, u %s", likely, 1 - u)
          .isCloseTo(beta.inverseCumulativeProbability(1 - u), within(1e-5));
    }
  }

  @Test
  void quantile_ofAnyRange_risesFromLowToHigh() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 12; i++) {
      double low = random.nextDouble(-10, 10);
      double high = low + random.nextDouble(0.01, 20);
      double likely = random.nextDouble(low, high);
      Pert pert = Pert.of(Range.of(low, likely, high));
      assertThat(pert.quantile(0)).isEqualTo(low);
      assertThat(pert.quantile(1)).isCloseTo(high, within(1e-12));
      double previous = low;
      for (int j = 1; j < 1000; j++) {
        double x = pert.quantile(j / 1000.0);
        assertThat(x).as("case %s at %s", i, j).isGreaterThan(previous);
        previous = x;
      }
    }
  }

  @Test
  void quantile_ofAValueKnownExactly_isThatValue() {
    Pert pert = Pert.of(Range.exactly(3));
    assertThat(pert.quantile(0.001)).isEqualTo(3);
    assertThat(pert.quantile(1)).isEqualTo(3);
  }

  /** Where the tables of the quantile function meet, to the accuracy the class promises. */
  @Test
  void quantile_whereTablesMeet_isTheBetaInverse() {
    Pert pert = Pert.of(Range.of(0, 0.5, 1));
    BetaDistribution beta = new BetaDistribution(null, 3, 3, 1e-12);
    for (double u : new double[] {1 / 32d, 31 / 32d}) {
      assertThat(pert.quantile(u)).isCloseTo(beta.inverseCumulativeProbability(u), within(1e-5));
    }
  }
}
