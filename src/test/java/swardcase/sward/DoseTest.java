package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import swardcase.chance.Range;

class DoseTest {

  /** Hand arithmetic: 0.5 × 0.6 × 1.0 = 0.30; × 1.6 = 0.48. */
  @Test
  void percentOfIntake_halfClover_matchesHandArithmetic() {
    assertThat(Dose.percentOfIntake(1, 1, 0.5, 0.6, 1.0)).isCloseTo(0.30, within(1e-12));
    assertThat(Dose.percentOfIntake(1.6, 1, 0.5, 0.6, 1.0)).isCloseTo(0.48, within(1e-12));
  }

  /**
   * The breeders' limit of 0.20 % in the leaf (Enkhbat et al. 2023) gives 0.12 % of a diet of
   * nothing but clover.
   */
  @Test
  void percentOfIntake_breedersLimitOnPureClover_isTwelveHundredths() {
    assertThat(Dose.percentOfIntake(1, 1, 1, 0.6, 0.20)).isCloseTo(0.12, within(1e-12));
  }

  /**
   * Enkhbat et al. 2023: 0.19 becomes 0.31 % and 0.61 becomes 0.97 %, each to half a digit of both.
   * The range reaches 1, as of ground that is not wet at the time.
   */
  @Test
  void waterloggedFactor_ofTheTable_turnsDrainedMeansIntoWetOnes() {
    Range factor = StandTables.parameters().get("dose.waterlogged-factor").range();
    assertThat(0.19 * factor.likely()).isCloseTo(0.31, within(0.005 + 0.005 * factor.likely()));
    assertThat(0.61 * factor.likely()).isCloseTo(0.97, within(0.005 + 0.005 * factor.likely()));
    assertThat(factor.low()).isEqualTo(1);
  }

  @Test
  void percentOfIntake_noClover_isZeroAndDoublesWithEachPart() {
    assertThat(Dose.percentOfIntake(1.6, 1, 0, 0.6, 1.8)).isZero();
    double one = Dose.percentOfIntake(1.1, 0.4, 0.3, 0.3, 0.5);
    assertThat(Dose.percentOfIntake(2.2, 0.4, 0.3, 0.3, 0.5)).isCloseTo(2 * one, within(1e-12));
    assertThat(Dose.percentOfIntake(1.1, 0.8, 0.3, 0.3, 0.5)).isCloseTo(2 * one, within(1e-12));
    assertThat(Dose.percentOfIntake(1.1, 0.4, 0.6, 0.3, 0.5)).isCloseTo(2 * one, within(1e-12));
    assertThat(Dose.percentOfIntake(1.1, 0.4, 0.3, 0.6, 0.5)).isCloseTo(2 * one, within(1e-12));
    assertThat(Dose.percentOfIntake(1.1, 0.4, 0.3, 0.3, 1.0)).isCloseTo(2 * one, within(1e-12));
  }
}
