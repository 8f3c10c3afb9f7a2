package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The options that change a farm for one run. */
class FarmChangesTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int decide(String... more) {
    String[] arguments =
        Stream.concat(
                Stream.of("decide", "demo-data/current-farm", "--date", "2026-11-25"),
                Stream.of(more))
            .toArray(String[]::new);
    return Main.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(arguments);
  }

  @Test
  void fix_knownPaddockAndAction_isMadeAndPriced() {
    assertThat(decide("--fix", "homestead=spray-fallow@2028", "--budget", "90000")).isZero();
    assertThat(out.toString()).contains("Fixing Homestead to spray-fallow and resow from 2028");
  }

  @Test
  void fix_mistypedNamesAndYear_areRefusedWithTheNearest() {
    assertThat(decide("--fix", "Homestaed=spray-falow@2051")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString())
        .contains("found 'Homestaed'; did you mean 'Homestead'?")
        .contains("found 'spray-falow'; did you mean 'spray-fallow'?")
        .contains("must start in a year from 2027 to 2032; found '2051'");
  }

  @Test
  void fix_ofSeedSpreadWhereItCanBeDrilled_isRefused() {
    assertThat(decide("--fix", "Homestead=broadcast")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString())
        .contains("is for ground that cannot be drilled, which the paddock can");
  }

  @Test
  void fix_beyondTheMoney_isRefused() {
    assertThat(decide("--fix", "Homestead=spray-fallow", "--budget", "10"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString()).contains("must leave a plan within the money per year");
  }

  @Test
  void fix_longerThanTheYearsCounted_isRefusedWithTheYearsItTakes() {
    assertThat(decide("--fix", "Homestead=crop-3", "--horizon", "4"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString())
        .contains("must be an action that can be seen through in the years counted, 4; it takes 5");
    assertThat(decide("--fix", "Homestead=crop-3@2028", "--horizon", "5"))
        .isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString()).contains("must start in a year from 2027 to 2027; found '2028'");
  }

  @Test
  void numbers_outsideTheirRange_areRefused() {
    assertThat(decide("--horizon", "90", "--rate", "-3")).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString())
        .contains("--horizon: must be from 1 to 40")
        .contains("--rate: must be from 0 to 100");
  }
}
