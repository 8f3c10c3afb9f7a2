package swardcase.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * The register of every uncertain scalar of a farm, each with its place in the flat array that the
 * outcome function reads. A run with other assumptions is the same function with another array.
 */
public final class Inputs {

  private final List<Assumption> assumptions = new ArrayList<>();
  private final Map<Integer, String> sharedNames = new TreeMap<>();
  private final Set<Integer> severalUse = new TreeSet<>();

  /**
   * Enters a number and gives its place. A number that is already there (the same in all parts) is
   * not entered twice, so that two calculators which use one table row share one uncertainty.
   */
  public int add(Assumption assumption) {
    Check.notNull(assumption, "assumption");
    int known = assumptions.indexOf(assumption);
    if (known >= 0) {
      return known;
    }
    assumptions.add(assumption);
    return assumptions.size() - 1;
  }

  /**
   * Enters a number of an action. If another action has the same number from the same source, the
   * two share it: the price of seed is one doubt, whatever it is sown by.
   */
  public int addShared(Assumption assumption, String name, String action) {
    for (int i = 0; i < assumptions.size(); i++) {
      String known = assumptions.get(i).name();
      if (known.startsWith(name + ": ") && assumptions.get(i).equals(assumption.named(known))) {
        severalUse.add(i);
        return i;
      }
    }
    int place = add(assumption.named(name + ": " + action));
    sharedNames.put(place, name);
    return place;
  }

  /** Names that say for which actions a number holds: none if for all, "and others" if for some. */
  Inputs withShortNames() {
    sharedNames.forEach(
        (place, name) -> {
          Assumption shared = assumptions.get(place);
          if (Collections.frequency(sharedNames.values(), name) == 1) {
            assumptions.set(place, shared.named(name));
          } else if (severalUse.contains(place)) {
            assumptions.set(place, shared.named(shared.name() + ", and others"));
          }
        });
    return this;
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
