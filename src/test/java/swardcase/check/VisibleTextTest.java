package swardcase.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VisibleTextTest {

  @ParameterizedTest
  @ValueSource(
      ints = {
        0x00AD, 0x034F, 0x061C, 0x115F, 0x180E, 0x200B, 0x200C, 0x200D, 0x200E, 0x200F, 0x202A,
        0x202B, 0x202C, 0x202D, 0x202E, 0x2060, 0x2066, 0x2067, 0x2068, 0x2069, 0x3164, 0xFEFF,
        0xE0041
      })
  void characters_thatHideOrTurnText_areTakenOut(int hidden) {
    String one = Character.toString(hidden);

    assertThat(VisibleText.of(one + "Ho" + one + one + "use" + one)).isEqualTo("House");
  }

  @ParameterizedTest
  @ValueSource(ints = {0x00, 0x07, 0x0A, 0x1B, 0x7F, 0x85, 0x9B, 0x9F, 0x2028, 0x2029})
  void characters_thatControl_becomeSpaces(int control) {
    assertThat(VisibleText.of("a" + Character.toString(control) + "b")).isEqualTo("a b");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pā Tārare 5 % − east",
        "حقل",
        "خانه\u200Cها",
        "क्\u200Dष",
        "שדה",
        "草地",
        "한국",
        "🐑 Flat",
        "e\u0301"
      })
  void text_ofAnyScript_staysAsItIs(String text) {
    assertThat(VisibleText.of(text)).isEqualTo(text);
  }

  @Test
  void text_cleanedTwice_isCleanedOnce() {
    String once = VisibleText.of("a\u200D\u202E\u200Dب\u200C\u200Cپ\u001b\u200B");

    assertThat(VisibleText.of(once)).isEqualTo(once);
  }
}
