package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.farm.HalfMonths;

class SterilityTest {

  private static final double[] SHARE_BY_SEASONS = {0.12, 0.23, 0.32, 0.40, 0.47};

  /** Arithmetic with 1 - 0.88^S, worked separately from this program. */
  @Test
  void sterileShare_oneToFiveSeasons_growsToAboutAHalf() {
    double sum = 0;
    for (int seasons = 1; seasons <= SHARE_BY_SEASONS.length; seasons++) {
      double share = ByFormula.sterileShare(seasons, 0.12);
      assertThat(share).isCloseTo(SHARE_BY_SEASONS[seasons - 1], within(0.005));
      sum += share;
    }
    assertThat(sum / SHARE_BY_SEASONS.length).isCloseTo(0.31, within(0.005));
  }

  /** The trials listed in the file; one in the last printed digit, for the rounding of S. */
  @ParameterizedTest
  @CsvFileSource(resources = "/published/sterility.csv", useHeadersInDisplayName = true)
  void sterileShare_impliedQ_explainsTheRatioSeen(
      String source,
      double exposure,
      double affectedPercent,
      double controlPercent,
      double impliedQ,
      boolean inFit) {
    double q = 1 - Math.pow(affectedPercent / controlPercent, 1 / exposure);
    assertThat(q).as(source).isCloseTo(impliedQ, within(inFit ? 0.001 : 0.005));
    assertThat(1 - ByFormula.sterileShare(exposure, q))
        .isCloseTo(affectedPercent / controlPercent, within(1e-12));
    assertThat(q >= 0.05 && q <= 0.25).as("the range brackets " + source).isEqualTo(inFit);
  }

  /** Root mean square error of q = 0.12 over the seven results of the fit: 17 points. */
  @Test
  void sterileShare_sevenTrials_missesBySeventeenPoints() {
    double[] exposure = {6.5, 5.1, 5.1, 5.0, 3.0, 5.1, 4.5};
    double[] ratio = {0.38, 0.70, 0.27, 0.70, 0.78, 0.68, 0.375};
    double squares = 0;
    for (int i = 0; i < ratio.length; i++) {
      double miss = 1 - ByFormula.sterileShare(exposure[i], 0.12) - ratio[i];
      squares += miss * miss;
    }
    assertThat(Math.sqrt(squares / ratio.length)).isCloseTo(0.17, within(0.005));
  }

  /**
   * A disagreement, kept in view: three years on Pawera red clover at about 0.20 % of the year's
   * diet (XVII International Grassland Congress 1993) should have left 12 % of the ewes barren (5
   * to 25); none were noticed.
   */
  @ParameterizedTest
  @CsvSource({"0.05, 0.05", "0.12, 0.12", "0.25, 0.25"})
  void sterileShare_paweraFarmlets1993_expectsALossThatWasNotFound(double q, double expected) {
    double exposure = 3 * ByFormula.seasonExposure(allYear(0.20), 0.41, 3, 0.5);
    assertThat(exposure).isCloseTo(0.98, within(0.01));
    assertThat(ByFormula.sterileShare(exposure, q)).isCloseTo(expected, within(0.005));
  }

  /** Five seasons of 180 days at the breeders' limit (0.2 % in leaf, leaf share 0.6) cost 2.4 %. */
  @Test
  void sterileShare_fiveSeasonsAtTheBreedersLimit_isSmall() {
    double exposure =
        5 * 180.0 / HalfMonths.DAYS * ByFormula.seasonExposure(allYear(0.12), 0.41, 3, 0.5);
    assertThat(ByFormula.sterileShare(exposure, 0.12)).isCloseTo(0.024, within(0.0005));
  }

  @Test
  void seasonExposure_referenceDose_isDaysOver180WhateverTheCurve() {
    double[] dose = new double[HalfMonths.COUNT];
    Arrays.fill(dose, 8, 20, 0.5); // May to October, 184 days
    for (double d50 = 0.3; d50 < 0.6; d50 += 0.05) {
      assertThat(ByFormula.seasonExposure(dose, d50, 3, 0.5)).isCloseTo(184 / 180.0, within(1e-12));
    }
    assertThat(ByFormula.seasonExposure(allYear(0), 0.41, 3, 0.5)).isZero();
  }

  @Test
  void seasonExposure_anyDoses_growsWithDoseAndAddsUpOverTheYear() {
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 500; i++) {
      double[] dose = random.doubles(HalfMonths.COUNT, 0, 0.9).toArray();
      double sum = 0;
      for (int p = 0; p < dose.length; p++) {
        double[] alone = new double[HalfMonths.COUNT];
        alone[p] = dose[p];
        sum += ByFormula.seasonExposure(alone, 0.41, 3, 0.5);
      }
      double exposure = ByFormula.seasonExposure(dose, 0.41, 3, 0.5);
      assertThat(exposure).isCloseTo(sum, within(1e-9));
      dose[random.nextInt(dose.length)] += 0.1;
      assertThat(ByFormula.seasonExposure(dose, 0.41, 3, 0.5)).isGreaterThan(exposure);
    }
  }

  @Test
  void sterileShare_seasonsApartOrTogether_areTheSame() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 500; i++) {
      double first = random.nextDouble(3);
      double second = random.nextDouble(3);
      double q = random.nextDouble(0.3);
      double sound =
          (1 - ByFormula.sterileShare(first, q)) * (1 - ByFormula.sterileShare(second, q));
      assertThat(1 - ByFormula.sterileShare(first + second, q)).isCloseTo(sound, within(1e-12));
    }
    assertThat(ByFormula.sterileShare(0, 0.12)).isZero();
  }

  private static double[] allYear(double dosePercent) {
    double[] dose = new double[HalfMonths.COUNT];
    Arrays.fill(dose, dosePercent);
    return dose;
  }
}
