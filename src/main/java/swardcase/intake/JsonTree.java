package swardcase.intake;

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
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Items;
import swardcase.intake.YamlNode.Scalar;
import swardcase.intake.YamlNode.Spot;

/** Reads JSON text into the nodes that YAML is read into: numbers as written, keys once. */
final class JsonTree {

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

  private final Spot at;

  private JsonTree(Spot at) {
    this.at = at;
  }

  /** The entries of the document, or empty and a fault. */
  static Optional<Entries> find(String name, String text, FaultList faults) {
    Place place = new Place(name, 0, "");
    try (JsonParser parser = JSON.createParser(text)) {
      JsonToken first = parser.nextToken();
      YamlNode top = first == null ? null : new JsonTree(new Spot(name, 0)).node(parser, 0);
      if (top instanceof Entries entries && parser.nextToken() == null) {
        return Optional.of(entries);
      }
      faults.add(place, "must be one JSON document: {\"farm\": ...}", "");
    } catch (TooMuchException beyond) {
      beyond.addTo(faults);
    } catch (JsonProcessingException broken) {
      faults.add(place, "must be JSON that can be read: " + broken.getOriginalMessage(), "");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return Optional.empty();
  }

  private YamlNode node(JsonParser parser, int depth) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> entries(parser, depth);
      case START_ARRAY -> items(parser, depth);
      case VALUE_STRING -> new Scalar(at, parser.getText().strip(), true);
      case VALUE_NULL -> new Scalar(at, "", false);
      case VALUE_TRUE -> new Scalar(at, "yes", false);
      case VALUE_FALSE -> new Scalar(at, "no", false);
      default -> new Scalar(at, parser.getText(), false);
    };
  }

  private Entries entries(JsonParser parser, int depth) throws IOException {
    Map<String, Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName().strip();
      refuse(entries.size() == ReadLimits.KEYS, key, ReadLimits.KEYS + " keys beside each other");
      parser.nextToken();
      entries.put(key, new Entry(at, node(parser, depth + 1)));
    }
    return new Entries(at, entries);
  }

  /** The lists right below the document are tables. */
  private Items items(JsonParser parser, int depth) throws IOException {
    String key = String.valueOf(parser.currentName());
    int most = depth == 1 ? ReadLimits.ROWS : ReadLimits.ITEMS;
    List<YamlNode> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      refuse(items.size() == most, key, most + " items");
      items.add(node(parser, depth + 1));
    }
    return new Items(at, List.copyOf(items));
  }

  private void refuse(boolean beyond, String key, String limit) {
    TooMuchException.refuse(beyond, new Place(at, key), "must not have more than " + limit);
  }
}
