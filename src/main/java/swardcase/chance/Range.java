package swardcase.chance;

import swardcase.check.Check;

/**
 * A number we do not know exactly: its low end, its likely value and its high end, all in one unit.
 *
 * <p>The ends are meant as the values one would be surprised to see passed (about one time in
 * twenty on each side). {@code Range.of(0.7, 0.9, 1)} reads "0.9, between 0.7 and 1".
 *
 * @param low the low end, finite, not above {@code likely}
 * @param likely the most likely value, finite
 * @param high the high end, finite, not below {@code likely}
 */
public record Range(double low, double likely, double high) {

  /** Checks the order and refuses values that are not finite. */
  public Range {
    Check.that(
        Double.isFinite(low) && Double.isFinite(likely) && Double.isFinite(high),
        "low, likely and high must be numbers, but were %s, %s, %s",
        low,
        likely,
        high);
    Check.that(
        low <= likely && likely <= high,
        "low, likely and high must be in rising order, but were %s, %s, %s",
        low,
        likely,
        high);
    low = low + 0d;
    likely = likely + 0d;
    high = high + 0d;
  }

  /** A range from its three values. */
  public static Range of(double low, double likely, double high) {
    return new Range(low, likely, high);
  }

  /** A value known exactly. */
  public static Range exactly(double value) {
    return new Range(value, value, value);
  }

  /** True if low and high are one value. */
  public boolean isExact() {
    return low == high;
  }

  /** The range in another unit: every value times {@code factor}, which must not be negative. */
  public Range times(double factor) {
    Check.notNegative(factor, "factor");
    return new Range(low * factor, likely * factor, high * factor);
  }
}
