package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeTextTest {

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "=HYPERLINK(\"x\")"})
  void text_thatWouldStartAFormula_getsAnApostrophe(String text) {
    assertThat(SafeText.of(text)).isEqualTo("'" + text);
  }

  @Test
  void text_thatIsPlain_staysAsItIs() {
    assertThat(SafeText.of("Pā Tārare, 5 % − east")).isEqualTo("Pā Tārare, 5 % − east");
    assertThat(SafeText.of("")).isEmpty();
  }

  @Test
  void text_withControlCharactersOrHalvesOfCharacters_isMadeWritable() {
    assertThat(SafeText.of("a\tb\u0000c\uFFFE")).isEqualTo("a b c ");
    assertThat(SafeText.of("a\uD800b")).isEqualTo("a?b");
  }

  @Test
  void text_longerThanACellHolds_isCut() {
    assertThat(SafeText.of("x".repeat(40_000))).hasSize(32_000);
  }
}
