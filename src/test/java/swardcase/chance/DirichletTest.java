package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DirichletTest {

  @Test
  void parts_ofOneTwoThree_areAsGiven() {
    Dirichlet shares = Dirichlet.of(1, 2, 3);
    assertThat(shares.alpha(1)).isEqualTo(2);
    assertThat(shares.total()).isEqualTo(6);
    assertThat(shares.mean(1)).isCloseTo(1 / 3d, within(1e-15));
  }

  /** Beta(1, 1) is uniform: quantiles 0.05 and 0.95. */
  @Test
  void interval_ofAUniformShare_isFiveToNinetyFive() {
    Range interval = Dirichlet.of(1, 1).interval(1);
    assertThat(interval.low()).isCloseTo(0.05, within(1e-8));
    assertThat(interval.likely()).isEqualTo(0.5);
    assertThat(interval.high()).isCloseTo(0.95, within(1e-8));
  }

  @Test
  void interval_ofNothingAndOfAll_isExact() {
    assertThat(Dirichlet.of(2, 5).interval(0)).isEqualTo(Range.exactly(0));
    assertThat(Dirichlet.of(2, 5).interval(7)).isEqualTo(Range.exactly(1));
  }

  /**
   * With m the mean of a share and A the sum of all parameters, its variance is m(1 − m)/(A + 1).
   * Standard error of a mean of 40,000 draws is at most 0.5/200 = 0.0025; four of them allowed.
   */
  @Test
  void sample_manyDraws_haveTheMeansAndVariances() {
    double[] parameters = {0.25, 3, 1.5, 20};
    Dirichlet shares = Dirichlet.of(parameters);
    SplittableRandom random = new SplittableRandom(2);
    double[] sum = new double[4];
    double[] squares = new double[4];
    int n = 40_000;
    for (int k = 0; k < n; k++) {
      double[] draw = parameters.clone();
      Dirichlet.sampleInPlace(random, draw);
      double total = 0;
      for (int i = 0; i < 4; i++) {
        assertThat(draw[i]).isBetween(0d, 1d);
        total += draw[i];
        sum[i] += draw[i];
        squares[i] += draw[i] * draw[i];
      }
      assertThat(total).isCloseTo(1, within(1e-12));
    }
    for (int i = 0; i < 4; i++) {
      double expected = shares.mean(i) * (1 - shares.mean(i)) / (shares.total() + 1);
      assertThat(sum[i] / n).isCloseTo(shares.mean(i), within(4 * Math.sqrt(expected / n)));
      double variance = squares[i] / n - sum[i] / n * sum[i] / n;
      assertThat(variance / expected).isCloseTo(1, within(0.08));
    }
  }

  @Test
  void sample_sameSeed_givesTheSameShares() {
    double[] one = {2, 3};
    double[] two = {2, 3};
    Dirichlet.sampleInPlace(new SplittableRandom(9), one);
    Dirichlet.sampleInPlace(new SplittableRandom(9), two);
    assertThat(one).isEqualTo(two);
  }

  /** A gamma variable of shape a has mean a and variance a. */
  @Test
  void gamma_manyDraws_haveMeanAndVarianceOfTheShape() {
    SplittableRandom random = new SplittableRandom(4);
    for (double shape : new double[] {0.1, 0.9, 1, 2.5, 60}) {
      int n = 40_000;
      double sum = 0;
      double squares = 0;
      for (int k = 0; k < n; k++) {
        double x = Dirichlet.gamma(random, shape);
        sum += x;
        squares += x * x;
      }
      double mean = sum / n;
      assertThat(mean).as("shape %s", shape).isCloseTo(shape, within(4 * Math.sqrt(shape / n)));
      assertThat((squares / n - mean * mean) / shape).as("shape %s", shape).isBetween(0.9, 1.1);
    }
  }

  @Test
  void of_parameterThatIsNotPositive_isRefused() {
    assertThatThrownBy(() -> Dirichlet.of(1, 0))
        .hasMessage("Dirichlet parameter must be more than zero, but was 0");
    assertThatThrownBy(() -> Dirichlet.of(1, Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(Dirichlet::of).hasMessage("there must be at least one share");
  }
}
