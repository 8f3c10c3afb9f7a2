package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class WeightsTest {

  private static final double NONE = Double.NEGATIVE_INFINITY;

  @Test
  void effectiveNumber_isThatOfTheDrawsThatCount() {
    double two = Math.log(2);
    assertThat(Weights.effective(new double[] {0, 0, two})).isCloseTo(16 / 6.0, within(1e-12));
    assertThat(Weights.effective(new double[] {-900, -900, NONE})).isCloseTo(2, within(1e-12));
    assertThat(Weights.effective(new double[] {NONE, NONE})).isZero();
  }

  @Test
  void picks_followTheWeights_toOneMoreOrLess() {
    int[] picked = new int[8];

    Weights.pick(new double[] {Math.log(1), NONE, Math.log(2), Math.log(5)}, 0.5, picked);

    assertThat(picked).containsExactly(0, 2, 2, 3, 3, 3, 3, 3);
    Weights.pick(new double[] {NONE, NONE}, 0.5, picked);
    assertThat(picked).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
  }

  /**
   * PERT of 0, 0.5, 1 is Beta(3, 3). Of 20 ewes 17 in lamb make it Beta(20, 6) by hand: mean 20/26
   * = 0.7692, standard deviation √(20 × 6/(26² × 27)) = 0.0811.
   */
  @Test
  void drawsOfABetaChance_weighedByACount_areTheConjugateBeta() {
    Pert prior = Pert.of(Range.of(0, 0.5, 1));
    double[] chance = new double[40_000];
    Arrays.setAll(chance, d -> prior.quantile((d + 0.5) / chance.length));
    double[] logWeight =
        Arrays.stream(chance).map(of -> BetaBinomial.logProbability(17, 20, of, 1e-7)).toArray();
    int[] picked = new int[20_000];

    Weights.pick(logWeight, 0.5, picked);

    double[] after = Arrays.stream(picked).mapToDouble(d -> chance[d]).toArray();
    assertThat(Sample.mean(after)).isCloseTo(20 / 26.0, within(2e-4));
    assertThat(Sample.standardDeviation(after))
        .isCloseTo(Math.sqrt(20 * 6 / (26.0 * 26 * 27)), within(2e-4));
    assertThat(Sample.share(after, of -> of < 0.8))
        .isCloseTo(1 - Proportion.betaAbove(0.8, 20, 6), within(1e-3));
  }
}
