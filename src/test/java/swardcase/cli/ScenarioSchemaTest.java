package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaLocation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema of scenario files is made from that of farm.yaml, at each build, by this test. */
class ScenarioSchemaTest {

  private static final Path FILE = Path.of("target/scenario.schema.json");
  private static final Path DEMO = Path.of("demo-data/mixed-scenarios.yaml");

  @TempDir private Path folder;

  @BeforeAll
  static void write() throws IOException {
    ObjectNode made = ScenarioSchema.of(FarmSchemaTest.FILE, columns());
    String text = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(made);
    Files.writeString(FILE, text + "\n");
  }

  /** The columns of a demo farm that has them all, but the name. */
  private static Set<String> columns() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("demo-data/mixed-farm/paddocks.csv"));
    Set<String> columns = new LinkedHashSet<>(List.of(lines.get(1).split(",")));
    assertThat(columns.remove("paddock")).isTrue();
    return columns;
  }

  @Test
  void schema_itself_isAValidSchema() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(FILE.toFile());

    assertThat(
            FarmSchemaTest.registry()
                .getSchema(SchemaLocation.of(schema.get("$schema").asText()))
                .validate(schema))
        .isEmpty();
  }

  @Test
  void demoScenarios_fitTheSchemaTheyName() throws IOException {
    String first = Files.readAllLines(DEMO).get(0);

    assertThat(DEMO.resolveSibling(first.substring(first.indexOf('=') + 1)).normalize())
        .isEqualTo(FILE);
    assertThat(faults(Files.readString(DEMO))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prices: {net_value_per_lamb: +5 %}",
        "prices: {net_value_per_lamb: [1, 2, 3]}",
        "finance: {budget_per_year: ~, loan: ~}",
        "other_stock: [{name: wethers, head: 20}]",
        "growth: Esperance",
        "actions: {crop-1: {crop_margin_per_ha: -10 %, considered: no}}",
        "costs: {spray-fallow: {seed: +10 %}}",
        "paddocks: {House: {clover_percent: 40, arable: no, growth_index: -10 %}}"
      })
  void scenario_thatTheProgramTakes_fits(String keys) throws IOException {
    String text = "scenarios: {one: {" + keys + "}}";

    assertThat(faults(text)).isEmpty();
    assertThat(check(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prices: {net_value_per_lamb: 5 %}",
        "prices: {net_value_per_lam: 5}",
        "finance: {horizon_years: 50}",
        "mobs: [{ewes: 20}]",
        "climate: warm",
        "paddocks: {House: {clover: 3}}",
        "paddocks: {House: {arable: maybe}}",
        ""
      })
  void scenario_thatTheProgramRefuses_doesNotFit(String keys) throws IOException {
    String text = "scenarios: {one: {" + keys + "}}";

    assertThat(faults(text)).isNotEmpty();
    assertThat(check(text)).containsAnyOf("must", "is not a column");
  }

  private static List<?> faults(String yaml) throws IOException {
    return FarmSchemaTest.registry()
        .getSchema(new ObjectMapper().readTree(FILE.toFile()))
        .validate(FarmSchemaTest.YAML.readTree(yaml));
  }

  /** The faults that the program finds. */
  private String check(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("what-if.yaml"), text);
    return Ran.command("check", "demo-data/mixed-farm", "--scenario", file).err();
  }
}
