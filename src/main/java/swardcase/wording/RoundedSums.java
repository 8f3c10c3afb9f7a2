package swardcase.wording;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.check.Check;

/**
 * Rounding from the top down: the total is rounded first, then its parts so that they add up to it
 * as printed.
 *
 * <p>Every part is rounded to the unit; then as many as are needed, those whose rounding moved them
 * farthest the other way, go one unit further (the method of the largest remainder). A part ends
 * less than a unit from its value and keeps its sign, and one that is nothing stays nothing. 1,400
 * + 1,400 + 1,300 = 4,100 is printed by the thousand as 2,000 + 1,000 + 1,000 = 4,000: of equals
 * the first moves. A rounded part may be the total of parts of its own.
 */
public final class RoundedSums {

  private static final double NOISE = 1e-6;

  private RoundedSums() {}

  /** The nearest multiple of the unit, halves away from zero as {@link Words#rounded} has it. */
  public static double total(double value, double unit) {
    return units(value, unit) * unit;
  }

  /**
   * The parts as multiples of the unit that add up to the total.
   *
   * @param total a multiple of the unit, at most a unit from the sum of the parts; only if it is a
   *     whole unit from it may a part end a whole unit from its value, one of nothing last of all
   * @param parts as they are, not rounded
   * @param unit more than zero; sums are exact to the last bit if it is a whole number
   */
  public static double[] parts(double total, double[] parts, double unit) {
    long[] units = new long[parts.length];
    long missing = units(total, unit);
    double sum = 0;
    for (int i = 0; i < parts.length; i++) {
      units[i] = units(parts[i], unit);
      missing -= units[i];
      sum += parts[i];
    }
    Check.that(
        Math.abs(total / unit - Math.rint(total / unit)) < NOISE,
        "a rounded total must be a multiple of %s, but was %s",
        unit,
        total);
    Check.that(
        Math.abs(total - sum) <= unit * (1 + NOISE) && (parts.length > 0 || missing == 0),
        "a rounded total must be at most %s from the sum of its parts, but they were %s and %s",
        unit,
        total,
        sum);
    long way = Long.signum(missing);
    Comparator<Integer> nothingLast = Comparator.comparing(i -> parts[i] == 0);
    List<Integer> order =
        IntStream.range(0, parts.length)
            .boxed()
            .sorted(nothingLast.thenComparing(i -> way * (units[i] - parts[i] / unit)))
            .toList();
    for (int i = 0; i < Math.abs(missing); i++) {
      units[order.get(i)] += way;
    }
    double[] rounded = new double[parts.length];
    for (int i = 0; i < rounded.length; i++) {
      rounded[i] = units[i] * unit;
    }
    return rounded;
  }

  private static long units(double value, double unit) {
    Check.positive(unit, "unit");
    Check.that(Double.isFinite(value), "a number to round must be finite, but was %s", value);
    return Math.round(Math.abs(value) / unit) * (long) Math.signum(value);
  }
}
