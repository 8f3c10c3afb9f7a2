package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FarmSchemaTest {

  /** Reads as editors do: yes and no are words. */
  static final YAMLMapper YAML =
      YAMLMapper.builder(
              YAMLFactory.builder()
                  .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS)
                  .build())
          .build();

  static final Path FILE = Path.of("docs/farm.schema.json");
  private static final Pattern KNOWN =
      Pattern.compile("must be one of the known keys: ([^;]*); found 'zz'");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm", "northern-farm"})
  void farmFile_ofADemoFarm_fitsTheSchemaItNames(String farm) throws IOException {
    Path file = Path.of("demo-data", farm, "farm.yaml");

    String first = Files.readAllLines(file).get(0);

    assertThat(first).startsWith("# yaml-language-server: $schema=");
    assertThat(file.resolveSibling(first.substring(first.indexOf('=') + 1)).normalize())
        .isEqualTo(FILE);
    assertThat(schema().validate(YAML.readTree(file.toFile()))).isEmpty();
  }

  @Test
  void schema_itself_isAValidSchema() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(FILE.toFile());

    Schema ofSchemas = registry().getSchema(SchemaLocation.of(schema.get("$schema").asText()));

    assertThat(ofSchemas.validate(schema)).isEmpty();
  }

  /** The reader names its known keys when it meets an unknown one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "zz: 1                                         | /properties",
        "growth: {zz: 1}                               | /properties/growth/anyOf/1/properties",
        "growth: {kg_dm_per_ha_per_day: {zz: 1}}       |"
            + " /properties/growth/anyOf/1/properties/kg_dm_per_ha_per_day/properties",
        "season_chances_percent: {zz: 1}               |"
            + " /properties/season_chances_percent/properties",
        "season_growth_percent: {zz: 1}                |"
            + " /properties/season_growth_percent/properties",
        "mobs: [{zz: 1}]                               | /properties/mobs/items/properties",
        "other_stock: [{zz: 1}]                        | /properties/other_stock/items/properties",
        "supplement: {zz: 1}                           |"
            + " /properties/supplement/anyOf/1/properties",
        "prices: {zz: 1}                               | /properties/prices/properties",
        "finance: {zz: 1}                              | /properties/finance/properties",
        "finance: {loan: {zz: 1}}                      |"
            + " /properties/finance/properties/loan/properties",
        "management: {zz: 1}                           | /properties/management/properties",
        "actions: {oversow: {zz: 1}}                   |"
            + " /properties/actions/additionalProperties/properties",
        "costs: {oversow: {fences: {zz: 1}}}           |"
            + " /properties/costs/additionalProperties/additionalProperties/anyOf/1/properties"
      })
  void keys_ofEveryPart_areThoseTheReaderKnows(String yaml, String part) throws IOException {
    Files.writeString(folder.resolve("farm.yaml"), yaml);

    Matcher known = KNOWN.matcher(Ran.command("check", folder).err());

    assertThat(known.find()).isTrue();
    Set<String> inSchema = new TreeSet<>();
    new ObjectMapper()
        .readTree(FILE.toFile())
        .at(part)
        .fieldNames()
        .forEachRemaining(inSchema::add);
    assertThat(inSchema).containsExactlyInAnyOrder(known.group(1).split(", "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "name: A\ngrowth: Katanning\ncolour: green",
        "name: A",
        "name: A\ngrowth: Katanning\nfinance: {horizon_years: 41}",
        "name: A\ngrowth: Katanning\nprices: {leaf_test: [1, 2]}",
        "name: A\ngrowth: Katanning\nclimate: warm",
        "name: A\ngrowth: {winter_months: [Juli]}",
        "name: A\ngrowth: Katanning\nactions: {crop-1: {considered: true}}",
        "name: A\ngrowth: Katanning\nother_stock: [{name: rams, head: 3}]"
      })
  void farmFile_thatTheProgramRefuses_doesNotFit(String yaml) throws IOException {
    SmallFarm.write(folder);
    Files.writeString(folder.resolve("farm.yaml"), yaml);

    assertThat(Ran.command("check", folder).code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(schema().validate(YAML.readTree(yaml))).isNotEmpty();
  }

  static SchemaRegistry registry() {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  }

  private static Schema schema() throws IOException {
    return registry().getSchema(new ObjectMapper().readTree(FILE.toFile()));
  }
}
