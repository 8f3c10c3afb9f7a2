package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StraightLinesTest {

  @Test
  void slopes_ofAPlane_areItsOwn_andNothingForWhatNeverVaries() {
    SplittableRandom random = new SplittableRandom(3);
    double[] a = random.doubles(200).toArray();
    double[] b = random.doubles(200).toArray();
    double[] same = new double[200];
    double[] y = new double[200];
    Arrays.setAll(y, d -> 5 + 3 * a[d] - 7 * b[d]);

    double[] slopes = StraightLines.slopes(List.of(a, same, b), y);

    assertThat(slopes).containsExactly(new double[] {3, 0, -7}, within(1e-9));
    assertThat(StraightLines.slopes(List.of(a, a), y)).containsExactly(0, 0);
    assertThat(StraightLines.slopes(List.of(same), y)).containsExactly(0);
  }
}
