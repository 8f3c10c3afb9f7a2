package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swardcase.decision.Quantity;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.report.FarmPart;
import swardcase.report.JoiningCaution;
import swardcase.report.SamplingReport.CountCall;
import swardcase.report.SamplingReport.Further;

class TextsTest {

  /** Constants that have words, by the first part of their keys. */
  private static final Map<String, Enum<?>[]> CONSTANTS =
      Map.of(
          "caution.joining", JoiningCaution.values(),
          "comparison", FarmPart.values(),
          "explain", Quantity.values(),
          "sampling", CountCall.values(),
          "sampling.further", Further.values(),
          "joining.policy", Policy.values());

  @Test
  void get_putsArgumentsInTheirPlaces_onceOnly() {
    assertThat(Texts.get("cards.name", 3, "{0} and {9}", "12", "keep"))
        .isEqualTo("3. {0} and {9}, 12 ha: keep");
  }

  @Test
  void get_ofUnknownKey_saysWhich() {
    assertThatThrownBy(() -> Texts.get("no.such.key"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no.such.key");
  }

  @Test
  void bundle_holdsNoKeyThatNothingUses() throws IOException {
    Properties words = new Properties();
    words.load(
        new InputStreamReader(
            TextsTest.class.getResourceAsStream("words.properties"), StandardCharsets.UTF_8));
    String code;
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/swardcase"))) {
      code =
          files
              .filter(
                  file ->
                      file.toString()
                          .matches(".*(report|wording|view|paper|sheet).[A-Za-z]+\\.java"))
              .map(TextsTest::read)
              .collect(Collectors.joining());
    }
    TreeSet<String> unused = new TreeSet<>(words.stringPropertyNames());
    unused.removeIf(key -> code.contains("\"" + key + "\""));
    unused.removeIf(key -> key.matches("glossary\\.\\d+\\.(term|text)|caution\\.\\d"));
    CONSTANTS.forEach(
        (prefix, constants) ->
            Stream.of(constants)
                .map(constant -> prefix + "." + constant.name())
                .peek(key -> assertThat(words.stringPropertyNames()).contains(key))
                .forEach(unused::remove));
    for (Quantity what : Quantity.values()) {
      unused.remove("explain.how." + what.name());
    }
    unused.removeIf(
        key -> {
          String total = key.replaceAll("^total\\.|\\.means$", "");
          return key.startsWith("total.") && code.contains("\"" + total + "\"");
        });
    assertThat(words.size()).isGreaterThan(100);
    assertThat(unused).isEmpty();
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
