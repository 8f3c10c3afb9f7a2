package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResultSchemaTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path FILE = Path.of("docs/result.schema.json");
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  @TempDir private Path folder;

  /** With {@code -Dswardcase.schema.write=true} the file is written anew. */
  @Test
  void schema_inTheDocuments_isThatOfTheRecords() throws IOException {
    if (Boolean.getBoolean("swardcase.schema.write")) {
      Files.writeString(FILE, ResultSchema.text());
    }

    assertThat(Files.readString(FILE)).isEqualTo(ResultSchema.text());
  }

  @Test
  void schema_itself_isAValidSchema() throws IOException {
    JsonNode schema = MAPPER.readTree(FILE.toFile());

    Schema ofSchemas = REGISTRY.getSchema(SchemaLocation.of(schema.get("$schema").asText()));

    assertThat(ofSchemas.validate(schema)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "current-farm", "northern-farm"})
  void result_ofADemoFarm_fitsTheSchema(String farm) throws IOException {
    JsonNode result = MAPPER.readTree(DemoSheets.decided(farm).resolve("result.json").toFile());

    assertThat(result.get("paddocks")).isNotEmpty();
    assertThat(schema().validate(result)).isEmpty();
  }

  @Test
  void result_withSomethingMoreOrLess_doesNotFit() throws IOException {
    JsonNode result = result(SmallFarm.write(folder.resolve("farm")));
    assertThat(schema().validate(result)).isEmpty();

    ObjectNode more = result.deepCopy();
    ((ObjectNode) more.at("/paddocks/1")).put("colour", "green");
    ObjectNode less = result.deepCopy();
    ((ObjectNode) less.at("/winterFeed/extraEwes")).remove("high");
    ObjectNode other = result.deepCopy();
    ((ObjectNode) other.at("/assumptions/0")).put("evidence", "certain");

    assertThat(schema().validate(more)).hasSize(1);
    assertThat(schema().validate(less)).hasSize(1);
    assertThat(schema().validate(other)).hasSize(1);
  }

  private JsonNode result(Path farm) throws IOException {
    Path json = folder.resolve("result.json");
    assertThat(
            Ran.command("decide", farm, "--date=2026-03-01", "--draws=100", "--json", json).code())
        .isZero();
    return MAPPER.readTree(json.toFile());
  }

  private static Schema schema() throws IOException {
    return REGISTRY.getSchema(MAPPER.readTree(FILE.toFile()));
  }
}
