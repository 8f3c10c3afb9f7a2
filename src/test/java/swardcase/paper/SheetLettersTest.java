package swardcase.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetLettersTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Whāngārei",
        "Łąka",
        "Eyjafjörður",
        "Đồng cỏ",
        "Λιβάδι",
        "Північ",
        "Оңтүстік",
        "№ 3 – A$ €"
      })
  void lacking_namesInScriptsTheSheetHas_isNothing(String name) {
    assertThat(SheetLetters.lacking(name)).isEmpty();
  }

  @Test
  void lacking_namesInOtherScripts_areTheSignsEachOnce() {
    assertThat(SheetLetters.lacking("牧場 x 牧")).isEqualTo("牧場");
    assertThat(SheetLetters.lacking("مرعى")).isEqualTo("مرعى");
    assertThat(SheetLetters.lacking("चरागाह")).isEqualTo("चरागह");
    assertThat(SheetLetters.lacking("sheep \uD83D\uDC11")).isEqualTo("\uD83D\uDC11");
  }

  /** Every sign is judged as the sheet itself would treat it. */
  @Test
  void lacking_everySign_isWhatTheSheetReplaces() throws IOException {
    try (PDDocument document = new PDDocument()) {
      Lettering lettering = new Lettering(document);
      for (int sign = 0; sign < 0x11000; sign++) {
        String text = Character.toString(sign);
        if (Character.getType(sign) == Character.SURROGATE) {
          continue; // half a sign, which no file in UTF-8 can hold
        }
        boolean replaced = lettering.clean(text).contains("?") && sign != '?';
        assertThat(!SheetLetters.lacking(text).isEmpty()).as("U+%04X", sign).isEqualTo(replaced);
        assertThat(replaced).as("U+%04X", sign).isIn(false, sign > SheetLetters.ALL_THERE);
      }
    }
  }
}
