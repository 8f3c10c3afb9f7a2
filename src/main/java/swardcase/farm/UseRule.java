package swardcase.farm;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Who is kept off a paddock, and when.
 *
 * @param who whom, as it is printed: {@code all ewes}, {@code young ewes} or the name of one mob
 * @param mobs places of the mobs that are kept off, in rising order
 * @param when when they are
 */
public record UseRule(String who, List<Integer> mobs, When when) {

  /** All mobs of the farm. */
  public static final String ALL_EWES = "all ewes";

  /** Those that are joined for the first time, where there are several and other mobs beside. */
  public static final String YOUNG_EWES = "young ewes";

  /** When a mob is kept off. */
  public enum When {
    /** From eight weeks before its rams go in until they come out. */
    BEFORE_JOINING("before joining"),
    /** As long as there is green feed in the paddock. */
    WHILE_GREEN("while green");

    private final String label;

    When(String label) {
      this.label = label;
    }

    /** How it is printed. */
    public String label() {
      return label;
    }
  }

  /** Copies the list. */
  public UseRule {
    mobs = List.copyOf(mobs);
  }

  /** Short stable name: {@code keep-off-all-ewes-before-joining}. */
  public String key() {
    String words = "keep off " + who + " " + when.label();
    return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
  }

  /** What is printed: {@code all ewes off before joining}. */
  public String name() {
    return who + " off " + when.label();
  }

  /** Whether a mob is kept off. */
  public boolean keepsOff(int mob) {
    return mobs.contains(mob);
  }

  /** The rules of a farm, those before joining first. A farm without ewes has none. */
  public static List<UseRule> of(Farm farm) {
    List<Mob> mobs = farm.mobs();
    List<UseRule> rules = new ArrayList<>();
    for (When when : When.values()) {
      List<Integer> all = IntStream.range(0, mobs.size()).boxed().toList();
      List<Integer> young = all.stream().filter(g -> mobs.get(g).ageShares().get(0) >= 1).toList();
      if (!all.isEmpty()) {
        rules.add(new UseRule(ALL_EWES, all, when));
      }
      if (young.size() > 1 && young.size() < all.size()) {
        rules.add(new UseRule(YOUNG_EWES, young, when));
      }
      for (int g = 0; g < mobs.size() && mobs.size() > 1; g++) {
        rules.add(new UseRule(mobs.get(g).name(), List.of(g), when));
      }
    }
    return rules;
  }
}
