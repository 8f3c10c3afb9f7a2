package swardcase.page;

import java.util.Optional;
import swardcase.chance.Range;
import swardcase.wording.KeyWords;

/**
 * A number of the farm that can be moved on the page.
 *
 * @param key names it in requests, such as {@code prices.net_value_per_lamb}
 * @param name the user's own name of what it belongs to, such as a mob; blank if there is none
 * @param unit unit of the number
 * @param now as the farm has it; empty where it has none, such as a budget without limit
 * @param inPercent whether the whole range is moved by so many per cent; else it is set anew
 * @param low the least it can be moved to, in per cent or in its unit
 * @param high the most
 * @param step between two positions
 * @param to where the user has moved it; empty if it stands as the files have it
 */
public record Lever(
    String key,
    String name,
    String unit,
    Optional<Range> now,
    boolean inPercent,
    double low,
    double high,
    double step,
    Optional<Double> to) {

  /** What it is called. */
  String text() {
    String inFile = name.isEmpty() ? key : key.replaceAll("\\..*\\.", "."); // without the name
    return new KeyWords("key." + inFile, name).text();
  }
}
