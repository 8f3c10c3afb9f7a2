package swardcase.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {

  @ParameterizedTest
  @CsvSource({"0,0", "12,12", "0.5,0.5", "-3.25,-3.25", "+7,7", "1250,1250"})
  void number_writtenPlainly_isRead(String text, double value) {
    assertThat(NumberText.find(text)).hasValue(value);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "010", "1_000", "1,000", "0,5", ".5", "5.", "1e3", "0x10", "NaN", ".inf", "٣"
      })
  void text_thatMayMeanSomethingElse_isRefused(String text) {
    assertThat(NumberText.find(text)).isEmpty();
  }

  @Test
  void minusZero_isZero() {
    assertThat(1 / NumberText.find("-0").getAsDouble()).isPositive();
  }
}
