package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables and sentences fit a terminal whose width nobody told. */
class TerminalWidthTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "decide demo-data/current-farm",
        "decide demo-data/mixed-farm",
        "decide demo-data/northern-farm",
        "decide demo-data/risky-farm",
        "compare demo-data/current-farm demo-data/risky-farm",
        "compare demo-data/mixed-farm --scenario demo-data/mixed-scenarios.yaml",
        "joining demo-data/mixed-farm",
        "joining demo-data/risky-farm",
        "sampling demo-data/mixed-farm",
        "sampling demo-data/large-farm",
        "--help",
        "decide --help",
        "batch --help"
      })
  void lines_ofACommand_areNotLongerThanEightyColumns(String command) {
    boolean draws = command.matches("(decide|compare|joining|sampling) demo.*");
    Object[] words = command.split(" ");
    Ran ran =
        Ran.command(
            draws
                ? Stream.of(words, new Object[] {"--draws", "100"}).flatMap(Stream::of).toArray()
                : words);

    assertThat(ran.code()).isZero();
    assertThat(Ran.widest(ran.out())).isBetween(60, 80);
  }
}
