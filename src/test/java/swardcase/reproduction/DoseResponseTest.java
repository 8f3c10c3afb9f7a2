package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.evaluation.PublishedCheck;
import swardcase.evaluation.ReproductionChecks;

class DoseResponseTest {

  private static final double TWO_CYCLES_WEEKS = 34 / 7.0;

  /** Conception at first service of the unaffected groups of the trial: 57 of 63 ewes. */
  private static final double TRIAL_CONTROL = 57 / 63.0;

  @Test
  void curve_checkValues_areMet() {
    assertThat(ReproductionChecks.workedCurve())
        .hasSizeGreaterThan(40)
        .allMatch(PublishedCheck::agrees);
  }

  /** McDonald, Anwar and Keogh 1994: 6 of 22, 14 of 21 and 18 of 24 ewes held. */
  @ParameterizedTest
  @CsvSource({"0.55, 27.3, -0.8", "0.26, 66.7, 5.4", "0.26, 75.0, -2.9"})
  void curve_redClover1994_missesTheTrialByTheStatedPoints(
      double dose, double observedPercent, double missPoints) {
    double predicted = 100 * TRIAL_CONTROL * DoseResponse.conceptionMultiplier(dose, 0.41, 3);
    assertThat(predicted - observedPercent).isCloseTo(missPoints, within(0.1));
  }

  /**
   * Obst and Seamark 1975 (Aust. J. Biol. Sci. 28:279-290), not used in the fit: 27 % of ewes
   * conceived on Yarloop, 95 % beside it. Over one cycle that takes 0.56 % in the diet, over three
   * 0.72 %: doses a nearly pure Yarloop pasture can reach.
   */
  @ParameterizedTest
  @CsvSource({"0.56, 1", "0.72, 3"})
  void curve_yarloop1975_needsAPlausibleDose(double dose, int cycles) {
    double weeks = cycles * JoiningWalk.CYCLE_DAYS / 7;
    double t = DoseResponse.conceptionMultiplier(dose, 0.41, 3);
    assertThat(pregnant(0.95, weeks, t)).isCloseTo(0.27, within(0.005));
  }

  /** A fifth of the diet at 1.5 % in the leaf, leaf share 0.6: the trade's start of risk. */
  @Test
  void curve_fifthOfTheDietHighInFormononetin_costsAboutFourPoints() {
    double t = DoseResponse.conceptionMultiplier(0.2 * 1.5 * 0.6, 0.41, 3);
    assertThat(89 - 100 * pregnant(0.89, TWO_CYCLES_WEEKS, t)).isCloseTo(3.7, within(0.05));
  }

  /**
   * A disagreement, kept in view: on farmlets with Pawera red clover (XVII International Grassland
   * Congress 1993) about 0.30 % in the diet at mating cost no ewes that could be counted in 20 ewes
   * and three years, where the curve expects 14 points fewer after two cycles, 7 after three, and 6
   * (after two) even at its mild end. The curve may be too harsh from 0.2 to 0.4 %.
   */
  @ParameterizedTest
  @CsvSource({"0.41, 2, 14", "0.41, 3, 7", "0.55, 2, 6"})
  void curve_paweraFarmlets1993_expectsALossThatWasNotFound(double d50, int cycles, double points) {
    double weeks = cycles * JoiningWalk.CYCLE_DAYS / 7;
    double unaffected = 1 - Math.pow(1 - 0.80, cycles);
    double t = DoseResponse.conceptionMultiplier(0.30, d50, 3);
    assertThat(100 * (unaffected - pregnant(unaffected, weeks, t))).isCloseTo(points, within(0.5));
  }

  @Test
  void curve_anyDose_isAShareFallingWithDose() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < 1000; i++) {
      double d50 = random.nextDouble(0.2, 0.7);
      double n = random.nextDouble(1, 5);
      double low = random.nextDouble(0, 3);
      double high = random.nextDouble(low, 4);
      double atLow = DoseResponse.conceptionMultiplier(low, d50, n);
      double atHigh = DoseResponse.conceptionMultiplier(high, d50, n);
      assertThat(atLow).isBetween(0.0, 1.0);
      assertThat(atHigh).isBetween(0.0, atLow);
      assertThat(DoseResponse.conceptionMultiplier(d50, d50, n)).isEqualTo(0.5);
      assertThat(DoseResponse.conceptionMultiplier(0, d50, n)).isEqualTo(1);
    }
  }

  private static double pregnant(double unaffected, double weeks, double multiplier) {
    double[] multipliers = new double[JoiningWalk.cycles(weeks)];
    Arrays.fill(multipliers, multiplier);
    return Pregnancy.pregnantShare(
        Pregnancy.perCycleConception(unaffected, weeks), weeks, multipliers, 0);
  }
}
