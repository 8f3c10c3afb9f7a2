package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CountedRandomTest {

  /** Independent: the generator of the Java library, which is the published algorithm. */
  @Test
  void nextLong_fromAnySeed_isThatOfTheLibrary() {
    for (long seed : new long[] {0, 1, -7, 1234567, Long.MIN_VALUE}) {
      CountedRandom own = new CountedRandom(seed);
      SplittableRandom library = new SplittableRandom(seed);
      for (int i = 0; i < 1000; i++) {
        assertThat(own.nextLong()).isEqualTo(library.nextLong());
      }
    }
  }

  @Test
  void restart_ofADraw_givesItsNumbersWhateverWasDrawnBefore() {
    CountedRandom random = new CountedRandom(9);
    random.restart(1, 17, 3);
    double first = random.nextDouble();
    random.restart(1, 18, 3);
    assertThat(random.nextDouble()).isNotEqualTo(first);
    random.restart(1, 17, 4);
    assertThat(random.nextDouble()).isNotEqualTo(first);
    random.restart(2, 17, 3);
    assertThat(random.nextDouble()).isNotEqualTo(first);
    random.restart(1, 17, 3);
    assertThat(random.nextDouble()).isEqualTo(first);
  }

  /** Streams started one after another must look independent: mean 1/2 and no serial tie. */
  @Test
  void restart_ofManyDraws_givesUniformUnrelatedNumbers() {
    CountedRandom random = new CountedRandom(0);
    int n = 100_000;
    double[] now = new double[n];
    double[] next = new double[n];
    for (int d = 0; d < n; d++) {
      random.restart(5, d, 1);
      now[d] = random.nextDouble();
      random.restart(5, d + 1L, 1);
      next[d] = random.nextDouble();
    }
    assertThat(Math.abs(Sample.mean(now) - 0.5)).isLessThan(4 * Math.sqrt(1.0 / 12 / n));
    assertThat(StraightLine.of(now, next).varianceShare()).isLessThan(16.0 / n);
  }
}
