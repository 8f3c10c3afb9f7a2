package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ScenarioLossesTest {

  /**
   * Hindmarsh 1947: 140 of 900 ewes died in an outbreak flock, 15.6 %; the table's high is 0.15.
   */
  @Test
  void extraShare_asManyBarrenAsInTheOutbreak_isTheOutbreakLoss() {
    assertThat(BirthLosses.extraShare(0.7, 0.15)).isCloseTo(0.15, within(1e-12));
    assertThat(140 / 900.0).isCloseTo(0.156, within(0.0005));
  }

  @Test
  void extraShare_fewBarren_isInProportionAndNeverAboveAll() {
    assertThat(BirthLosses.extraShare(0.35, 0.05)).isCloseTo(0.025, within(1e-12));
    assertThat(BirthLosses.extraShare(0, 0.30)).isZero();
    assertThat(BirthLosses.extraShare(1, 0.9)).isEqualTo(1);
  }

  /** Arithmetic: 0.10 x (1 - 0.719) / (1 - 0.293) = 0.0398. */
  @Test
  void shareLost_mildDose_isScaledByTheCurve() {
    assertThat(LitterSize.shareLost(0.30, 0.41, 3, 0.10)).isCloseTo(0.0398, within(0.0001));
    assertThat(LitterSize.shareLost(0.55, 0.41, 3, 0.20)).isCloseTo(0.20, within(1e-12));
    assertThat(LitterSize.shareLost(0, 0.41, 3, 0.20)).isZero();
    assertThat(LitterSize.shareLost(2, 0.41, 3, 0)).isZero();
  }
}
