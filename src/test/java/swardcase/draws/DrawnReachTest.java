package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import swardcase.chance.Pert;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;

/** One draw in twenty passes each end of a range, as the word range promises. */
class DrawnReachTest {

  private static Range reach(double low, double likely, double high, String unit) {
    return DrawnReach.of(Assumption.ofFarm("any", Range.of(low, likely, high), unit));
  }

  /** A symmetrical PERT is Beta(3, 3): its 5 % point by a library stands for the factor 1.61. */
  @Test
  void of_symmetricalRange_isPassedOneTimeInTwentyOnEachSide() {
    Range reach = reach(10, 20, 30, "kg");
    double fifth = new BetaDistribution(3, 3).inverseCumulativeProbability(0.05);
    assertThat(0.5 / (0.5 - fifth)).isCloseTo(1.61, within(0.005));
    Pert drawn = Pert.of(reach);
    assertThat(drawn.quantile(0.05)).isCloseTo(10, within(0.01));
    assertThat(drawn.quantile(0.95)).isCloseTo(30, within(0.01));
  }

  /** The factor belongs to symmetrical ranges; a lopsided one is passed 3 to 8 times in 100. */
  @Test
  void of_lopsidedRange_isPassedAboutAsOften() {
    for (double likely = 12; likely <= 28; likely += 2) {
      Range reach = reach(10, likely, 30, "kg");
      int below = 0;
      int above = 0;
      for (int k = 0; k < 1000; k++) {
        double value = Pert.of(reach).quantile((k + 0.5) / 1000);
        below += value < 10 ? 1 : 0;
        above += value > 30 ? 1 : 0;
      }
      assertThat(below).as("below, likely " + likely).isBetween(5, 80);
      assertThat(above).as("above, likely " + likely).isBetween(5, 80);
    }
  }

  @Test
  void of_whatCannotBeNegativeOrAShare_staysSo() {
    assertThat(reach(1, 10, 40, "A$").low()).isZero();
    assertThat(reach(0.5, 0.9, 1, "fraction").high()).isEqualTo(1);
    assertThat(reach(70, 89, 97, "%").high()).isEqualTo(100);
    assertThat(reach(0.5, 0.9, 1.1, "-").high()).isGreaterThan(1.1);
    assertThat(reach(-2, 1, 3, "A$").low()).isLessThan(-2);
  }

  @Test
  void of_exactNumber_staysExact() {
    assertThat(reach(5, 5, 5, "-").isExact()).isTrue();
  }
}
