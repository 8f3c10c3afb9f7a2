package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PairedUniformsTest {

  /** Kruskal (1958), cited from memory: rank correlation (6 / pi) asin(rho / 2). */
  @Test
  void second_tiedToTheFirst_hasTheRankCorrelationOfTheCopula() {
    SplittableRandom random = new SplittableRandom(3);
    int n = 60_000;
    for (double rho : new double[] {-0.9, -0.3, 0.3, 0.7}) {
      double[] first = random.doubles(n).toArray();
      double[] second = new double[n];
      for (int d = 0; d < n; d++) {
        second[d] = PairedUniforms.second(first[d], random.nextDouble(), rho);
      }
      double wanted = 6 / Math.PI * Math.asin(rho / 2);
      // Four standard errors of a correlation from n draws.
      assertThat(Math.sqrt(StraightLine.of(first, second).varianceShare()))
          .isCloseTo(Math.abs(wanted), within(4 / Math.sqrt(n)));
      assertThat(Sample.mean(second)).isCloseTo(0.5, within(4 * Math.sqrt(1.0 / 12 / n)));
      assertThat(Sample.standardDeviation(second)).isCloseTo(Math.sqrt(1.0 / 12), within(0.004));
    }
  }

  @Test
  void second_withoutCorrelation_isUnchangedAndFullyTiedIsTheFirst() {
    assertThat(PairedUniforms.second(0.2, 0.7, 0)).isEqualTo(0.7);
    assertThat(PairedUniforms.second(0.2, 0.7, 1)).isCloseTo(0.2, within(1e-9));
    assertThat(PairedUniforms.second(0.2, 0.7, -1)).isCloseTo(0.8, within(1e-9));
    assertThat(PairedUniforms.second(0, 0, 0.5)).isBetween(0.0, 1.0);
  }
}
