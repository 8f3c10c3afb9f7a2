package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenarios of a farm, as a user sees them. */
class CompareScenarioTest {

  private static final String SCENARIOS =
      """
      scenarios:
        cheap lamb, more ewes:
          prices:
            net_value_per_lamb: 50
          mobs:
            - name: ewes
              ewes: +10 %
        dear barley:
          supplement:
            name: barley
            price_per_tonne: 600
        wide flat:
          paddocks:
            Flat:
              area_ha: 40
      """;

  @TempDir private Path folder;
  private Path farm;
  private Path file;

  @BeforeEach
  void write() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
    file = Files.writeString(folder.resolve("what-if.yaml"), SCENARIOS);
  }

  private Ran compare(Object... more) {
    Object[] command = {"compare", farm, "--date", "2026-11-25", "--draws", "100"};
    return Ran.command(Stream.concat(Stream.of(command), Stream.of(more)).toArray());
  }

  private JsonNode compared(Object... more) throws IOException {
    Path json = folder.resolve("comparison.json");
    Ran ran = compare(Stream.concat(Stream.of("--json", json), Stream.of(more)).toArray());
    assertThat(ran.err()).isEmpty();
    return new ObjectMapper().readTree(json.toFile());
  }

  @Test
  void scenarios_ofAFile_areComparedInItsOrderWithTheFarm() throws IOException {
    JsonNode compared = compared("--scenario", file);

    assertThat(compared.findValuesAsText("scenario"))
        .containsExactly("null", "cheap lamb, more ewes", "dear barley", "wide flat");
    // Barley at a price of its own changes what is bought and nothing else.
    assertThat(compared.at("/others/1/side/lambsLost")).isEqualTo(compared.at("/first/lambsLost"));
    assertThat(compared.at("/others/1/difference/byItself/mean").asDouble()).isNegative();
    assertThat(compared.at("/others/0/side/farm/ewesJoined").asInt()).isEqualTo(330);
    assertThat(compared.at("/others/2/side/farm/areaHa").asInt()).isEqualTo(70);
  }

  @Test
  void scenario_andACopyWithTheSameChange_giveTheSameAnswer() throws IOException {
    Path copy = SmallFarm.write(folder.resolve("copy"));
    String csv = Files.readString(copy.resolve("paddocks.csv"));
    Files.writeString(copy.resolve("paddocks.csv"), csv.replace("Flat,20", "Flat,40"));

    JsonNode compared = compared(copy, "--scenario", file, "--only", "Wide flat");

    assertThat(compared.get("others")).hasSize(2);
    assertThat(compared.at("/others/0/side/gain")).isEqualTo(compared.at("/others/1/side/gain"));
    assertThat(compared.at("/others/0/paddocks")).isEqualTo(compared.at("/others/1/paddocks"));
    assertThat(compared.at("/others/0/difference")).isEqualTo(compared.at("/others/1/difference"));
    assertThat(compared.at("/others/0/difference/together/mean").asDouble()).isNotZero();
  }

  @Test
  void scenarios_onTheTerminal_standBelowTheFarm() {
    Ran ran = compare("--scenario", file);

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .startsWith("Small Farm (" + farm + "), 2026-11-25")
        .containsSubsequence(
            "Sows ha",
            "the farm as it is",
            "cheap lamb, more ewes",
            "dear barley",
            "wide flat",
            "Winter feed t",
            "What each brings more than the farm as it is",
            "cheap lamb, more ewes",
            "the change by itself",
            "what the plan adds",
            "together",
            "such as what wool or other stock sell",
            "A screening estimate");
  }

  @Test
  void figuresObservedOnThePaddocks_inAScenario_areSaidToStay() throws IOException {
    String note = "a scenario leaves it as it is";
    assertThat(compare("--scenario", file).out()).doesNotContain(note);

    Path yaml = farm.resolve("farm.yaml");
    Files.writeString(
        yaml,
        Files.readString(yaml)
            .replace(
                "    ewes: 300\n",
                "    ewes: 300\n    pregnant_percent: 80\n"
                    + "    figures: observed on these paddocks\n"));

    assertThat(compare("--scenario", file).out().replaceAll("\\s+", " ")).contains(note);
  }

  @Test
  void oneScenario_onTheTerminal_standsWithEveryPaddock() {
    Ran ran = compare("--scenario", file, "--only", "dear barley");

    assertThat(ran.out())
        .startsWith("Small Farm (" + farm + ")")
        .containsSubsequence("the farm as it is", "dear barley", "Paddock", "Flat")
        .doesNotContain("wide flat");
  }

  @Test
  void only_withoutSuchAScenario_namesTheNearest() {
    Ran ran = compare("--scenario", file, "--only", "dear barly");

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains(
            "--only: must name a scenario of " + file + ": cheap lamb, more ewes, dear barley")
        .contains("found 'dear barly'; did you mean 'dear barley'?");
  }

  @Test
  void compare_withNothing_saysWhatToGive() {
    assertThat(compare().err())
        .startsWith("Nothing to compare with: give another farm folder, or --scenario FILE");
    assertThat(compare(farm, "--only", "a").err()).startsWith("--only chooses from the file of");
    assertThat(compare().code()).isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void faults_ofScenarios_comeTogetherAndNothingIsWritten() throws IOException {
    Files.writeString(
        file,
        "scenarios:\n  a: {prices: {leaf_test: x}}\n  b: {currency: £}\n  c: {paddocks: {Hil: {}}}");

    Ran ran = compare("--scenario", file, "--json", folder.resolve("out.json"));

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .containsExactly(
            file
                + ": b: currency: must be A$ as in the first farm, since nothing is converted;"
                + " found '£'",
            file + ":2: prices.leaf_test: must be a number such as 1250 or 0.5; found 'x'",
            file + ":4: paddocks: must be a paddock of the farm; found 'Hil'; did you mean 'Hill'?",
            "3 faults. Nothing was written.");
    assertThat(folder.resolve("out.json")).doesNotExist();
  }

  @Test
  void json_overTheScenarioFile_isRefused() throws IOException {
    Ran ran = compare("--scenario", file, "--json", file);

    assertThat(ran.err()).contains("it is one of the files that were read");
    assertThat(Files.readString(file)).isEqualTo(SCENARIOS);
  }
}
