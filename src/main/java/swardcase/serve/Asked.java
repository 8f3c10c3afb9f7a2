package swardcase.serve;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All that the user has changed, as every question carries it: the server remembers none of it.
 *
 * @param levers where numbers were moved to, by the key of a {@link swardcase.page.Lever}
 * @param fixes choices made beforehand, such as {@code spray-fallow@2028}, by paddock
 */
record Asked(SortedMap<String, Double> levers, SortedMap<String, String> fixes) {

  /** Nothing changed. */
  static final Asked NOTHING = new Asked(new TreeMap<>(), new TreeMap<>());

  /** Whether the farm is as its files have it, and nothing was chosen beforehand. */
  boolean isNothing() {
    return levers.isEmpty() && fixes.isEmpty();
  }

  /** The choices made beforehand as the command line takes them. */
  List<String> typedFixes() {
    return fixes.entrySet().stream().map(fix -> fix.getKey() + "=" + fix.getValue()).toList();
  }
}
