package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Feed of 10 MJ/kg; each group needs 100 MJ, so 10 kg, in each half-month. All cases by hand. */
class EvenGrazingTest {

  private static final boolean[][] EVERYWHERE = {{true, true}};

  /** One ewe mob and so many other groups on two paddocks. */
  private static GrazingProblem problem(
      int groups, double[] weight, double[] startKg, double kept, double leastKg, int halves) {
    return problem(1, groups, weight, startKg, kept, leastKg, halves);
  }

  private static GrazingProblem problem(
      int ewes,
      int groups,
      double[] weight,
      double[] startKg,
      double kept,
      double leastKg,
      int halves) {
    double[][] least = new double[halves][2];
    double[] keeps = new double[halves];
    double[] energy = new double[halves];
    double[][] need = new double[groups][halves];
    for (int p = 0; p < halves; p++) {
      least[p] = new double[] {leastKg, leastKg};
      keeps[p] = kept;
      energy[p] = 10;
      for (int g = 0; g < groups; g++) {
        need[g][p] = 100;
      }
    }
    double[] mostRiskyDays = new double[groups];
    Arrays.fill(mostRiskyDays, Double.POSITIVE_INFINITY);
    return new GrazingProblem(
        ewes,
        weight,
        startKg,
        new double[halves][2],
        least,
        keeps,
        energy,
        need,
        0.03,
        new double[halves][2],
        mostRiskyDays);
  }

  private static Grazing graze(GrazingProblem problem, boolean[]... openByGroup) {
    boolean[][][] open = new boolean[problem.groups][problem.halfMonths][];
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        open[g][p] = openByGroup[g];
      }
    }
    return EvenGrazing.of(problem, open);
  }

  private static void assertShares(Grazing grazing, int group, int half, double... expected) {
    for (int i = 0; i < expected.length; i++) {
      assertThat(grazing.share(group, half, i)).isCloseTo(expected[i], within(1e-6));
    }
  }

  @Test
  void mob_withFeedEverywhere_spreadsByTheFeedPaddocksGive() {
    GrazingProblem problem = problem(1, new double[] {3, 1}, new double[] {100, 100}, 1, 0, 1);
    Grazing grazing = graze(problem, EVERYWHERE[0]);
    assertShares(grazing, 0, 0, 0.75, 0.25);
    assertThat(problem.boughtMj(grazing)).isCloseTo(0, within(1e-6));
  }

  @Test
  void mob_whenAPaddockIsEatenDown_goesOnToTheOther() {
    GrazingProblem problem = problem(1, new double[] {3, 1}, new double[] {3, 100}, 1, 0, 1);
    assertShares(graze(problem, EVERYWHERE[0]), 0, 0, 0.3, 0.7);
  }

  @Test
  void mob_shutOut_goesHungryThoughThereIsFeed() {
    GrazingProblem problem = problem(1, new double[] {3, 1}, new double[] {100, 4}, 1, 0, 1);
    Grazing grazing = graze(problem, new boolean[] {false, true});
    assertShares(grazing, 0, 0, 0, 0.4);
    assertThat(problem.boughtMj(grazing)).isCloseTo(60, within(1e-4));
  }

  @Test
  void otherStock_takeWhatNoEwesUseFirst() {
    GrazingProblem enough = problem(2, new double[] {3, 1}, new double[] {100, 100}, 1, 0, 1);
    Grazing apart = graze(enough, new boolean[] {true, false}, EVERYWHERE[0]);
    assertShares(apart, 0, 0, 1, 0);
    assertShares(apart, 1, 0, 0, 1);
    GrazingProblem few = problem(2, new double[] {3, 1}, new double[] {100, 4}, 1, 0, 1);
    assertShares(graze(few, new boolean[] {true, false}, EVERYWHERE[0]), 1, 0, 0.6, 0.4);
  }

  @Test
  void mobs_thatAskForMoreThanThereIs_shareItAlike() {
    GrazingProblem problem = problem(2, 2, new double[] {1, 1}, new double[] {6, 6}, 1, 0, 1);
    Grazing grazing = graze(problem, EVERYWHERE[0], EVERYWHERE[0]);
    assertShares(grazing, 0, 0, 0.3, 0.3);
    assertShares(grazing, 1, 0, 0.3, 0.3);
  }

  @Test
  void otherStock_wherePaddocksAreShared_haveWhatTheEwesLeave() {
    GrazingProblem problem = problem(2, new double[] {1, 1}, new double[] {6, 6}, 1, 0, 1);
    Grazing grazing = graze(problem, EVERYWHERE[0], EVERYWHERE[0]);
    assertShares(grazing, 0, 0, 0.5, 0.5);
    assertShares(grazing, 1, 0, 0.1, 0.1);
  }

  /** 29 kg less 10 eaten, half of it kept, are 9.5 for the second half-month. */
  @Test
  void feed_leftAndKept_isThereForTheNextHalfMonth() {
    GrazingProblem problem = problem(1, new double[] {1, 1}, new double[] {29, 0}, 0.5, 0, 2);
    Grazing grazing = graze(problem, EVERYWHERE[0]);
    assertShares(grazing, 0, 0, 1, 0);
    assertShares(grazing, 0, 1, 0.95, 0);
  }

  /** Five kilograms after decay must stay: 10 before it, so of 15 there are 5 to eat. */
  @Test
  void feed_thatMustBeLeft_isNotEaten() {
    GrazingProblem problem = problem(1, new double[] {1, 1}, new double[] {15, 8}, 0.5, 5, 1);
    assertShares(graze(problem, EVERYWHERE[0]), 0, 0, 0.5, 0);
  }
}
