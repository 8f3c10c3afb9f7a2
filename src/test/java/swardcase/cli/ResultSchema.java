package swardcase.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.report.Report;
import swardcase.view.JsonView;

/**
 * The JSON Schema of the result document, built from the report's records: their components, the
 * text of their {@code @param} lines, and the units of {@code schema/units.csv}.
 */
final class ResultSchema {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Path UNITS = Path.of("src/test/resources/schema/units.csv");

  /** Numbers whose unit is that of the component that holds them. */
  private static final List<Class<?>> ENDS = List.of(Range.class, Drawn.class);

  private final ObjectNode definitions = MAPPER.createObjectNode();
  private final Map<Pattern, String> units = new LinkedHashMap<>();

  private ResultSchema() throws IOException {
    for (String line : Files.readAllLines(UNITS)) {
      if (!line.startsWith("#") && !line.equals("pattern,unit")) {
        String[] cells = line.split(",", 2);
        units.put(Pattern.compile(cells[0]), cells[1]);
      }
    }
  }

  /** The schema as it stands in the documents. */
  static String text() throws IOException {
    ResultSchema schema = new ResultSchema();
    ObjectNode top = MAPPER.createObjectNode();
    top.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    top.put("title", "Result document of Swardcase");
    top.setAll(schema.object(Report.class));
    top.set("$defs", schema.definitions);
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(top) + "\n";
  }

  private ObjectNode object(Class<?> type) throws IOException {
    Map<String, String> words = javadoc(type);
    ObjectNode object = MAPPER.createObjectNode();
    object.put("description", words.get(""));
    object.put("type", "object");
    object.put("additionalProperties", false);
    ObjectNode properties = object.putObject("properties");
    for (RecordComponent part : type.getRecordComponents()) {
      if (type == Assumption.class && part.getType() == Range.class) {
        for (RecordComponent end : Range.class.getRecordComponents()) {
          properties.set(end.getName(), described(Range.class, end, javadoc(Range.class)));
        }
      } else {
        properties.set(part.getName(), described(type, part, words));
      }
    }
    ArrayNode required = object.putArray("required");
    properties
        .fieldNames()
        .forEachRemaining(
            name -> {
              if (!JsonView.leavesOut(type, name)) {
                required.add(name);
              }
            });
    return object;
  }

  private ObjectNode described(Class<?> type, RecordComponent part, Map<String, String> words)
      throws IOException {
    String place = type.getSimpleName() + "." + part.getName();
    String description = words.get(part.getName());
    if (description == null) {
      throw new AssertionError("no @param line for " + place);
    }
    ObjectNode schema = MAPPER.createObjectNode();
    String unit = !ENDS.contains(type) && isNumber(part.getGenericType()) ? unit(place) : "";
    schema.put("description", unit.isEmpty() ? description : description + ". Unit: " + unit);
    boolean leftOut = JsonView.leavesOut(type, part.getName());
    schema.setAll(
        of(leftOut ? argument((ParameterizedType) part.getGenericType()) : part.getGenericType()));
    return schema;
  }

  private String unit(String place) {
    return units.entrySet().stream()
        .filter(entry -> entry.getKey().matcher(place).matches())
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no unit for " + place + ": add one to " + UNITS));
  }

  private static boolean isNumber(Type type) {
    Type bare = type instanceof ParameterizedType generic ? argument(generic) : type;
    return List.of(double.class, Double.class, int.class, Integer.class).contains(bare)
        || ENDS.contains(bare)
        || bare == OptionalInt.class
        || bare == OptionalDouble.class
        || bare == double[].class;
  }

  private ObjectNode of(Type type) throws IOException {
    ObjectNode schema = MAPPER.createObjectNode();
    if (type instanceof ParameterizedType generic) {
      ObjectNode inner = of(argument(generic));
      if (generic.getRawType() == Optional.class) {
        schema.putArray("anyOf").add(inner).addObject().put("type", "null");
      } else if (generic.getRawType() == List.class) {
        schema.put("type", "array").set("items", inner);
      } else {
        throw new AssertionError("say here how a " + type + " is written");
      }
    } else if (type == double[].class) {
      schema.put("type", "array").putObject("items").put("type", "number");
    } else if (type == double.class || type == Double.class) {
      schema.put("type", "number");
    } else if (type == int.class || type == long.class || type == Integer.class) {
      schema.put("type", "integer");
    } else if (type == OptionalInt.class) {
      schema.putArray("type").add("integer").add("null");
    } else if (type == OptionalDouble.class) {
      schema.putArray("type").add("number").add("null");
    } else if (type == boolean.class || type == Boolean.class) {
      schema.put("type", "boolean");
    } else if (type == String.class) {
      schema.put("type", "string");
    } else if (type == LocalDate.class) {
      schema.put("type", "string").put("format", "date");
    } else if (type instanceof Class<?> known && known.isEnum()) {
      ArrayNode values = schema.putArray("enum");
      for (Object constant : known.getEnumConstants()) {
        values.add(MAPPER.readTree(JsonView.line(new Written(constant))).get("value"));
      }
    } else if (type instanceof Class<?> known && known.isRecord()) {
      schema.put("$ref", "#/$defs/" + known.getSimpleName());
      if (!definitions.has(known.getSimpleName())) {
        definitions.putObject(known.getSimpleName());
        definitions.set(known.getSimpleName(), object(known));
      }
    } else {
      throw new AssertionError("say here how a " + type + " is written");
    }
    return schema;
  }

  /** What the JSON view writes stands as the one value of a record. */
  private record Written(Object value) {}

  private static Type argument(ParameterizedType generic) {
    return generic.getActualTypeArguments()[0];
  }

  /** The first sentence of a record's javadoc under the blank name, and its parameters. */
  private static Map<String, String> javadoc(Class<?> type) throws IOException {
    Class<?> outer = type.getNestHost();
    String source = Files.readString(SOURCES.resolve(outer.getName().replace('.', '/') + ".java"));
    Matcher comment =
        Pattern.compile(
                "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*public record " + type.getSimpleName() + "\\(",
                Pattern.DOTALL)
            .matcher(source);
    if (!comment.find()) {
      throw new AssertionError("no javadoc for " + type);
    }
    String text =
        comment
            .group(1)
            .lines()
            .map(line -> line.strip().replaceFirst("^\\*\\s?", ""))
            .collect(Collectors.joining(" "))
            .replaceAll("\\{@\\w+ ([^}]*)}", "$1")
            .replaceAll("<[^>]*>", "");
    String[] parts = text.split("@param ");
    Map<String, String> words = new LinkedHashMap<>();
    words.put("", plain(parts[0]));
    for (int i = 1; i < parts.length; i++) {
      String[] named = parts[i].strip().split("\\s", 2);
      words.put(named[0], named.length > 1 ? plain(named[1]) : "");
    }
    return words;
  }

  private static String plain(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
