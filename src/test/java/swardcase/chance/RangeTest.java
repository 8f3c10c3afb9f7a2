package swardcase.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RangeTest {

  @ParameterizedTest
  @CsvSource({"NaN, 1, 2", "0, NaN, 2", "0, 1, NaN", "-Infinity, 1, 2", "0, 1, Infinity"})
  void of_valuesThatAreNoNumbers_areRefused(double low, double likely, double high) {
    assertThatThrownBy(() -> Range.of(low, likely, high))
        .hasMessageStartingWith("low, likely and high must be numbers");
  }

  @ParameterizedTest
  @CsvSource({"2, 1, 3", "0, 3, 2"})
  void of_valuesOutOfOrder_areRefused(double low, double likely, double high) {
    assertThatThrownBy(() -> Range.of(low, likely, high))
        .hasMessageStartingWith("low, likely and high must be in rising order");
  }

  /** Hand arithmetic. */
  @Test
  void times_aFactor_movesEveryValue() {
    assertThat(Range.of(1, 2, 4).times(2.5)).isEqualTo(Range.of(2.5, 5, 10));
    assertThat(Range.of(1, 2, 4).times(0)).isEqualTo(Range.exactly(0));
    assertThatThrownBy(() -> Range.of(1, 2, 4).times(-1))
        .hasMessage("factor must be zero or more, but was -1");
  }

  @Test
  void of_negativeZero_isZero() {
    assertThat(Range.exactly(-0.0)).isEqualTo(Range.exactly(0));
    assertThat(Range.of(-2, 3, 4)).isNotEqualTo(Range.of(-2, 3, 5));
    assertThat(Range.of(-2, 3, 4).toString()).contains("-2", "3", "4");
  }

  @Test
  void isExact_ofThreeValues_isTrueWhereTheyAreOne() {
    assertThat(Range.of(2, 2, 2).isExact()).isTrue();
    assertThat(Range.of(2, 2, 3).isExact()).isFalse();
  }
}
