package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CertaintyEquivalentTest {

  private static final double[] CHANCE = {0.4, 0.4, 0.2};
  private static final double[] OUTCOME = {2000, 1000, 500};

  /**
   * Clemen, Making Hard Decisions, cited from memory: with a tolerance of 900 the equivalent is
   * 1,114.8, where mean less variance over twice the tolerance gives 1,100.
   */
  @Test
  void of_textbookInvestment_matchesThePrintedAnswer() {
    assertThat(CertaintyEquivalent.of(CHANCE, OUTCOME, 900)).isCloseTo(1114.8, within(0.05));
  }

  @Test
  void of_aSumAddedToEveryOutcome_isAddedToTheEquivalent() {
    double[] more = {2100, 1100, 600};
    assertThat(CertaintyEquivalent.of(CHANCE, more, 900))
        .isCloseTo(CertaintyEquivalent.of(CHANCE, OUTCOME, 900) + 100, within(1e-9));
  }

  /**
   * Evens of 0 or 2 are worth 1 to somebody with linear utility (expertsmind.com, page on the
   * certainty equivalent).
   */
  @Test
  void ofSample_withoutDislikeOfRisk_isTheMean() {
    assertThat(CertaintyEquivalent.ofSample(new double[] {0, 2}, Double.POSITIVE_INFINITY))
        .isEqualTo(1);
  }

  @Test
  void of_tolerance_risesFromTheLeastOutcomeToTheMean() {
    double before = 500;
    for (double tolerance : new double[] {1, 10, 100, 1000, 1e4, 1e6}) {
      double now = CertaintyEquivalent.of(CHANCE, OUTCOME, tolerance);
      assertThat(now).isGreaterThan(before);
      before = now;
    }
    assertThat(before).isCloseTo(1300, within(1.0)).isLessThan(1300);
    assertThat(CertaintyEquivalent.of(CHANCE, OUTCOME, 1)).isCloseTo(500, within(5.0));
  }

  @Test
  void of_toleranceOfNothing_isRefused() {
    assertThatThrownBy(() -> CertaintyEquivalent.of(CHANCE, OUTCOME, 0))
        .hasMessage("risk tolerance must be more than zero, but was 0.0");
    assertThatThrownBy(() -> CertaintyEquivalent.of(CHANCE, OUTCOME, Double.NaN))
        .hasMessageContaining("risk tolerance");
  }
}
