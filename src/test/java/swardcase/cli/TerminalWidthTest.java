package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables and sentences fit a terminal whose width nobody told. */
class TerminalWidthTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare demo-data/current-farm demo-data/risky-farm",
        "compare demo-data/mixed-farm --scenario demo-data/mixed-scenarios.yaml",
        "--help",
        "decide --help",
        "batch --help"
      })
  void lines_ofACommand_areNotLongerThanEightyColumns(String command) {
    boolean draws = command.matches("compare demo.*");
    Object[] words = command.split(" ");
    Ran ran =
        Ran.command(
            draws
                ? Stream.of(words, new Object[] {"--draws", "100"}).flatMap(Stream::of).toArray()
                : words);

    assertThat(ran.code()).isZero();
    assertThat(Ran.widest(ran.out())).isBetween(60, 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"current-farm", "mixed-farm", "northern-farm", "risky-farm"})
  void lines_ofADecision_areNotLongerThanEightyColumns(String farm) throws IOException {
    assertFits(DemoSheets.decided(farm));
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "risky-farm"})
  void lines_ofTheTimeBeforeJoining_areNotLongerThanEightyColumns(String farm) throws IOException {
    assertFits(DemoSheets.joined(farm));
  }

  private static void assertFits(Path made) throws IOException {
    assertThat(Ran.widest(Files.readString(made.resolve("said.txt")))).isBetween(60, 80);
  }
}
