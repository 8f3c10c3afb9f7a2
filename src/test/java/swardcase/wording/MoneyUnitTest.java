package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyUnitTest {

  /** The largest power of ten that is at most a twentieth of the largest sum. */
  @ParameterizedTest
  @CsvSource({
    "20, 1",
    "199, 1",
    "200, 10",
    "900, 10",
    "1999, 10",
    "2000, 100",
    "18_000, 100",
    "20_000, 1000",
    "46_000, 1000",
    "199_999, 1000",
    "200_000, 10_000",
    "3e9, 100_000_000"
  })
  void unit_ofALargestSum_isAtMostATwentiethOfIt(String sum, String unit) {
    double most = Double.parseDouble(sum.replace("_", ""));
    assertThat(MoneyUnit.of(DoubleStream.of(most)))
        .isEqualTo(Double.parseDouble(unit.replace("_", "")))
        .isLessThanOrEqualTo(most / 20);
  }

  @Test
  void unit_ofCostsAndGains_goesByTheLargestUpOrDown() {
    assertThat(MoneyUnit.of(DoubleStream.of(46_000, -18_000, 0))).isEqualTo(1000);
    assertThat(MoneyUnit.of(DoubleStream.of(1_800, -46_000))).isEqualTo(1000);
  }

  @Test
  void unit_ofSmallMoneyOrNone_isOne() {
    assertThat(MoneyUnit.of(DoubleStream.of(3, -0.2))).isEqualTo(1);
    assertThat(MoneyUnit.of(DoubleStream.empty())).isEqualTo(1);
  }
}
