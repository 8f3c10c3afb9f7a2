package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LatinHypercubeTest {

  private static List<String> keys(int count) {
    return IntStream.range(0, count).mapToObj(j -> "input " + j).toList();
  }

  @Test
  void uniform_ofAKey_isTheSameWhateverOtherKeysThereAre() {
    LatinHypercube alone = LatinHypercube.of(3, 4, 50, List.of("price of lamb"));
    LatinHypercube among =
        LatinHypercube.of(3, 4, 50, List.of("seed", "price of lamb", "price of barley"));
    for (int d = 0; d < alone.draws(); d++) {
      assertThat(among.uniform(d, 1)).isEqualTo(alone.uniform(d, 0));
    }
  }

  @Test
  void uniform_inABlock_fallsOnceIntoEverySlice() {
    LatinHypercube draws = LatinHypercube.of(3, 4, 50, keys(7));
    assertThat(draws.draws()).isEqualTo(200);
    for (int input = 0; input < 7; input++) {
      for (int block = 0; block < 4; block++) {
        boolean[] seen = new boolean[50];
        for (int i = 0; i < 50; i++) {
          int slice = (int) (draws.uniform(block * 50 + i, input) * 50);
          assertThat(seen[slice]).as("input %s, slice %s", input, slice).isFalse();
          seen[slice] = true;
        }
      }
    }
  }

  @Test
  void of_oneSeed_givesTheSameNumbersOnOneThreadAndOnMany() {
    LatinHypercube many = LatinHypercube.of(11, 5, 20, keys(9));
    LatinHypercube one =
        new ForkJoinPool(1).submit(() -> LatinHypercube.of(11, 5, 20, keys(9))).join();
    for (int d = 0; d < many.draws(); d++) {
      for (int j = 0; j < 9; j++) {
        assertThat(one.uniform(d, j)).isEqualTo(many.uniform(d, j));
      }
    }
    assertThat(LatinHypercube.of(12, 5, 20, keys(9)).uniform(0, 0))
        .isNotEqualTo(many.uniform(0, 0));
  }

  /** A sum of inputs is averaged far better than by plain draws, as McKay et al. (1979) show. */
  @Test
  void standardError_ofASumOfInputs_isFarBelowThatOfPlainDraws() {
    LatinHypercube draws = LatinHypercube.of(1, 20, 100, keys(6));
    double[] sum = new double[draws.draws()];
    for (int d = 0; d < sum.length; d++) {
      for (int j = 0; j < 6; j++) {
        sum[d] += draws.uniform(d, j);
      }
    }
    double plain = Sample.standardDeviation(sum) / Math.sqrt(sum.length);
    assertThat(draws.standardError(sum)).isLessThan(plain / 50);
    assertThat(Math.abs(Sample.mean(sum) - 3)).isLessThan(5 * draws.standardError(sum));
  }

  /** Values that have nothing to do with the inputs: both standard errors agree, within 3 parts. */
  @Test
  void standardError_ofUnrelatedValues_isThatOfPlainDraws() {
    LatinHypercube draws = LatinHypercube.of(1, 200, 20, keys(1));
    SplittableRandom random = new SplittableRandom(4);
    double[] values = new double[draws.draws()];
    for (int d = 0; d < values.length; d++) {
      values[d] = random.nextGaussian();
    }
    double plain = 1 / Math.sqrt(values.length);
    // 200 blocks tell a standard error to within 1 / sqrt(400) = 5 %; three times that is allowed.
    assertThat(draws.standardError(values)).isBetween(0.85 * plain, 1.15 * plain);
  }

  @Test
  void of_oneBlock_isRefused() {
    assertThatThrownBy(() -> LatinHypercube.of(1, 1, 10, keys(2)))
        .hasMessage("blocks of draws must be 2 or more, but was 1");
  }
}
