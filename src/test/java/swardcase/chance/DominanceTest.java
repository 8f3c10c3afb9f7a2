package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DominanceTest {

  // A teaching note on stochastic dominance (hackmd.io/@Oblio/r1HjW2_dJx): F is 2 or 3, G is 1, 2,
  // 3 or 4, each equally likely. It states that F dominates G in the second degree only.
  private static final double[] F = {2, 2, 3, 3};
  private static final double[] G = {1, 2, 3, 4};

  @Test
  void secondDegree_ofTheNote_holdsOneWayOnly() {
    assertThat(Dominance.secondDegree(F, G)).isTrue();
    assertThat(Dominance.secondDegree(G, F)).isFalse();
  }

  @Test
  void firstDegree_ofTheNote_holdsNeitherWay() {
    assertThat(Dominance.firstDegree(F, G)).isFalse();
    assertThat(Dominance.firstDegree(G, F)).isFalse();
  }

  @Test
  void degrees_ofAnySamples_keepTheirLaws() {
    SplittableRandom random = new SplittableRandom(6);
    for (int trial = 0; trial < 500; trial++) {
      double[] a = random.doubles(6, 0, 4).map(Math::rint).sorted().toArray();
      double[] b = random.doubles(6, 0, 4).map(Math::rint).sorted().toArray();
      if (Dominance.firstDegree(a, b)) {
        assertThat(Dominance.secondDegree(a, b)).isTrue();
        assertThat(Sample.mean(a)).isGreaterThan(Sample.mean(b));
      }
      if (Dominance.secondDegree(a, b)) {
        assertThat(Dominance.secondDegree(b, a)).isFalse();
        for (double tolerance : new double[] {0.3, 1, 10, Double.POSITIVE_INFINITY}) {
          assertThat(CertaintyEquivalent.ofSample(a, tolerance))
              .isGreaterThanOrEqualTo(CertaintyEquivalent.ofSample(b, tolerance) - 1e-9);
        }
      }
      assertThat(Dominance.secondDegree(a, a)).isFalse();
      double[] more = Arrays.stream(a).map(value -> value + 1).toArray();
      assertThat(Dominance.firstDegree(more, a)).isTrue();
    }
  }

  @Test
  void firstDegree_samplesOfDifferentLength_areRefused() {
    assertThatThrownBy(() -> Dominance.firstDegree(F, new double[] {1}))
        .hasMessage("samples must be equally long");
  }
}
