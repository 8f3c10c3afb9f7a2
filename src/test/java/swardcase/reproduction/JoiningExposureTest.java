package swardcase.reproduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.farm.HalfMonths;

class JoiningExposureTest {

  private static final double ONE_DAY_WEEKS = 1 / 7.0;

  /** Last day of June: the last day of half-month 11. */
  private static final int LAST_OF_JUNE = 180;

  /**
   * Effect left after leaving for good, arithmetic with 2^(-max(0, t - lag) / h) worked separately
   * from this program (lag and half-life inferred from McDonald, Anwar and Keogh 1994).
   */
  @ParameterizedTest
  @CsvSource({
    "28, 10, 4, 0.04", "28, 17, 7, 0.34", "28, 17, 12, 0.53",
    "35, 10, 4, 0.01", "35, 17, 7, 0.17", "35, 17, 12, 0.35",
    "42, 10, 4, 0.00", "42, 17, 7, 0.08", "42, 17, 12, 0.24"
  })
  void effect_daysAfterLeaving_isWhatRecoveryLeaves(
      int days, double lag, double halfLife, double left) {
    double[] dose = until(11, 0.5);
    double full = 1 - DoseResponse.conceptionMultiplier(0.5, 0.41, 3);
    double effect = 1 - oneDay(dose, LAST_OF_JUNE + days, lag, halfLife);
    assertThat(effect / full).isCloseTo(left, within(0.005));
  }

  /** Recovery with part days of lag: exactly the stated power of two. */
  @Test
  void effect_lagOfPartDays_followsTheEquation() {
    double[] dose = until(11, 0.5);
    double full = 1 - DoseResponse.conceptionMultiplier(0.5, 0.41, 3);
    for (double lag = 8; lag < 20; lag += 0.3) {
      for (int t = 1; t < 60; t++) {
        double expected = full * Math.pow(2, -Math.max(0, t - lag) / 6);
        assertThat(1 - oneDay(dose, LAST_OF_JUNE + t, lag, 6))
            .as("lag %s, day %s", lag, t)
            .isCloseTo(expected, within(1e-12));
      }
    }
  }

  /**
   * McDonald, Anwar and Keogh 1994: after six weeks on grass 4.8 % of the ewes returned, against
   * 9.5 % of controls. At 0.26 % the walk leaves 1.5 points more returns, which such a trial cannot
   * see.
   */
  @Test
  void effect_sixWeeksAfterG27RedClover_isOneAndAHalfPoints() {
    double m = oneDay(until(11, 0.26), LAST_OF_JUNE + 42, 17, 7);
    assertThat(100 * 57 / 63.0 * (1 - m)).isCloseTo(1.5, within(0.05));
  }

  /**
   * Same trial: most ewes that returned after Pawera red clover (0.55 %) held at the next cycle.
   * The first cycle after leaving stays fully affected (days 1 to 17), the second lets 0.62 hold at
   * its middle day.
   */
  @Test
  void multipliers_joinedStraightAfterLeaving_firstCycleIsLostAndSecondRecovers() {
    double[] dose = until(11, 0.55);
    double[] m = multipliers(dose, LAST_OF_JUNE + 1, 34 / 7.0, 17, 7);
    assertThat(m[0]).isCloseTo(DoseResponse.conceptionMultiplier(0.55, 0.41, 3), within(1e-12));
    assertThat(57 / 63.0 * oneDay(dose, LAST_OF_JUNE + 25, 17, 7)).isCloseTo(0.62, within(0.02));
  }

  @Test
  void multipliers_newClover_buildsUpOverTheRamp() {
    double[] dose = new double[HalfMonths.COUNT];
    Arrays.fill(dose, 12, 24, 0.5);
    double full = 1 - DoseResponse.conceptionMultiplier(0.5, 0.41, 3);
    for (int day = 1; day <= 14; day++) {
      assertThat(1 - oneDay(dose, LAST_OF_JUNE + day, 17, 7))
          .isCloseTo(full * day / 14, within(1e-12));
    }
    assertThat(1 - oneDay(dose, LAST_OF_JUNE + 40, 17, 7)).isCloseTo(full, within(1e-12));
  }

  @Test
  void multipliers_steadyDose_equalTheCurve() {
    double[] dose = new double[HalfMonths.COUNT];
    Arrays.fill(dose, 0.3);
    for (double weeks : new double[] {6, 16 / 7.0, 17 / 7.0, 33 / 7.0}) {
      for (double m : multipliers(dose, 40, weeks, 17, 7)) {
        assertThat(m).isCloseTo(DoseResponse.conceptionMultiplier(0.3, 0.41, 3), within(1e-12));
      }
    }
  }

  /** A joining of one day starts its walk later, which alters less than 0.001 after 120 days. */
  @Test
  void multipliers_ofACycle_areTheMeanOverItsDaysOfJoining() {
    double[] dose = until(11, 0.5);
    int start = LAST_OF_JUNE - 5;
    double[] m = multipliers(dose, start, 40 / 7.0, 10, 7);
    assertThat(m).hasSize(3);
    for (int j = 0; j < m.length; j++) {
      int end = Math.min(40, 17 * (j + 1));
      double sum = 0;
      for (int day = 17 * j; day < end; day++) {
        sum += oneDay(dose, start + day, 10, 7);
      }
      assertThat(m[j]).isCloseTo(sum / (end - 17 * j), within(0.001));
    }
  }

