package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The fit of the curve to its one trial, done again: ewes that held to first service in McDonald,
 * Anwar and Keogh 1994 (Proc. NZ Soc. Anim. Prod. 54:231-234), counted back from the printed shares
 * returning; binomial likelihood, unaffected groups pooled at 57 of 63.
 */
class DoseResponseFitTest {

  private static final double CONTROL = 57 / 63.0;

  /** Dose % of dry matter, ewes that held, ewes served. */
  private static final double[][] GROUPS = {{0.55, 6, 22}, {0.26, 14, 21}, {0.26, 18, 24}};

  /** Half the 95 % point of chi-squared with one degree of freedom. */
  private static final double DROP_95 = 1.92;

  @Test
  void likelihood_chosenValues_areAsGoodAsTheBest() {
    assertThat(best() - hill(0.41, 3)).isBetween(0.0, 0.02);
  }

  @Test
  void likelihood_rangeOfD50_isFrom33To59Hundredths() {
    double low = 1;
    double high = 0;
    double best = best();
    for (int d = 20; d <= 90; d++) {
      double highest = Double.NEGATIVE_INFINITY;
      for (int n = 10; n <= 160; n++) {
        highest = Math.max(highest, hill(d / 100.0, n / 20.0));
      }
      if (best - highest < DROP_95) {
        low = Math.min(low, d / 100.0);
        high = Math.max(high, d / 100.0);
      }
    }
    assertThat(low).isEqualTo(0.33);
    assertThat(high).isEqualTo(0.59);
  }

  /** The shape is nearly unknown. */
  @Test
  void likelihood_rangeOfSteepness_isWide() {
    double low = 100;
    double high = 0;
    double best = best();
    for (int n = 5; n <= 80; n++) {
      double highest = Double.NEGATIVE_INFINITY;
      for (int d = 40; d <= 180; d++) {
        highest = Math.max(highest, hill(d / 200.0, n / 10.0));
      }
      if (best - highest < DROP_95) {
        low = Math.min(low, n / 10.0);
        high = Math.max(high, n / 10.0);
      }
    }
    assertThat(low).isEqualTo(1.2);
    assertThat(high).isEqualTo(4.7);
  }

  /** A straight line from a threshold of 0.13 %, slope 1.65 per %, fits equally well. */
  @Test
  void likelihood_straightLine_isAsGood() {
    double line = likelihood(dose -> 1 - 1.65 * Math.max(0, dose - 0.13));
    assertThat(line).isCloseTo(best(), within(0.05));
  }

  private static double best() {
    double best = Double.NEGATIVE_INFINITY;
    for (int d = 40; d <= 180; d++) {
      for (int n = 10; n <= 160; n++) {
        best = Math.max(best, hill(d / 200.0, n / 20.0));
      }
    }
    return best;
  }

  private static double hill(double d50, double n) {
    return likelihood(dose -> DoseResponse.conceptionMultiplier(dose, d50, n));
  }

  private static double likelihood(DoubleUnaryOperator multiplier) {
    double sum = 0;
    for (double[] group : GROUPS) {
      double p = CONTROL * multiplier.applyAsDouble(group[0]);
      sum += group[1] * Math.log(p) + (group[2] - group[1]) * Math.log(1 - p);
    }
    return sum;
  }
}
