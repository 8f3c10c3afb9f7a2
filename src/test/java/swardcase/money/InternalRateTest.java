package swardcase.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.poi.ss.formula.functions.Irr;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InternalRateTest {

  /** Arithmetic: 1 + r = x solves 1600 x^2 - 10000 x + 10000 = 0, so x is 1.25 or 5. */
  @Test
  void of_twoSignChanges_findsBothRatesAndNoSingleOne() {
    List<Double> rates = InternalRate.of(Flows.parse("-1600 10000 -10000"));
    assertThat(rates).hasSize(2);
    assertThat(rates.get(0)).isCloseTo(0.25, within(1e-12));
    assertThat(rates.get(1)).isCloseTo(4, within(1e-12));
  }

  /** Arithmetic: -(x - 1.1) (x - 1.2) (x - 1.3) written out as flows. */
  @Test
  void of_threeKnownRates_findsAllInOrder() {
    assertThat(InternalRate.of(new double[] {-1, 3.6, -4.31, 1.716}))
        .hasSize(3)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(0.1, 0.2, 0.3);
  }

  @ParameterizedTest
  @CsvSource({"100 50 50", "-100 -50 -50", "0 0 0", "-100 200 -150"})
  void of_flowsWithNoZero_findsNone(String flows) {
    List<Double> rates = InternalRate.of(Flows.parse(flows));
    assertThat(rates).isEmpty();
  }

  @Test
  void of_moneyBackWithNothingEarned_isZero() {
    assertThat(InternalRate.of(Flows.parse("-100 40 60")).get(0)).isCloseTo(0, within(1e-12));
  }

  /**
   * Newton's method of the spreadsheet function may end below -100 %, where a rate has no meaning,
   * or nowhere: those cases are not compared.
   */
  @Test
  void of_outlayThenInflows_isTheSpreadsheetsRateAndMakesTheValueZero() {
    SplittableRandom random = new SplittableRandom(2);
    int compared = 0;
    for (int i = 0; i < 500; i++) {
      double[] flows = Flows.outlayThenInflows(random);
      List<Double> rates = InternalRate.of(flows);
      assertThat(rates).hasSizeLessThan(2);
      if (rates.isEmpty()) {
        continue;
      }
      assertThat(rates).hasSize(1);
      double rate = rates.get(0);
      assertThat(NetPresentValue.of(rate, flows)).as("case %s", i).isCloseTo(0, within(1e-4));
      double spreadsheet = Irr.irr(flows);
      if (spreadsheet > -1) {
        assertThat(rate).as("case %s", i).isCloseTo(spreadsheet, within(1e-6));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(400);
  }

  @Test
  void of_flowsInAnotherCurrency_isTheSameRate() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 200; i++) {
      double[] flows = random.doubles(8, -100, 100).toArray();
      double[] other = Arrays.stream(flows).map(flow -> 1.7 * flow).toArray();
      List<Double> here = InternalRate.of(flows);
      List<Double> there = InternalRate.of(other);
      assertThat(there).hasSameSizeAs(here);
      for (int j = 0; j < here.size(); j++) {
        assertThat(there.get(j)).isCloseTo(here.get(j), within(1e-9));
      }
    }
  }
}
