package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.farm.HalfMonths;
import swardcase.reproduction.ByFormula;

/** The walk of the dose-response fed by days, which trials count in, and by half-months. */
class ExposureByDayTest {

  private static double first(double[] doses, int joiningDay) {
    double[] multiplier = new double[2];
    ByFormula.multipliers(doses, joiningDay, 4.8, 0.41, 3, 14, 17, 7, multiplier);
    return multiplier[0];
  }

  /** To rounding only: by half-month the walk takes days that change nothing in one stride. */
  @Test
  void doses_byDay_giveWhatTheSameDosesByHalfMonthGive() {
    SplittableRandom random = new SplittableRandom(5);
    for (int trial = 0; trial < 100; trial++) {
      double[] halves = new double[HalfMonths.COUNT];
      Arrays.setAll(halves, p -> random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 1));
      double[] days = new double[HalfMonths.DAYS];
      Arrays.setAll(days, day -> halves[HalfMonths.ofDay(day)]);
      int joining = random.nextInt(HalfMonths.DAYS);
      assertThat(first(days, joining))
          .as("trial %s", trial)
          .isCloseTo(first(halves, joining), within(1e-12));
    }
  }

  private static double[] sixWeeksOn(double dose, int lastDay) {
    double[] days = new double[HalfMonths.DAYS];
    Arrays.fill(days, lastDay - 42, lastDay, dose);
    return days;
  }

  /**
   * McDonald, Anwar and Keogh 1994, Proc. NZ Soc. Anim. Prod. 54:231-234: after six weeks on red
   * clover of 0.26 % and six weeks on grass 4.8 % of ewes returned to service, against 9.5 and 14.3
   * % never on it: no effect. Straight after six weeks 33.3 % returned. The 14 of 21 and 57 of 63
   * that held are counted back from the percentages (inferred); their ratio is 0.74, and the 95 %
   * limits of the first alone are 45 and 83 %.
   */
  @Test
  void sixWeeksOnClover_thenSixOff_areForgotten_butNotStraightAfter() {
    assertThat(first(sixWeeksOn(0.26, 150), 150 + 42)).isGreaterThan(0.98);
    assertThat(first(sixWeeksOn(0.26, 150), 150)).isCloseTo(0.74, within(0.10));
  }

  /** A day more on the clover before joining never helps. */
  @Test
  void oneMoreDay_neverRaisesConception() {
    double before = 1;
    for (int n = 1; n <= 60; n++) {
      double[] days = new double[HalfMonths.DAYS];
      Arrays.fill(days, 150 - n, 150, 0.5);
      double now = first(days, 155);
      assertThat(now).isLessThanOrEqualTo(before + 1e-12);
      before = now;
    }
  }
}
