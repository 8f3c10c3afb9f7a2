package swardcase.wording;

import java.util.List;
import java.util.stream.IntStream;

/** What is printed on every sheet, whatever the farm. */
public final class Cautions {

  private static final int DECISION = 7;

  private Cautions() {}

  /** The cautions of a decision sheet in the order they are printed. */
  public static List<String> all() {
    return numbered("caution.", DECISION);
  }

  private static List<String> numbered(String key, int count) {
    return IntStream.rangeClosed(1, count).mapToObj(n -> Texts.get(key + n)).toList();
  }
}
