package swardcase.wording;

import java.util.List;
import swardcase.chance.Drawn;

/**
 * The one unit to which all money of a farm is rounded, so that what adds up does so in print.
 *
 * <p>It is the {@link Words#step(Drawn)} of the plan's gain: a gain of 24,312 (8,456 to 41,234) has
 * a unit of 1,000 and one of 102,345 (101,900 to 102,800) a unit of 100. It is never less than 1.
 */
public final class MoneyUnit {

  private MoneyUnit() {}

  /**
   * A power of ten, 1 or more.
   *
   * @param gain of the plan over keeping everything
   * @param options gains of single options; their largest mean, up or down, stands for a plan that
   *     keeps everything and so gains exactly nothing: −3,456 has a unit of 100
   */
  public static double of(Drawn gain, List<Drawn> options) {
    double largest = options.stream().mapToDouble(each -> Math.abs(each.mean())).max().orElse(0);
    boolean keepsAll = gain.isExact() && gain.mean() == 0;
    return Math.max(1, keepsAll ? Words.step(-largest, largest) : Words.step(gain));
  }
}
