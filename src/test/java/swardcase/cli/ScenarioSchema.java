package swardcase.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/**
 * Makes the schema of a scenario file from that of {@code farm.yaml}: the same keys, none of them
 * needed, each number also as a change by per cent, and each key also with nothing behind it.
 */
final class ScenarioSchema {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String PER_CENT = "^[+-]\\d{1,4}(\\.\\d{1,6})? ?%$";
  private static final List<String> YES_NO = List.of("waterlogged", "arable");

  private static final Set<String> NUMBERS = Set.of("number", "integer");

  private ScenarioSchema() {}

  static ObjectNode of(Path farmSchema, Set<String> paddockColumns) throws IOException {
    ObjectNode farm = (ObjectNode) MAPPER.readTree(farmSchema.toFile());
    ObjectNode changes = MAPPER.createObjectNode();
    changes.put("description", "What the scenario changes; all else stays as the farm has it.");
    changes.put("type", "object").put("minProperties", 1).put("additionalProperties", false);
    ObjectNode keys = ((ObjectNode) farm.get("properties")).deepCopy();
    keys.properties().forEach(key -> key.setValue(changed(key.getValue())));
    keys.set("paddocks", paddocks(paddockColumns));
    changes.set("properties", keys);

    ObjectNode schema = MAPPER.createObjectNode();
    schema.set("$schema", farm.get("$schema"));
    schema.put("title", "Scenario file of Swardcase");
    schema.put(
        "description",
        "Named changes to a farm: below 'scenarios' the name of each, below that the keys of farm.yaml"
            + " that change. -20 % changes the farm's own number.");
    schema.put("type", "object").put("additionalProperties", false);
    ObjectNode named = schema.putObject("properties").putObject("scenarios");
    named.put("description", "Scenarios by name.").put("type", "object").put("minProperties", 1);
    named.set("additionalProperties", changes);
    schema.putArray("required").add("scenarios");
    if (farm.has("$defs")) {
      schema.set("$defs", farm.get("$defs"));
    }
    return schema;
  }

  /** The value, a change by per cent where it is a number, or nothing. */
  private static JsonNode changed(JsonNode value) {
    ObjectNode one = value.deepCopy();
    JsonNode description = one.remove("description");
    boolean number = isNumber(one);
    relax(one);
    ObjectNode changed = MAPPER.createObjectNode();
    if (description != null) {
      changed.set("description", description);
    }
    ArrayNode forms = changed.putArray("anyOf");
    if (one.has("anyOf") && one.size() == 1) {
      forms.addAll((ArrayNode) one.get("anyOf"));
    } else {
      forms.add(one);
    }
    if (number) {
      forms.addObject().put("type", "string").put("pattern", PER_CENT);
    }
    forms.addObject().put("type", "null");
    return changed;
  }

  /** Whether it may be a number or a list of numbers. */
  private static boolean isNumber(JsonNode value) {
    return NUMBERS.contains(value.path("type").asText())
        || NUMBERS.contains(value.at("/items/type").asText())
        || value.path("anyOf").valueStream().anyMatch(ScenarioSchema::isNumber);
  }

  /** Parts need none of their keys, items of a list none but their name. */
  private static void relax(ObjectNode value) {
    if (value.get("properties") instanceof ObjectNode properties) {
      value.remove(List.of("required", "oneOf", "dependentRequired", "not"));
      properties.properties().forEach(key -> key.setValue(changed(key.getValue())));
    }
    if (value.get("additionalProperties") instanceof ObjectNode below) {
      value.set("additionalProperties", changed(below));
    }
    value.path("anyOf").forEach(form -> relax((ObjectNode) form));
    if (value.get("items") instanceof ObjectNode items && items.has("properties")) {
      relax(items);
      items.putArray("required").add("name");
    }
  }

  private static ObjectNode paddocks(Set<String> columns) {
    ObjectNode paddocks = MAPPER.createObjectNode();
    paddocks.put("description", "Columns of paddocks.csv that change, by the name of the paddock.");
    paddocks.put("type", "object");
    ObjectNode paddock = paddocks.putObject("additionalProperties");
    paddock.put("type", "object").put("additionalProperties", false);
    ObjectNode cells = paddock.putObject("properties");
    for (String column : columns) {
      ArrayNode forms = cells.putObject(column).putArray("anyOf");
      if (YES_NO.contains(column)) {
        forms.addObject().putArray("enum").add("yes").add("no");
      } else if (column.equals("use")) {
        forms.addObject().put("type", "string");
      } else {
        forms.addObject().put("type", "number").put("minimum", 0);
        forms.addObject().put("type", "string").put("pattern", PER_CENT);
      }
      forms.addObject().put("type", "null");
    }
    return paddocks;
  }
}
