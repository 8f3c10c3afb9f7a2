package swardcase.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import swardcase.check.Check;

/**
 * The register of every uncertain scalar of a farm, each with its place in the flat array that the
 * outcome function reads. A run with other assumptions is the same function with another array.
 */
public final class UncertainNumbers {

  /** What {@link #paddock} gives for a number of the whole farm. */
  public static final int WHOLE_FARM = -1;

  private static final String ACTIONS_FOLLOW = ": ";

  private final List<Assumption> assumptions = new ArrayList<>();
  private final List<Integer> paddocks = new ArrayList<>();
  private final Map<Assumption, Integer> places = new HashMap<>();
  private final Map<Assumption, Integer> placesOfShared = new HashMap<>();
  private final Map<Integer, String> sharedNames = new TreeMap<>();
  private final Set<Integer> severalUse = new TreeSet<>();

  /**
   * Enters a number and gives its place. A number that is already there (the same in all parts) is
   * not entered twice, so that two calculators which use one table row share one uncertainty.
   */
  public int add(Assumption assumption) {
    return add(assumption, WHOLE_FARM);
  }

  /** Enters a number that is read for one paddock alone, unless it is entered elsewhere as well. */
  public int addOf(int paddock, Assumption assumption) {
    return add(assumption, paddock);
  }

  private int add(Assumption assumption, int paddock) {
    Check.notNull(assumption, "assumption");
    Integer known = places.get(assumption);
    if (known != null) {
      if (paddocks.get(known) != paddock) {
        paddocks.set(known, WHOLE_FARM);
      }
      return known;
    }
    assumptions.add(assumption);
    paddocks.add(paddock);
    int place = assumptions.size() - 1;
    remember(place);
    return place;
  }

  /** A name may hold the mark that actions follow more than once. */
  private void remember(int place) {
    Assumption assumption = assumptions.get(place);
    String name = assumption.name();
    places.putIfAbsent(assumption, place);
    for (int at = name.indexOf(ACTIONS_FOLLOW); at > 0; at = name.indexOf(ACTIONS_FOLLOW, at + 1)) {
      placesOfShared.putIfAbsent(assumption.named(name.substring(0, at)), place);
    }
  }

  /**
   * Enters a number of an action. If another action has the same number from the same source, the
   * two share it: the price of seed is one doubt, whatever it is sown by.
   */
  public int addShared(Assumption assumption, String name, String action) {
    Integer known = placesOfShared.get(assumption.named(name));
    if (known != null) {
      severalUse.add(known);
      paddocks.set(known, WHOLE_FARM);
      return known;
    }
    int place = add(assumption.named(name + ACTIONS_FOLLOW + action));
    sharedNames.put(place, name);
    return place;
  }

  /** Names that say for which actions a number holds: none if for all, "and others" if for some. */
  public UncertainNumbers withShortNames() {
    sharedNames.forEach(
        (place, name) -> {
          Assumption shared = assumptions.get(place);
          if (Collections.frequency(sharedNames.values(), name) == 1) {
            rename(place, name);
          } else if (severalUse.contains(place)) {
            rename(place, shared.name() + ", and others");
          }
        });
    return this;
  }

  private void rename(int place, String name) {
    places.remove(assumptions.get(place));
    assumptions.set(place, assumptions.get(place).named(name));
    remember(place);
  }

  /** Whether a number is read for this paddock alone. */
  public boolean isOf(int paddock, int index) {
    return paddocks.get(index) == paddock;
  }

  /** The paddock that alone reads a number, or {@link #WHOLE_FARM}. */
  public int paddock(int index) {
    return paddocks.get(index);
  }

  /** Name of a number without the actions it belongs to. */
  public String nameWithoutActions(int index) {
    return sharedNames.getOrDefault(index, assumptions.get(index).name());
  }

  /** How many there are. */
  public int size() {
    return assumptions.size();
  }

  /** The number at a place. */
  public Assumption get(int index) {
    return assumptions.get(index);
  }

  /** All numbers in the order of their places. */
  public List<Assumption> all() {
    return List.copyOf(assumptions);
  }

  /** A fresh array with every number at its likely value. */
  public double[] likely() {
    return assumptions.stream().mapToDouble(Assumption::likely).toArray();
  }
}
