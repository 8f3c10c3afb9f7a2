package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A problem of three paddocks, two half-months, a mob and wethers, reckoned by hand. */
class GrazingProblemTest {

  private static final double PRICE = 0.03;

  private static GrazingProblem problem(int ewes, double[][] grown, double[][] least) {
    return new GrazingProblem(
        ewes,
        new double[] {1, 2, 4},
        new double[] {100, 200, 300},
        grown,
        least,
        new double[] {0.9, 0.8},
        new double[] {10, 0},
        new double[][] {{600, 50}, {400, 0}},
        PRICE,
        new double[][] {{15, 0, 15}, {16, 0, 16}},
        new double[] {Double.POSITIVE_INFINITY, 20});
  }

  private static GrazingProblem problem() {
    return problem(
        1, new double[][] {{50, 60, 70}, {5, 6, 7}}, new double[][] {{10, 20, 30}, {1, 2, 3}});
  }

  @Test
  void takenKg_isNeedByEnergy_andNothingWhereFeedHasNone() {
    assertThat(problem().takenKg(0, 0)).isEqualTo(60);
    assertThat(problem().takenKg(1, 0)).isEqualTo(40);
    assertThat(problem().takenKg(0, 1)).isZero();
  }

  @Test
  void boughtMj_isWhatTheSharesLeaveOfEachNeed() {
    double[][][] share = {{{0.5, 0, 0.1}, {0, 0, 0.2}}, {{0.25, 0.25, 0.25}, {0, 0, 0}}};
    Grazing grazing = new Grazing(share);
    // 0.4 x 600 + 0.25 x 400 in the first half-month, 0.8 x 50 in the second.
    assertThat(problem().boughtMj(grazing, 0)).isCloseTo(340, within(1e-9));
    assertThat(problem().boughtMj(grazing, 1)).isCloseTo(40, within(1e-9));
    assertThat(problem().boughtMj(grazing)).isCloseTo(380, within(1e-9));
  }

  @Test
  void joined_firstWithThird_addsTheirFeedAndKeepsTheRest() {
    GrazingProblem joined = problem().joined(new int[] {1, 0, 1}, 2);
    assertThat(joined.paddocks).isEqualTo(2);
    assertThat(joined.ewes).isEqualTo(1);
    assertThat(joined.weight).containsExactly(2, 5);
    assertThat(joined.startKg).containsExactly(200, 400);
    assertThat(joined.grownKg).isDeepEqualTo(new double[][] {{60, 120}, {6, 12}});
    assertThat(joined.leastKg).isDeepEqualTo(new double[][] {{20, 40}, {2, 4}});
    assertThat(joined.riskyDays).isDeepEqualTo(new double[][] {{0, 15}, {0, 16}});
    assertThat(joined.takenKg(1, 0)).isEqualTo(40);
    assertThat(joined.mostRiskyDays[0]).isInfinite();
    assertThat(joined.mostRiskyDays[1]).isFinite();
    assertThat(joined.mostRiskyDays[1]).isEqualTo(20);
    assertThat(joined.pricePerMj).isEqualTo(PRICE);
  }

  @Test
  void problem_ofPartsThatDoNotFit_isRefused() {
    double[][] two = {{1, 1, 1}, {1, 1, 1}};
    double[][] one = {{1, 1, 1}};
    assertThat(problem(2, two, two).ewes).isEqualTo(2);
    assertThatThrownBy(() -> problem(3, two, two)).hasMessageContaining("ewes and others");
    assertThatThrownBy(() -> problem(1, one, two)).hasMessageContaining("half-months");
    assertThatThrownBy(() -> problem(1, two, one)).hasMessageContaining("half-months");
    assertThatThrownBy(() -> limited(new double[] {20})).hasMessageContaining("others");
  }

  private static GrazingProblem limited(double[] mostRiskyDays) {
    double[] one = {1};
    double[][] ones = {{1}};
    double[][] needs = {{1}, {1}};
    return new GrazingProblem(1, one, one, ones, ones, one, one, needs, PRICE, ones, mostRiskyDays);
  }
}
