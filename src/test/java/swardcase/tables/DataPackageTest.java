package swardcase.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Table;

/** The description of the tables for machines says what the files and the loader say. */
class DataPackageTest {

  private static final Path TABLES = Path.of("tables");

  private static List<JsonNode> resources() throws IOException {
    JsonNode root = new ObjectMapper().readTree(TABLES.resolve("datapackage.json").toFile());
    return list(root.get("resources"));
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  private static Table csv(JsonNode resource) throws IOException {
    Path file = TABLES.resolve(resource.get("path").asText());
    Faults faults = new Faults();
    Table table = Table.of(file.toString(), Files.readString(file), faults);
    assertThat(faults.all()).isEmpty();
    return table;
  }

  @Test
  void resources_ofThePackage_areTheFilesAndTheLoadersList() throws IOException {
    List<String> described = resources().stream().map(r -> r.get("path").asText()).toList();
    assertThat(described)
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(TableFile.values()).map(TableFile::fileName).toList());
    try (Stream<Path> files = Files.list(TABLES)) {
      assertThat(files.map(path -> path.getFileName().toString()).filter(n -> n.endsWith(".csv")))
          .containsExactlyInAnyOrderElementsOf(described);
    }
  }

  @Test
  void fields_ofEachResource_areItsColumnsInOrder() throws IOException {
    for (JsonNode resource : resources()) {
      List<String> fields =
          list(resource.at("/schema/fields")).stream().map(f -> f.get("name").asText()).toList();
      assertThat(csv(resource).columns()).as(resource.get("path").asText()).isEqualTo(fields);
      TableFile file =
          Arrays.stream(TableFile.values())
              .filter(f -> f.title().equals(resource.get("name").asText()))
              .findFirst()
              .orElseThrow();
      JsonNode key = resource.at("/schema/primaryKey");
      assertThat(
              key.isArray()
                  ? list(key).stream().map(JsonNode::asText).toList()
                  : List.of(key.asText()))
          .isEqualTo(file.key());
    }
  }

  @Test
  void cells_ofEveryRow_keepTypesAndConstraints() throws IOException {
    int checked = 0;
    for (JsonNode resource : resources()) {
      for (Fields row : csv(resource).rows()) {
        for (JsonNode field : list(resource.at("/schema/fields"))) {
          checkCell(row, field, resource.get("path").asText() + ":" + row.at().line());
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(3000);
  }

  private static void checkCell(Fields row, JsonNode field, String place) {
    String name = field.get("name").asText();
    JsonNode limits = field.path("constraints");
    String where = place + ": " + name;
    if (row.findText(name).isEmpty()) {
      assertThat(limits.path("required").asBoolean(false)).as(where).isFalse();
      return;
    }
    String cell = row.text(name);
    if (limits.has("enum")) {
      assertThat(list(limits.get("enum"))).extracting(JsonNode::asText).as(where).contains(cell);
    }
    if (limits.has("pattern")) {
      assertThat(cell).as(where).matches(limits.get("pattern").asText());
    }
    if (!field.get("type").asText().equals("string")) {
      double value = row.number(name, -1e12, 1e12);
      assertThat(value).as(where).isGreaterThanOrEqualTo(limits.path("minimum").asDouble(-1e9));
      assertThat(value).as(where).isLessThanOrEqualTo(limits.path("maximum").asDouble(1e9));
      if (field.get("type").asText().equals("integer")) {
        assertThat(value).as(where).isEqualTo(Math.rint(value));
      }
    }
  }

  @Test
  void foreignKeys_ofEveryRow_findTheirTarget() throws IOException {
    List<JsonNode> resources = resources();
    int checked = 0;
    for (JsonNode resource : resources) {
      for (JsonNode key : list(resource.at("/schema").path("foreignKeys"))) {
        JsonNode target = key.get("reference");
        JsonNode other =
            resources.stream()
                .filter(r -> r.get("name").equals(target.get("resource")))
                .findFirst()
                .orElseThrow();
        List<String> known =
            csv(other).rows().stream().map(r -> r.text(target.get("fields").asText())).toList();
        for (Fields row : csv(resource).rows()) {
          assertThat(known).contains(row.text(key.get("fields").asText()));
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(50);
  }

  @Test
  void columns_ofEveryTable_areNamedInTheDescription() throws IOException {
    String text = Files.readString(Path.of("docs/method/tables.md"));
    for (JsonNode resource : resources()) {
      String name = resource.get("path").asText();
      assertThat(text).contains(name);
      csv(resource).columns().stream()
          .filter(column -> !column.endsWith("_kg_dm_per_ha_day"))
          .forEach(column -> assertThat(text).as(name).contains("`" + column + "`"));
    }
  }
}
