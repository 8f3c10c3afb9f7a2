package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PayoffsTest {

  private static final int DRAWS = 40_000;

  // Two doubts, each yes or no: A is yes in 0.3 of cases and brings 100, B in 0.6 and brings 50;
  // acting costs 55. States in the order neither, A, B, both.
  private static final double[] CHANCE = {0.7 * 0.4, 0.3 * 0.4, 0.7 * 0.6, 0.3 * 0.6};
  private static final double[][] PAYOFF = {{0, 0, 0, 0}, {-55, 45, -5, 95}};

  private final double[][] drawn = new double[2][DRAWS];
  private final double[] a = new double[DRAWS];
  private final double[] test = new double[DRAWS];

  PayoffsTest() {
    SplittableRandom random = new SplittableRandom(21);
    for (int d = 0; d < DRAWS; d++) {
      boolean hasA = random.nextDouble() < 0.3;
      boolean hasB = random.nextDouble() < 0.6;
      a[d] = hasA ? 1 : 0;
      test[d] = random.nextDouble() < (hasA ? 0.8 : 0.1) ? 1 : 0;
      drawn[1][d] = (hasA ? 100 : 0) + (hasB ? 50 : 0) - 55;
    }
  }

  /** Independent: every state listed. Tolerance: four standard errors of the draws. */
  @Test
  void perfect_smallDecision_agreesWithEnumeration() {
    double exact = ValueOfInformation.perfect(CHANCE, PAYOFF);
    DrawnInformation simulated = new Payoffs(drawn).perfect();
    assertThat(exact).isCloseTo(22.5 - 5, within(1e-9));
    assertThat(simulated.value()).isCloseTo(exact, within(4 * simulated.standardError()));
  }

  @Test
  void partial_smallDecision_agreesWithEnumeration() {
    // A known is a test whose result is A itself.
    double exact =
        ValueOfInformation.ofTest(CHANCE, new double[][] {{1, 0, 1, 0}, {0, 1, 0, 1}}, PAYOFF);
    DrawnInformation simulated = new Payoffs(drawn).learnt(a).worth();
    assertThat(exact).isCloseTo(0.3 * 75 - 5, within(1e-9));
    assertThat(simulated.value()).isCloseTo(exact, within(4 * simulated.standardError()));
  }

  @Test
  void partial_ofATestWithErrors_agreesWithEnumeration() {
    double[][] likelihood = {{0.9, 0.2, 0.9, 0.2}, {0.1, 0.8, 0.1, 0.8}};
    double exact = ValueOfInformation.ofTest(CHANCE, likelihood, PAYOFF);
    DrawnInformation simulated = new Payoffs(drawn).learnt(test).worth();
    assertThat(exact).isBetween(5.0, 17.5);
    assertThat(simulated.value()).isCloseTo(exact, within(4 * simulated.standardError()));
  }

  @Test
  void partial_ofAnythingUnrelated_isWorthNothingWithinItsError() {
    SplittableRandom random = new SplittableRandom(2);
    double[] unrelated = random.doubles(DRAWS).toArray();
    DrawnInformation simulated = new Payoffs(drawn).learnt(unrelated).worth();
    assertThat(simulated.value()).isLessThanOrEqualTo(4 * simulated.standardError());
  }

  /** Both identities hold draw by draw, so they hold exactly. */
  @Test
  void values_ofAnyDecision_keepTheirLaws() {
    SplittableRandom random = new SplittableRandom(77);
    for (int trial = 0; trial < 50; trial++) {
      int draws = random.nextInt(1, 900);
      double[][] payoff = new double[random.nextInt(1, 6)][draws];
      double[] known = random.doubles(draws).map(u -> Math.rint(20 * u)).toArray();
      for (double[] choice : payoff) {
        double slope = random.nextDouble(-3, 3);
        for (int d = 0; d < draws; d++) {
          choice[d] = slope * known[d] + 10 * random.nextGaussian();
        }
      }
      double perfect = new Payoffs(payoff).perfect().value();
      double least = Double.POSITIVE_INFINITY;
      for (double regret : new Payoffs(payoff).expectedRegret()) {
        least = Math.min(least, regret);
      }
      assertThat(perfect).as("least regret, trial %s", trial).isCloseTo(least, within(1e-9));
      double partial = new Payoffs(payoff).learnt(known).worth().value();
      assertThat(partial).as("trial %s", trial).isBetween(0.0, perfect + 1e-9);
    }
  }

  /** By another way: the draws sorted, those of equal values in their order, and cut by rank. */
  @Test
  void partial_ofAnyDecision_isThatOfDrawsSortedAndCut() {
    SplittableRandom random = new SplittableRandom(78);
    for (int trial = 0; trial < 60; trial++) {
      int draws = random.nextInt(1, 1200);
      double kinds = random.nextBoolean() ? 12 : 1e6;
      double[][] payoff = new double[3][draws];
      double[] known = random.doubles(draws).map(u -> Math.rint(kinds * u) / kinds).toArray();
      for (int d = 0; d < draws; d++) {
        payoff[1][d] = 20 * known[d] - 10 + random.nextGaussian();
        payoff[2][d] = 40 * known[d] * known[d] - 16 + random.nextGaussian();
      }
      assertThat(new Payoffs(payoff).learnt(known).worth().value())
          .as("trial %s", trial)
          .isCloseTo(bySorting(payoff, known), within(1e-9));
    }
  }

  private static double bySorting(double[][] payoff, double[] known) {
    int draws = known.length;
    int cells = Math.max(1, Math.min(16, draws / 50));
    List<Integer> order =
        IntStream.range(0, draws)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer d) -> known[d]))
            .toList();
    double gain = 0;
    for (int c = 0; c < cells; c++) {
      List<Integer> inCell = order.subList(c * draws / cells, (c + 1) * draws / cells);
      List<Integer> even = inCell.stream().filter(d -> d % 2 == 0).toList();
      List<Integer> odd = inCell.stream().filter(d -> d % 2 == 1).toList();
      gain += sum(payoff[bestOf(payoff, even)], odd) + sum(payoff[bestOf(payoff, odd)], even);
    }
    List<Integer> all = IntStream.range(0, draws).boxed().toList();
    return Math.max(0, (gain - sum(payoff[bestOf(payoff, all)], all)) / draws);
  }

  private static int bestOf(double[][] payoff, List<Integer> draws) {
    int best = 0;
    for (int a = 1; a < payoff.length; a++) {
      best = sum(payoff[a], draws) > sum(payoff[best], draws) ? a : best;
    }
    return best;
  }

  private static double sum(double[] of, List<Integer> draws) {
    return draws.stream().mapToDouble(d -> of[d]).sum();
  }

  @Test
  void payoffs_ofOtherNumbersOfDraws_areRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Payoffs(new double[][] {{1, 2}, {1, 2, 3}}));
    Payoffs payoffs = new Payoffs(new double[][] {{1, 2}});
    assertThatIllegalArgumentException().isThrownBy(() -> payoffs.learnt(new double[3]).worth());
  }

  @Test
  void partial_oneChoiceOnly_isWorthNothing() {
    DrawnInformation value = new Payoffs(new double[][] {drawn[1]}).learnt(a).worth();
    assertThat(value).isEqualTo(new DrawnInformation(0, 0));
  }

  /** Expected regrets of the lease exercise: 77.5, 83.75, 88.75 (our arithmetic, its inputs). */
  @Test
  void expectedRegret_leaseExercise_matchesTheArithmetic() {
    double[][] payoff = new double[3][20];
    double[][] lease = {{650, 200, -25, -75}, {45, 45, 45, 45}, {250, 100, 0, 0}};
    int[] times = {2, 3, 5, 10};
    int d = 0;
    for (int s = 0; s < 4; s++) {
      for (int k = 0; k < times[s]; k++, d++) {
        for (int choice = 0; choice < 3; choice++) {
          payoff[choice][d] = lease[choice][s];
        }
      }
    }
    assertThat(new Payoffs(payoff).expectedRegret())
        .containsExactly(new double[] {77.5, 83.75, 88.75}, within(1e-9));
  }
}
