package swardcase.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;

class YamlTreeTest {

  private static Entries read(String text) {
    Faults faults = new Faults();
    Entries top = YamlTree.find("farm.yaml", text, faults).orElse(null);
    faults.throwIfAny();
    return top;
  }

  @Test
  void values_ofAnyLook_keepTheirTextAndLine() {
    Entries top = read("a: 010\n\nb: yes # comment\nc: '0.5'\nd: ~\n");

    assertThat(top.entries().get("a").value())
        .isEqualTo(new Scalar(new Spot("farm.yaml", 1), "010", Form.PLAIN));
    assertThat(top.entries().get("b").value())
        .isEqualTo(new Scalar(new Spot("farm.yaml", 3), "yes", Form.PLAIN));
    assertThat(top.entries().get("c").value())
        .isEqualTo(new Scalar(new Spot("farm.yaml", 4), "0.5", Form.QUOTED));
    assertThat(((Scalar) top.entries().get("d").value()).isEmpty()).isTrue();
  }

  @Test
  void entities_thatMultiplyThemselves_areRefused() {
    String laughs = "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n";

    assertThatThrownBy(() -> read(laughs))
        .hasMessageContaining("farm.yaml:1: a: must be written out")
        .hasMessageContaining("farm.yaml:3: c[1]: must be written out");
  }

  @Test
  void lists_nestedBeyondSense_areRefusedWithTheirLine() {
    assertThatThrownBy(() -> read("a:\n  " + "[".repeat(50_000)))
        .hasMessage("farm.yaml:2: must not have lists in lists in lists");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "``|farm.yaml: must not be empty",
        "just words|farm.yaml:1: must hold lines such as 'name: My farm'",
        "- a|farm.yaml:1: must hold lines such as 'name: My farm'",
        "? [a]|farm.yaml:1: must have a word before the colon"
      })
  void text_thatIsNoListOfKeys_isRefused(String text, String message) {
    assertThatThrownBy(() -> read(text)).hasMessage(message);
  }
}
