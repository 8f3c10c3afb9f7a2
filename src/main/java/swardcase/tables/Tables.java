package swardcase.tables;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.PastureQuality;

/**
 * All reference data, loaded once and handed down.
 *
 * @param cultivars by name
 * @param districts by name
 * @param pastureQuality by profile, twelve months each
 * @param supplements by name
 * @param dryStock stock other than joined ewes, by class
 * @param parameters every scalar of the calculators, by key such as {@code dose.leaf-share}
 * @param actions in the order of the table
 * @param sources by key
 * @param overridden what a user's table replaced, in words, in order
 */
public record Tables(
    SortedMap<String, Cultivar> cultivars,
    SortedMap<String, District> districts,
    SortedMap<String, List<PastureQuality>> pastureQuality,
    SortedMap<String, SupplementRow> supplements,
    SortedMap<String, DryStock> dryStock,
    SortedMap<String, Assumption> parameters,
    List<Action> actions,
    SortedMap<String, Source> sources,
    List<String> overridden) {

  /** Key of the chance that clover of unknown formononetin is high in it. */
  public static final String UNKNOWN_HIGH_CHANCE = "stand.unknown-high-chance";

  /** Closes every part against change. */
  public Tables {
    cultivars = Collections.unmodifiableSortedMap(cultivars);
    districts = Collections.unmodifiableSortedMap(districts);
    pastureQuality = Collections.unmodifiableSortedMap(pastureQuality);
    supplements = Collections.unmodifiableSortedMap(supplements);
    dryStock = Collections.unmodifiableSortedMap(dryStock);
    parameters = Collections.unmodifiableSortedMap(parameters);
    actions = List.copyOf(actions);
    sources = Collections.unmodifiableSortedMap(sources);
    overridden = List.copyOf(overridden);
  }

  /** The tables as they hold for a farm: with the chance of strong clover of its district. */
  public Tables in(Farm farm) {
    District district = districts.get(farm.feedYear().growthName());
    if (district == null || district.unknownHighChance().isEmpty()) {
      return this;
    }
    SortedMap<String, Assumption> there = new TreeMap<>(parameters);
    there.put(UNKNOWN_HIGH_CHANCE, district.unknownHighChance().get());
    return new Tables(
        cultivars,
        districts,
        pastureQuality,
        supplements,
        dryStock,
        there,
        actions,
        sources,
        overridden);
  }

  /** The cultivar of this name, which must exist. */
  public Cultivar cultivar(String name) {
    return get(cultivars, name, "cultivar");
  }

  /** The sources of a row, from its keys with semicolons between; none for a blank cell. */
  public List<Source> sourcesOf(String keys) {
    return Arrays.stream(keys.split(";"))
        .map(String::strip)
        .filter(key -> !key.isEmpty())
        .map(key -> get(sources, key, "source"))
        .toList();
  }

  /** The parameter with this key, which must exist. */
  public Assumption parameter(String key) {
    return get(parameters, key, "parameter");
  }

  /** The likely value of the parameter with this key, which must exist. */
  public double likely(String key) {
    return parameter(key).likely();
  }

  private static <T> T get(Map<String, T> map, String key, String what) {
    T found = map.get(key);
    Check.that(found != null, "there is no %s '%s' in the tables", what, key);
    return found;
  }
}
