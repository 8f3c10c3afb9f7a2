package swardcase.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LetteringTest {

  private final PDDocument document = new PDDocument();
  private final Lettering lettering = new Lettering(document);

  @AfterEach
  void close() throws IOException {
    document.close();
  }

  @Test
  void clean_ofTextTheTypeHas_changesNothing() {
    assertThat(lettering.clean("Whāngārei, Λιβάδι, Луг, 5 % \u2212 2")).endsWith("5 % \u2212 2");
    assertThat(lettering.hasReplaced()).isFalse();
  }

  @Test
  void clean_ofLettersTheTypeLacks_putsQuestionMarks() {
    assertThat(lettering.clean("a\u725b\uD83D\uDC11\uD800b")).isEqualTo("a???b");
    assertThat(lettering.hasReplaced()).isTrue();
  }

  @Test
  void clean_ofControlsAndInvisibleMarks_leavesPlainText() {
    assertThat(lettering.clean("a\tb\u0007c\u200bd\u202ee")).isEqualTo("a b cde");
    assertThat(lettering.clean("a\u0304")).isEqualTo("ā");
  }

  @Test
  void wrap_keepsCurrencyWithItsNumber() {
    double width = lettering.width("costs A$ 12", Style.BODY);
    assertThat(lettering.wrap("costs A$ 12,000", Style.BODY, width))
        .containsExactly("costs", "A$ 12,000");
  }

  @Test
  void wrap_ofAnyText_fitsAndLosesNothing() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 300; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(1, 120);
      for (int j = 0; j < length; j++) {
        text.append(random.nextInt(7) == 0 ? ' ' : (char) random.nextInt('!', '~'));
      }
      double width = random.nextDouble(12, 300);
      List<String> lines = lettering.wrap(text.toString(), Style.BODY, width);
      assertThat(lines)
          .as("%s at %s", text, width)
          .allMatch(line -> lettering.width(line, Style.BODY) <= width);
      assertThat(String.join("", lines).replace(" ", ""))
          .isEqualTo(text.toString().replace(" ", ""));
    }
  }

  @Test
  void shorten_ofLongText_endsInAnEllipsisAndFits() {
    String shortened = lettering.shorten("The Hundred Acre beyond the gate", Style.CELL, 60);
    assertThat(shortened).startsWith("The Hund").endsWith("\u2026");
    assertThat(lettering.width(shortened, Style.CELL)).isLessThanOrEqualTo(60);
    assertThat(lettering.shorten("House", Style.CELL, 60)).isEqualTo("House");
  }

  @Test
  void wrap_toFewLines_marksWhatIsCut() {
    List<String> lines = lettering.wrap("one two three four five six", Style.BODY, 40, 2);
    assertThat(lines).hasSize(2);
    assertThat(lines.get(1)).endsWith("\u2026");
  }
}
