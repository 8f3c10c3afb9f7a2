package swardcase.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import swardcase.check.Check;

/**
 * Every uncertain number of a farm, each under a key and at a place in the flat array that the
 * outcome function reads. The same function at other numbers is the same function with another
 * array. Immutable; {@link Builder} fills it once.
 *
 * <p>Keys read like {@code dose.leaf-share} for a row of the tables, {@code
 * paddock.Long.clover-share} for a number of a paddock and {@code action.crop-2.seed-set} for one
 * of an action. Several keys may lead to one place: actions that have the same number from the same
 * source share it.
 */
public final class UncertainNumbers {

  /** What {@link #paddock} gives for a number that is read for more than one paddock. */
  public static final int WHOLE_FARM = -1;

  private final List<Assumption> numbers;
  private final List<String> doubts;
  private final int[] paddocks;
  private final Map<String, Integer> places;

  private UncertainNumbers(
      List<Assumption> numbers, List<String> doubts, int[] paddocks, Map<String, Integer> places) {
    this.numbers = List.copyOf(numbers);
    this.doubts = List.copyOf(doubts);
    this.paddocks = paddocks;
    this.places = Map.copyOf(places);
  }

  /**
   * The place of a number, from 0.
   *
   * @throws IllegalArgumentException if no number has this key
   */
  public int place(String key) {
    Integer place = places.get(key);
    Check.that(place != null, "no uncertain number has the key %s", key);
    return place;
  }

  /** The place of a number that a farm need not have. */
  public OptionalInt find(String key) {
    Integer place = places.get(key);
    return place == null ? OptionalInt.empty() : OptionalInt.of(place);
  }

  /** The places that have a key which begins so, such as {@code price.}. */
  public Set<Integer> placesOf(String prefix) {
    return places.entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(prefix))
        .map(Map.Entry::getValue)
        .collect(Collectors.toSet());
  }

  /** Whether a number is read for this paddock alone. */
  public boolean isOf(int paddock, int place) {
    return paddocks[place] == paddock;
  }

  /** The paddock that alone reads a number, from 0, or {@link #WHOLE_FARM}. */
  public int paddock(int place) {
    return paddocks[place];
  }

  /**
   * The doubt a number is drawn by, in words: numbers with the same doubt rise and fall together.
   * Its own name, unless the tables put it into a group with others.
   */
  public String doubt(int place) {
    return doubts.get(place);
  }

  /** How many there are. */
  public int size() {
    return numbers.size();
  }

  /** The number at a place. */
  public Assumption get(int place) {
    return numbers.get(place);
  }

  /** All numbers in the order of their places. */
  public List<Assumption> all() {
    return numbers;
  }

  /** A fresh array with every number at its likely value, each in its own unit. */
  public double[] likely() {
    return numbers.stream().mapToDouble(Assumption::likely).toArray();
  }

  /** Takes the numbers of a farm one by one; their order is that of their places. */
  public static final class Builder {

    private final List<Assumption> numbers = new ArrayList<>();
    private final List<Integer> paddocks = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<Integer, List<String>> actions = new HashMap<>();

    /** Enters a number; one whose key is there already is not entered again. */
    public Builder add(String key, Assumption number) {
      return addOf(WHOLE_FARM, key, number);
    }

    /** Enters a number that is read for one paddock alone. */
    public Builder addOf(int paddock, String key, Assumption number) {
      Check.notNull(number, key);
      if (places.putIfAbsent(key, numbers.size()) == null) {
        numbers.add(number);
        paddocks.add(paddock);
      }
      return this;
    }

    /**
     * Enters a number of an action. Where another action has the same number in the same doubt from
     * the same source, the two share one place: the price of seed is one number, whatever it is
     * sown by.
     *
     * @param action name of the action, for the number's own name
     */
    public Builder addOfAction(String key, String action, Assumption number) {
      Assumption nameless = number.named(number.doubt().isBlank() ? number.name() : number.doubt());
      for (int place : actions.keySet()) {
        if (numbers.get(place).equals(nameless)) {
          places.putIfAbsent(key, place);
          actions.get(place).add(action);
          return this;
        }
      }
      actions.put(numbers.size(), new ArrayList<>(List.of(action)));
      return add(key, nameless);
    }

    /** The numbers; those of actions have names that say for which they hold. */
    public UncertainNumbers build() {
      List<String> doubts = numbers.stream().map(Assumption::name).toList();
      List<Assumption> named = new ArrayList<>(numbers);
      actions.forEach(
          (place, of) -> {
            String doubt = doubts.get(place);
            boolean alone =
                actions.keySet().stream()
                    .noneMatch(p -> !p.equals(place) && doubts.get(p).equals(doubt));
            if (!alone) {
              String others = of.size() > 1 ? ", and others" : "";
              named.set(place, numbers.get(place).named(doubt + ": " + of.get(0) + others));
            }
          });
      return new UncertainNumbers(
          named, doubts, paddocks.stream().mapToInt(Integer::intValue).toArray(), places);
    }
  }
}
