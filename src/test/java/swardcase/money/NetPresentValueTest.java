package swardcase.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NetPresentValueTest {

  /** numpy-financial, worked value in the source of {@code npv}, commit 03e194b9. */
  @Test
  void of_numpyFinancialExample_isThePublishedValue() {
    assertThat(NetPresentValue.of(0.08, flows("-40000 5000 8000 12000 30000")))
        .isCloseTo(3065.22267, within(5e-6));
  }

  /**
   * Form software documentation, NPV function: values at the ends of the periods, so that a zero
   * stands first here.
   */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0 500 1500 4000 10000, 11529.60863329007",
    "0.065, 0 5000, 4694.83568075117",
    "0.00229166666666666666, 0 50 60 40 100 25, 273.14193838457"
  })
  void of_endOfPeriodExamples_arePublishedValues(double rate, String flows, double expected) {
    assertThat(NetPresentValue.of(rate, flows(flows))).isCloseTo(expected, within(5e-10));
  }

  /**
   * Spreadsheet component documentation, NPV function: 2,055.38, the first value discounted as
   * well. With the first value now it is 2,188.98 (2,055.38 x 1.065).
   */
  @Test
  void of_firstFlow_isNotDiscountedAsSpreadsheetsDo() {
    assertThat(NetPresentValue.of(0.065, flows("0 -10000 3000 3400 7700")))
        .isCloseTo(2055.38, within(0.005));
    assertThat(NetPresentValue.of(0.065, flows("-10000 3000 3400 7700")))
        .isCloseTo(2188.98, within(0.005));
  }

  /** Solutions to Brealey, Myers and Marcus, chapter 8: the better project turns with the rate. */
  @ParameterizedTest
  @CsvSource({"0.11, 48.20, 44.37", "0.16, 23.85, 24.59"})
  void of_twoProjects_rankDifferentlyByRate(double rate, double ofA, double ofB) {
    assertThat(NetPresentValue.of(rate, flows("-200 80 80 80 80"))).isCloseTo(ofA, within(0.005));
    assertThat(NetPresentValue.of(rate, flows("-200 100 100 100"))).isCloseTo(ofB, within(0.005));
  }

  /** Same flows, arithmetic worked separately: B earns more a year although its value is lower. */
  @Test
  void annuity_unequalLives_ranksByTheYear() {
    double a = NetPresentValue.of(0.11, flows("-200 80 80 80 80"));
    double b = NetPresentValue.of(0.11, flows("-200 100 100 100"));
    assertThat(NetPresentValue.annuity(a, 0.11, 4)).isCloseTo(15.53473, within(5e-6));
    assertThat(NetPresentValue.annuity(b, 0.11, 3)).isCloseTo(18.15739, within(5e-6));
    assertThat(a).isGreaterThan(b);
  }

  /** Flows of numpy-financial; the annuity worked separately. */
  @Test
  void annuity_numpyFinancialFlows_isWorkedValue() {
    double npv = NetPresentValue.of(0.08, flows("-40000 5000 8000 12000 30000"));
    assertThat(NetPresentValue.annuity(npv, 0.08, 4)).isCloseTo(925.4545, within(5e-5));
  }

  /** Factors at 3.5 % (rate of the UK Green Book, from memory), and 100 due in ten years. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.035, 1, 0.9662, 5e-5",
    "1, 0.035, 5, 0.8420, 5e-5",
    "1, 0.035, 10, 0.7089, 5e-5",
    "1, 0.035, 30, 0.3563, 5e-5",
    "100, 0.04, 10, 67.56, 0.005",
    "100, 0.10, 10, 38.55, 0.005"
  })
  void ofSingle_workedFactors_areMet(
      double amount, double rate, int years, double expected, double tolerance) {
    assertThat(NetPresentValue.ofSingle(amount, rate, years))
        .isCloseTo(expected, within(tolerance));
  }

  /**
   * Without discounting the value is the sum. New Zealand seed firm's page on renewal: benefits of
   * 2,032 and 1,237 less 985 make 2,284 a hectare over five years. New Zealand thesis on
   * over-drilling sub clover, table 6.1: 320 kg DM/ha at 0.08 x 6 + 0.029 a kilogram, less 140,
   * makes 22.8 (22.88 before its own rounding of the feed).
   */
  @Test
  void of_rateZero_isTheSum() {
    assertThat(NetPresentValue.of(0, flows("-985 2032 1237"))).isEqualTo(2284);
    assertThat(NetPresentValue.of(0, new double[] {-140, 320 * (0.08 * 6 + 0.029)}))
        .isCloseTo(22.88, within(1e-9));
    assertThat(NetPresentValue.annuity(100, 0, 8)).isEqualTo(12.5);
  }

  @Test
  void annuity_rateNearZero_nearsTheQuotient() {
    for (double rate = 1e-3; rate > 1e-15; rate /= 10) {
      assertThat(NetPresentValue.annuity(100, rate, 8)).isCloseTo(12.5, within(100 * rate));
    }
  }

  @Test
  void of_randomFlows_agreesWithASpreadsheetAndWithTheAnnuity() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 500; i++) {
      double[] flows = random.doubles(random.nextLong(2, 30), -1e5, 1e5).toArray();
      double rate = random.nextDouble(-0.1, 0.5);
      double npv = NetPresentValue.of(rate, flows);
      assertThat(npv)
          .isCloseTo(FinanceLib.npv(rate, flows) * (1 + rate), within(1e-7 * Math.abs(npv) + 1e-6));
      double[] level = new double[flows.length];
      double yearly = NetPresentValue.annuity(npv, rate, flows.length - 1);
      Arrays.fill(level, 1, level.length, yearly);
      assertThat(NetPresentValue.of(rate, level))
          .isCloseTo(npv, within(1e-9 * Math.abs(npv) + 1e-6));
    }
  }

  @Test
  void of_rateOfMinusOneOrNotANumber_isRefused() {
    assertThatThrownBy(() -> NetPresentValue.of(-1, flows("1")))
        .hasMessage("rate must be above -1, but was -1.0");
    assertThatThrownBy(() -> NetPresentValue.annuity(1, Double.NaN, 3))
        .hasMessage("rate must be above -1, but was NaN");
    assertThatThrownBy(() -> NetPresentValue.annuity(1, 0.1, 0))
        .hasMessage("years of an annuity must be at least 1, but was 0");
  }

  private static double[] flows(String text) {
    return Flows.parse(text);
  }
}
