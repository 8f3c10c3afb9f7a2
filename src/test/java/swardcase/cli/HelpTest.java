package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class HelpTest {

  private static final char ESCAPE = '\u001b';

  @Test
  void program_withoutCommand_saysWhatThereIs() {
    Ran ran = Ran.command();

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    for (String name : Main.commandLine().getSubcommands().keySet()) {
      assertThat(ran.out()).contains("\n  " + name);
    }
    assertThat(ran.out()).contains("not veterinary or agronomic advice");
  }

  @Test
  void help_ofEveryCommand_givesItsExitCodesAndDescribesEveryOption() {
    for (CommandLine command : Main.commandLine().getSubcommands().values()) {
      Ran ran = Ran.command(command.getCommandName(), "--help");

      assertThat(ran.code()).isZero();
      assertThat(ran.err()).isEmpty();
      assertThat(ran.out())
          .startsWith("Usage: swardcase " + command.getCommandName())
          .contains("Exit codes:")
          .contains("a fault of the program itself");
      command
          .getCommandSpec()
          .args()
          .forEach(arg -> assertThat(arg.description()).as(arg.toString()).isNotEmpty());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "decide ", "check ", "tables "})
  void version_anywhere_saysAllThatDecidesAboutTheBytes(String command) {
    Ran ran = Ran.command((Object[]) (command + "--version").split(" "));

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .matches(
            "Swardcase \\d+\\.\\d+\\.\\d+\\R"
                + "Result document \\d\\.\\d, comparison \\d\\.\\d\\R"
                + "Default draws 1000, default seed 1\\RJava .+\\R");
  }

  @ParameterizedTest
  @CsvSource({
    "decid demo-data/mixed-farm,                  Did you mean: swardcase decide",
    "decide,                                      Missing required parameter: 'FARM'",
    "decide demo-data/mixed-farm --pfd x.pdf,     '--pdf'",
    "decide demo-data/mixed-farm --date tomorrow, 'tomorrow'",
    "decide demo-data/mixed-farm --json,          Missing required parameter",
    "check,                                       Missing required parameter: 'FARM'",
    "check demo-data/mixed-farm extra,            extra",
    "tables cultivar,                             did you mean 'cultivars'?"
  })
  void command_usedWrongly_saysHowToUseIt(String typed, String said) {
    Ran ran = Ran.command((Object[]) typed.split(" "));

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(said).contains("Try 'swardcase").doesNotContain("Exception");
  }

  @Test
  void output_notOnATerminal_hasNoEscapeSequences() {
    Ran[] all = {
      Ran.command("--help"),
      Ran.command("decide", "--help"),
      Ran.command("tables", "cultivars"),
      Ran.command("decide", "nowhere"),
      Ran.command("decid")
    };

    for (Ran ran : all) {
      assertThat(ran.out() + ran.err()).isNotEmpty().doesNotContain(String.valueOf(ESCAPE));
    }
  }

  @Test
  void argument_withAnAtSign_isNotReadAsAFileOfArguments() {
    Ran ran = Ran.command("check", "@demo-data/mixed-farm/farm.yaml");

    assertThat(ran.err()).contains("@demo-data/mixed-farm/farm.yaml: must be a folder");
  }
}
