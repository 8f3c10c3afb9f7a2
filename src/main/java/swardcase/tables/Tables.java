package swardcase.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.PastureQuality;
import swardcase.farm.Supplement;

/**
 * All reference data, loaded once and handed down. Look-ups come in pairs: {@code get} must find,
 * {@code find} may not.
 *
 * @param cultivars by name
 * @param districts by name
 * @param pastureQuality by profile, twelve months each
 * @param supplements by name
 * @param dryStock dry sheep equivalents a head, by class of stock
 * @param parameters every scalar of the calculators, by key such as {@code dose.leaf-share}
 * @param actions in the order of the table
 * @param sources by key
 * @param overridden what a user's table replaced, in words, in order
 */
public record Tables(
    SortedMap<String, Cultivar> cultivars,
    SortedMap<String, District> districts,
    SortedMap<String, List<PastureQuality>> pastureQuality,
    SortedMap<String, Supplement> supplements,
    SortedMap<String, Assumption> dryStock,
    SortedMap<String, Assumption> parameters,
    List<Action> actions,
    SortedMap<String, Source> sources,
    List<String> overridden) {

  /** The cultivar of this name, which must exist. */
  public Cultivar cultivar(String name) {
    return get(cultivars, name, "cultivar");
  }

  /** The cultivar of this name, case and surrounding space aside. */
  public Optional<Cultivar> findCultivar(String name) {
    return cultivars.values().stream()
        .filter(cultivar -> cultivar.name().equalsIgnoreCase(name.strip()))
        .findFirst();
  }

  /** The parameter with this key, which must exist. */
  public Assumption parameter(String key) {
    return get(parameters, key, "parameter");
  }

  private static <T> T get(Map<String, T> map, String key, String what) {
    T found = map.get(key);
    Check.that(found != null, "there is no %s '%s' in the tables", what, key);
    return found;
  }
}
