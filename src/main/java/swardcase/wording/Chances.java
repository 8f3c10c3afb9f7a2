package swardcase.wording;

/** Chances in words. */
public final class Chances {

  /** What pays less often asks for a word on why it is called sure. */
  private static final double SELDOM = 0.6;

  private Chances() {}

  /** Whether something pays so seldom that a reader asks how it can be sure. */
  static boolean isSeldom(double chancePays) {
    return chancePays < SELDOM;
  }

  /** 0.79 reads {@code 8 of 10}; the ends are said as they are. */
  public static String outOfTen(double chance) {
    if (chance < 0.05) {
      return Texts.get(chance == 0 ? "chance.none" : "chance.few");
    }
    if (chance > 0.95) {
      return Texts.get(chance == 1 ? "chance.all" : "chance.most");
    }
    return Texts.get("chance.ofTen", Math.max(1, Math.min(9, Math.round(10 * chance))));
  }
}
