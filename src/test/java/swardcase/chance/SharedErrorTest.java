package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.junit.jupiter.api.Test;

class SharedErrorTest {

  private static final double[] VARIANCE = {0.04, 0.09, 0.25};

  /** The density with the whole matrix of covariances, by another library. */
  private static double whole(double... residuals) {
    double[][] covariance = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        covariance[i][j] = 0.3 * 0.3 + (i == j ? VARIANCE[i] : 0);
      }
    }
    return Math.log(
        new MultivariateNormalDistribution(null, new double[3], covariance).density(residuals));
  }

  private static double of(double... residuals) {
    SharedError error = new SharedError(0.3);
    for (int t = 0; t < residuals.length; t++) {
      error.add(residuals[t], VARIANCE[t]);
    }
    return error.logDensity();
  }

  @Test
  void density_isThatOfTheWholeMatrix_butForAConstant() {
    double constant = -1.5 * Math.log(2 * Math.PI);
    assertThat(of(0, 0, 0) + constant).isCloseTo(whole(0, 0, 0), within(1e-12));
    assertThat(of(0.4, -0.2, 0.9) + constant).isCloseTo(whole(0.4, -0.2, 0.9), within(1e-12));
  }

  /** 0.5 × (0.6/0.3)² = 2 at most, as if the years had told the error exactly. */
  @Test
  void manyYearsOffByTheSame_areNoWorseThanTheSharedErrorAllows() {
    SharedError off = new SharedError(0.3);
    SharedError on = new SharedError(0.3);
    for (int t = 0; t < 100_000; t++) {
      off.add(0.6, 0.04);
      on.add(0, 0.04);
    }
    assertThat(on.logDensity() - off.logDensity()).isCloseTo(2, within(1e-4));
    off.clear();
    on.clear();
    assertThat(off.logDensity()).isEqualTo(on.logDensity());
  }
}
