package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AlikePaddocksTest {

  private static final int HALVES = 4;
  private static final int GROUPS = 3;
  private static final int TRIALS = 12;
  private static final double PRICE = 0.03;

  /** Feed of every paddock in proportion to its weight, as the farm's own problem has it. */
  private static GrazingProblem problem(SplittableRandom random, double[] strength) {
    int paddocks = strength.length;
    double[] weight = random.doubles(paddocks, 0.2, 3).toArray();
    double[] start = Arrays.stream(weight).map(each -> each * 900).toArray();
    double[][] grown = new double[HALVES][];
    double[][] least = new double[HALVES][];
    double[][] risky = new double[HALVES][paddocks];
    double[] kept = random.doubles(HALVES, 0.8, 1).toArray();
    for (int p = 0; p < HALVES; p++) {
      double growth = random.nextDouble(0, 400);
      grown[p] = Arrays.stream(weight).map(each -> each * growth).toArray();
      least[p] = Arrays.stream(weight).map(each -> each * 350).toArray();
      for (int i = 0; i < paddocks; i++) {
        risky[p][i] = strength[i] > 0.3 ? 15 : 0;
      }
    }
    double feedMj = 9 * 1300 * Arrays.stream(weight).sum() / GROUPS / HALVES;
    double[][] need = new double[GROUPS][];
    Arrays.setAll(need, g -> random.doubles(HALVES, 0.2 * feedMj, 1.2 * feedMj).toArray());
    double[] energy = random.doubles(HALVES, 8, 10).toArray();
    double[] most = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 20};
    return new GrazingProblem(
        2, weight, start, grown, least, kept, energy, need, PRICE, risky, most);
  }

  private static double[][][] cost(GrazingProblem problem, double[] strength) {
    double[][][] cost = new double[GROUPS][HALVES][];
    for (int g = 0; g < GROUPS; g++) {
      double worth = g < problem.ewes ? 4000.0 * (g + 1) : 0;
      for (int p = 0; p < HALVES; p++) {
        cost[g][p] = Arrays.stream(strength).map(each -> worth * each * each).toArray();
      }
    }
    return cost;
  }

  private static Grazing inOrder(AlikePaddocks alike) {
    return alike.ofEach(alike.problem().inOrder(alike.cost(), alike.strength(), false));
  }

  private static double cost(GrazingProblem problem, double[][][] cost, Grazing grazing) {
    double sum = problem.boughtMj(grazing) * problem.pricePerMj;
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        for (int i = 0; i < problem.paddocks; i++) {
          sum += grazing.share(g, p, i) * cost[g][p][i];
        }
      }
    }
    return sum;
  }

  @Test
  void of_farmOfFewPaddocks_leavesEachAlone() {
    SplittableRandom random = new SplittableRandom(1);
    double[] strength = new double[AlikePaddocks.MOST_ALONE];
    GrazingProblem problem = problem(random, strength);
    double[][][] cost = cost(problem, strength);
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost);
    assertThat(alike.problem()).isSameAs(problem);
    assertThat(alike.cost()).isSameAs(cost);
  }

  /**
   * Equally strong paddocks can be taken together: what is found costs as much, within the rule.
   */
  @Test
  void of_equallyStrongPaddocks_costsWhatTheyCostOneByOne() {
    SplittableRandom random = new SplittableRandom(2);
    for (int trial = 0; trial < TRIALS; trial++) {
      double[] kinds = {0, 0.12, 0.35, 0.8};
      double[] strength = new double[AlikePaddocks.MOST_ALONE + 5];
      Arrays.setAll(strength, i -> kinds[random.nextInt(kinds.length)]);
      AlikePaddocks alike = assertCostsLittleMore(random, strength);
      assertThat(alike.problem().paddocks).isEqualTo(kinds.length);
    }
  }

  /** Where strengths differ a little, what is found can be done, and costs little more. */
  @Test
  void of_anyStrengths_isAWayOfGrazingThatCostsLittleMore() {
    SplittableRandom random = new SplittableRandom(3);
    for (int trial = 0; trial < TRIALS; trial++) {
      double[] strength = random.doubles(60, 0, 0.9).toArray();
      AlikePaddocks alike = assertCostsLittleMore(random, strength);
      assertThat(alike.problem().paddocks).isLessThan(strength.length);
    }
  }

  /** The limit is twice what was measured, as a share of what even grazing costs. */
  private static AlikePaddocks assertCostsLittleMore(SplittableRandom random, double[] strength) {
    GrazingProblem problem = problem(random, strength);
    double[][][] cost = cost(problem, strength);
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost);
    Grazing each = inOrder(alike);
    assertThatFeedIsLeft(problem, each);
    double alone = cost(problem, cost, problem.inOrder(cost, strength, false));
    double evenly = cost(problem, cost, evenly(problem));
    assertThat(cost(problem, cost, each)).isLessThan(alone + 0.012 * evenly);
    return alike;
  }

  private static Grazing evenly(GrazingProblem problem) {
    boolean[][][] open = new boolean[GROUPS][HALVES][problem.paddocks];
    for (boolean[][] ofGroup : open) {
      for (boolean[] ofHalf : ofGroup) {
        Arrays.fill(ofHalf, true);
      }
    }
    return EvenGrazing.of(problem, open);
  }

  /** Paddocks that differ in where a group may go are never taken together. */
  @Test
  void of_paddocksOpenToDifferentGroups_areKeptApart() {
    SplittableRandom random = new SplittableRandom(4);
    double[] strength = new double[AlikePaddocks.MOST_ALONE + 1];
    GrazingProblem problem = problem(random, strength);
    double[][][] cost = cost(problem, strength);
    cost[1][2][7] = Double.POSITIVE_INFINITY;
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost);
    assertThat(alike.problem().paddocks).isEqualTo(2);
    assertThat(alike.cost()[1][2]).containsExactly(0, Double.POSITIVE_INFINITY);
    assertThat(inOrder(alike).share(1, 2, 7)).isZero();
  }

  /** The strongest at 0.6 makes bands of 0.025: two share the 24th, two the 23rd. */
  @Test
  void of_strengthsByBand_goTogetherUpToTheTopOfIt() {
    double[] kinds = {0.6, 0.59, 0.575, 0.56, 0.01, 0};
    double[] strength = new double[AlikePaddocks.MOST_ALONE + 2];
    Arrays.setAll(strength, i -> kinds[i % kinds.length]);
    GrazingProblem problem = problem(new SplittableRandom(5), new double[strength.length]);
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost(problem, strength));
    double[] expected = new double[4];
    int[] place = {0, 0, 1, 1, 2, 3};
    for (int i = 0; i < strength.length; i++) {
      expected[place[i % kinds.length]] += problem.weight[i];
    }
    assertThat(alike.problem().weight).containsExactly(expected, within(1e-9));
  }

  /** Paddocks that are risky in different half-months are never taken together. */
  @Test
  void of_paddocksRiskyAtDifferentTimes_areKeptApart() {
    double[] strength = new double[AlikePaddocks.MOST_ALONE + 1];
    Arrays.fill(strength, 0.5);
    GrazingProblem problem = problem(new SplittableRandom(6), strength);
    problem.riskyDays[3][5] = 0;
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost(problem, strength));
    assertThat(alike.problem().riskyDays[3]).containsExactly(15, 0);
  }

  /** A paddock that gives no feed takes no part in the mean, even where nobody may go. */
  @Test
  void of_paddockWithoutFeed_countsForNothing() {
    double[] strength = new double[AlikePaddocks.MOST_ALONE + 1];
    GrazingProblem problem = problem(new SplittableRandom(7), strength);
    problem.weight[3] = 0;
    double[][][] cost = cost(problem, strength);
    Arrays.fill(cost[0][1], Double.POSITIVE_INFINITY);
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost);
    assertThat(alike.cost()[0][1]).containsExactly(Double.POSITIVE_INFINITY);
    double[][][] share = {{{1}, {1}, {1}, {1}}, {{1}, {1}, {1}, {1}}, {{1}, {1}, {1}, {1}}};
    assertThat(alike.ofEach(new Grazing(share)).share(0, 0, 3)).isZero();
  }

  private static void assertThatFeedIsLeft(GrazingProblem problem, Grazing grazing) {
    double[] left = problem.startKg.clone();
    for (int p = 0; p < problem.halfMonths; p++) {
      for (int i = 0; i < left.length; i++) {
        left[i] += problem.grownKg[p][i];
        for (int g = 0; g < problem.groups; g++) {
          left[i] -= grazing.share(g, p, i) * problem.takenKg(g, p);
        }
        left[i] *= problem.kept[p];
        assertThat(left[i]).isGreaterThan(problem.leastKg[p][i] - 1e-3);
      }
    }
  }
}
