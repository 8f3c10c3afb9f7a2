package swardcase.serve;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All that the user has changed, as every request carries it: the server remembers none of it.
 *
 * @param levers where numbers were moved to, by the key of a {@link swardcase.page.Lever}
 * @param fixes choices made beforehand, such as {@code spray-fallow@2028}, by paddock
 */
record Asked(SortedMap<String, Double> levers, SortedMap<String, String> fixes) {

  /** Nothing changed. */
  static final Asked NOTHING = new Asked(new TreeMap<>(), new TreeMap<>());

  /** Copies the maps. */
  Asked {
    levers = Collections.unmodifiableSortedMap(new TreeMap<>(levers));
    fixes = Collections.unmodifiableSortedMap(new TreeMap<>(fixes));
  }

  /** The changes of a request; what is not a number or a text is left out. */
  static Asked of(JsonNode request) {
    SortedMap<String, Double> levers = new TreeMap<>();
    for (Map.Entry<String, JsonNode> one : request.path("levers").properties()) {
      if (one.getValue().isNumber()) {
        levers.put(one.getKey(), one.getValue().doubleValue());
      }
    }
    SortedMap<String, String> fixes = new TreeMap<>();
    for (Map.Entry<String, JsonNode> one : request.path("fixes").properties()) {
      if (one.getValue().isTextual()) {
        fixes.put(one.getKey(), one.getValue().textValue());
      }
    }
    return new Asked(levers, fixes);
  }

  /** Whether the farm is as its files have it, and nothing was chosen beforehand. */
  boolean isNothing() {
    return levers.isEmpty() && fixes.isEmpty();
  }

  /** The choices made beforehand as the command line takes them. */
  List<String> typedFixes() {
    List<String> typed = new ArrayList<>();
    fixes.forEach((paddock, choice) -> typed.add(paddock + "=" + choice));
    return typed;
  }
}
