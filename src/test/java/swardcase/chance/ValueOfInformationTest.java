package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ValueOfInformationTest {

  private static final double[] WELL = {0.4, 0.6};
  private static final double[][] DRILL = {{600, -200}, {0, 0}};
  private static final double[] LEASE = {0.1, 0.15, 0.25, 0.5};
  private static final double[][] LEASES = {
    {650, 200, -25, -75}, {45, 45, 45, 45}, {250, 100, 0, 0}
  };

  /**
   * Samuelson and Marks, Managerial Economics, chapter 13, pages 543 to 546: a perfect test of a
   * well is worth 120 (in thousands). That the well pays 600 follows from the printed averages.
   */
  @Test
  void perfect_wellOfTheTextbook_isWorth120() {
    assertThat(ValueOfInformation.perfect(WELL, DRILL)).isCloseTo(120, within(1e-9));
  }

  /**
   * The same: a scan is good or bad with equal chance, the well is wet in 0.6 of the good and 0.2
   * of the bad. Drilling only after a good one averages 140, 20 more than without.
   */
  @Test
  void ofTest_scanOfTheTextbook_isWorth20() {
    double goodIfWet = 0.5 * 0.6 / 0.4;
    double goodIfDry = 0.5 * 0.4 / 0.6;
    double[][] scan = {{goodIfWet, goodIfDry}, {1 - goodIfWet, 1 - goodIfDry}};
    assertThat(ValueOfInformation.ofTest(WELL, scan, DRILL)).isCloseTo(20, within(1e-9));
  }

  /**
   * A lease exercise (tutorsglobe.com, question 51535570): inputs as printed there, answers our
   * arithmetic: best average 51.25, perfect information 77.5.
   */
  @Test
  void perfect_leaseExercise_is77AndAHalf() {
    assertThat(ValueOfInformation.bestWithout(LEASE, LEASES)).isCloseTo(51.25, within(1e-9));
    assertThat(ValueOfInformation.perfect(LEASE, LEASES)).isCloseTo(77.5, within(1e-9));
  }

  @Test
  void ofTest_anyProblem_liesBetweenNothingAndPerfect() {
    SplittableRandom random = new SplittableRandom(8);
    for (int trial = 0; trial < 300; trial++) {
      int states = random.nextInt(1, 5);
      int results = random.nextInt(1, 4);
      double[] chance = shares(random, states);
      double[][] payoff = new double[random.nextInt(1, 5)][states];
      for (double[] choice : payoff) {
        for (int s = 0; s < states; s++) {
          choice[s] = random.nextDouble(-100, 100);
        }
      }
      double[][] likelihood = new double[results][states];
      for (int s = 0; s < states; s++) {
        double[] split = shares(random, results);
        for (int r = 0; r < results; r++) {
          likelihood[r][s] = split[r];
        }
      }
      double perfect = ValueOfInformation.perfect(chance, payoff);
      double test = ValueOfInformation.ofTest(chance, likelihood, payoff);
      assertThat(test).as("trial %s", trial).isBetween(0.0, perfect + 1e-9);
    }
  }

  private static double[] shares(SplittableRandom random, int n) {
    double[] shares = new double[n];
    Arrays.fill(shares, 1);
    Dirichlet.sampleInPlace(random, shares);
    return shares;
  }

  @Test
  void ofTest_resultThatSaysNothingOrEverything_isWorthNothingOrThePerfect() {
    double[][] nothing = {{0.3, 0.3}, {0.7, 0.7}};
    double[][] everything = {{1, 0}, {0, 1}};
    assertThat(ValueOfInformation.ofTest(WELL, nothing, DRILL)).isCloseTo(0, within(1e-9));
    assertThat(ValueOfInformation.ofTest(WELL, everything, DRILL)).isCloseTo(120, within(1e-9));
  }

  @Test
  void perfect_chancesThatDoNotAddUp_areRefused() {
    assertThatThrownBy(() -> ValueOfInformation.perfect(new double[] {0.4, 0.4}, DRILL))
        .hasMessageContaining("sum of the chances");
    assertThatThrownBy(() -> ValueOfInformation.ofTest(WELL, new double[][] {{1, 0.5}}, DRILL))
        .hasMessageContaining("sum of the likelihoods");
  }
}
