package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SampleQuantileTest {

  /** Hand arithmetic: position (4 − 1) × 0.25 = 0.75 between 1 and 2. */
  @Test
  void ofSorted_betweenTwoValues_interpolates() {
    assertThat(Sample.quantile(new double[] {1, 2, 3, 4}, 0.25)).isEqualTo(1.75);
    assertThat(Sample.quantile(new double[] {1, 2, 3, 4}, 0.5)).isEqualTo(2.5);
  }

  @Test
  void ofSorted_ends_areLeastAndGreatest() {
    double[] sample = {-3, 0, 8};
    assertThat(Sample.quantile(sample, 0)).isEqualTo(-3);
    assertThat(Sample.quantile(sample, 1)).isEqualTo(8);
    assertThat(Sample.quantile(new double[] {7}, 0.3)).isEqualTo(7);
  }

  @Test
  void ofSorted_badArguments_areRefused() {
    assertThatThrownBy(() -> Sample.quantile(new double[0], 0.5))
        .hasMessage("a quantile needs at least one value");
    assertThatThrownBy(() -> Sample.quantile(new double[] {1}, Double.NaN))
        .hasMessage("probability of a quantile must be from 0 to 1, but was NaN");
  }
}