  @Test
  void multipliers_noDose_areOne() {
    assertThat(multipliers(new double[HalfMonths.COUNT], 300, 9, 17, 7)).containsOnly(1);
  }

  @Test
  void multipliers_higherDoseOnAnyDay_neverRiseAndStayShares() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 3000; i++) {
      double[] low = new double[HalfMonths.COUNT];
      double[] high = new double[HalfMonths.COUNT];
      for (int p = 0; p < low.length; p++) {
        low[p] = random.nextBoolean() ? 0 : random.nextDouble(0.8);
        high[p] = random.nextBoolean() ? low[p] : low[p] + random.nextDouble(0.5);
      }
      int start = random.nextInt(HalfMonths.DAYS);
      double weeks = random.nextDouble(1, 10);
      double lag = random.nextDouble(0, 30);
      double halfLife = random.nextDouble(1, 15);
      double[] atLow = multipliers(low, start, weeks, lag, halfLife);
      double[] atHigh = multipliers(high, start, weeks, lag, halfLife);
      for (int j = 0; j < atLow.length; j++) {
        assertThat(atHigh[j]).as("case %s cycle %s", i, j).isBetween(0.0, atLow[j] + 1e-12);
        assertThat(atLow[j]).isBetween(0.0, 1.0);
      }
    }
  }

  @Test
  void multipliers_slowerRecovery_neverRise() {
    SplittableRandom random = new SplittableRandom(18);
    for (int i = 0; i < 1000; i++) {
      double[] dose = random.doubles(HalfMonths.COUNT, 0, 0.8).toArray();
      int start = random.nextInt(HalfMonths.DAYS);
      double lag = random.nextDouble(0, 20);
      double halfLife = random.nextDouble(1, 15);
      double[] quick = multipliers(dose, start, 6, lag, halfLife);
      double[] slow = multipliers(dose, start, 6, lag + random.nextDouble(10), halfLife * 1.3);
      for (int j = 0; j < quick.length; j++) {
        assertThat(slow[j]).isLessThanOrEqualTo(quick[j] + 1e-12);
      }
    }
  }

  /**
   * The other hemisphere: the year turned by half. Months differ in length, so that a dose starts
   * or stops up to three days nearer to joining. One day moves the effect by 1 - 2^(-1/7) = 0.094
   * of itself at most, hence 0.28 at the very worst; over many random years of ever-changing dose
   * the multipliers differ by less than 0.01 in the mean.
   */
  @Test
  void multipliers_yearTurnedByHalf_areNearlyTheSame() {
    SplittableRandom random = new SplittableRandom(19);
    double sum = 0;
    double largest = 0;
    int years = 500;
    for (int i = 0; i < years; i++) {
      double[] dose = random.doubles(HalfMonths.COUNT, 0, 0.6).toArray();
      double[] turned = new double[HalfMonths.COUNT];
      for (int p = 0; p < dose.length; p++) {
        turned[(p + 12) % HalfMonths.COUNT] = dose[p];
      }
      int month = random.nextInt(12);
      double[] here = multipliers(dose, firstOf(month), 34 / 7.0, 17, 7);
      double[] there = multipliers(turned, firstOf((month + 6) % 12), 34 / 7.0, 17, 7);
      for (int j = 0; j < here.length; j++) {
        sum += Math.abs(there[j] - here[j]);
        largest = Math.max(largest, Math.abs(there[j] - here[j]));
      }
    }
    assertThat(sum / (2 * years)).isLessThan(0.01);
    assertThat(largest).isLessThan(0.28);
  }

  @ParameterizedTest
  @CsvSource({"2, 1", "3, 2", "5, 3", "6, 3", "9, 4"})
  void cycles_weeksOfJoining_countStartedCycles(double weeks, int cycles) {
    assertThat(JoiningWalk.cycles(weeks)).isEqualTo(cycles);
    assertThat(JoiningWalk.cycles(34 / 7.0)).isEqualTo(2);
    assertThat(JoiningWalk.cycles(17 / 7.0)).isEqualTo(1);
  }

  @Test
  void multipliers_tooLittleRoom_areRefused() {
    assertThatThrownBy(
            () ->
                ByFormula.multipliers(
                    new double[HalfMonths.COUNT], 0, 6, 0.41, 3, 14, 17, 7, new double[2]))
        .hasMessage("there must be room for 3 cycles");
  }

  private static int firstOf(int month) {
    int day = 0;
    while (HalfMonths.ofDay(day) != 2 * month) {
      day++;
    }
    return day;
  }

  /** Dose in every half-month from the first to {@code last}, none after. */
  private static double[] until(int last, double dosePercent) {
    double[] dose = new double[HalfMonths.COUNT];
    Arrays.fill(dose, 0, last + 1, dosePercent);
    return dose;
  }

  private static double oneDay(double[] dose, int day, double lag, double halfLife) {
    return multipliers(dose, day, ONE_DAY_WEEKS, lag, halfLife)[0];
  }

  private static double[] multipliers(
      double[] dose, int start, double weeks, double lag, double halfLife) {
    double[] m = new double[JoiningWalk.cycles(weeks)];
    ByFormula.multipliers(dose, start, weeks, 0.41, 3, 14, lag, halfLife, m);
    return m;
  }
}
