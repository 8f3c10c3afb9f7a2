package swardcase.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Items;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;

/** Reads JSON text into the nodes that YAML is read into: numbers as written, keys once. */
public final class JsonTree {

  private static final JsonFactory JSON =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(ReadLimits.NESTED_KEYS)
                  .maxNameLength(ReadLimits.NAME_CHARACTERS)
                  .maxNumberLength(ReadLimits.DIGITS)
                  .maxStringLength(ReadLimits.CHARACTERS)
                  .build())
          .build();

  private final String name;
  private final String form;
  private final boolean byLine;

  private JsonTree(String name, String form, boolean byLine) {
    this.name = name;
    this.form = form;
    this.byLine = byLine;
  }

  /** The entries of a farm's document, or empty and a fault. */
  public static Optional<Entries> find(String name, String text, Faults faults) {
    return new JsonTree(name, "{\"farm\": ...}", false).find(text, faults);
  }

  /** The entries of a map, each with its line, and with lists as long as a table; or a fault. */
  public static Optional<Entries> findByLine(String name, String text, Faults faults) {
    return new JsonTree(name, "{\"type\": \"FeatureCollection\", ...}", true).find(text, faults);
  }

  private Optional<Entries> find(String text, Faults faults) {
    try (JsonParser parser = JSON.createParser(text)) {
      JsonToken first = parser.nextToken();
      Node top = first == null ? null : node(parser, 0);
      if (top instanceof Entries entries && parser.nextToken() == null) {
        return Optional.of(entries);
      }
      faults.add(name, "must be one JSON document: " + form);
    } catch (TooMuchException beyond) {
      beyond.addTo(faults);
    } catch (JsonProcessingException broken) {
      int line = byLine && broken.getLocation() != null ? broken.getLocation().getLineNr() : 0;
      String rule = "must be JSON that can be read: " + broken.getOriginalMessage();
      faults.add(new Spot(name, line), "", rule, "");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return Optional.empty();
  }

  private Spot at(JsonParser parser) {
    return new Spot(name, byLine ? parser.currentTokenLocation().getLineNr() : 0);
  }

  private Node node(JsonParser parser, int depth) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> entries(parser, depth);
      case START_ARRAY -> items(parser, depth);
      case VALUE_STRING -> new Scalar(at(parser), parser.getText().strip(), Form.QUOTED);
      case VALUE_NULL -> new Scalar(at(parser), "", Form.PLAIN);
      case VALUE_TRUE -> new Scalar(at(parser), "yes", Form.PLAIN);
      case VALUE_FALSE -> new Scalar(at(parser), "no", Form.PLAIN);
      default -> new Scalar(at(parser), parser.getText(), Form.PLAIN);
    };
  }

  private Entries entries(JsonParser parser, int depth) throws IOException {
    Map<String, Entry> entries = new LinkedHashMap<>();
    Spot at = at(parser);
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName().strip();
      refuse(
          entries.size() == ReadLimits.KEYS, at, key, ReadLimits.KEYS + " keys beside each other");
      Spot keyAt = at(parser);
      parser.nextToken();
      entries.put(key, new Entry(keyAt, node(parser, depth + 1)));
    }
    return new Entries(at, entries);
  }

  /** The lists right below the document are tables. */
  private Items items(JsonParser parser, int depth) throws IOException {
    String key = String.valueOf(parser.currentName());
    Spot at = at(parser);
    int most = depth == 1 || byLine ? ReadLimits.ROWS : ReadLimits.ITEMS;
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      refuse(items.size() == most, at, key, most + " items");
      items.add(node(parser, depth + 1));
    }
    return new Items(at, List.copyOf(items));
  }

  private static void refuse(boolean beyond, Spot at, String key, String limit) {
    TooMuchException.refuse(beyond, at, key, "must not have more than " + limit);
  }
}
