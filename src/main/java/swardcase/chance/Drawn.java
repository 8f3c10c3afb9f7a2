package swardcase.chance;

import swardcase.check.Check;

/**
 * A result over the common draws: its mean, and the values below which 5 and above which 5 of 100
 * draws lie, all in one unit. Of a lopsided result the mean may lie outside these two.
 *
 * <p>Means over the same draws add up, so the parts of a sum are told by theirs. {@code
 * Drawn.of(24000, 8000, 41000)} reads "24,000 on average, 8,000 to 41,000 in 90 of 100 draws".
 *
 * @param mean over the draws, finite
 * @param low passed downwards in 5 draws of 100, finite
 * @param high passed upwards in 5 draws of 100, finite, not below {@code low}
 */
public record Drawn(double mean, double low, double high) {

  /** Checks the order and refuses values that are not finite. */
  public Drawn {
    Check.that(
        Double.isFinite(mean) && Double.isFinite(low) && Double.isFinite(high),
        "mean, low and high must be numbers, but were %s, %s, %s",
        mean,
        low,
        high);
    Check.that(low <= high, "low must not be above high, but they were %s and %s", low, high);
    mean = mean + 0d;
    low = low + 0d;
    high = high + 0d;
  }

  /** A result from its three values. */
  public static Drawn of(double mean, double low, double high) {
    return new Drawn(mean, low, high);
  }

  /** A result that is the same in every draw. */
  public static Drawn exactly(double value) {
    return new Drawn(value, value, value);
  }

  /** True if it is the same in every draw, tails of 5 in 100 aside. */
  public boolean isExact() {
    return low == high && mean == low;
  }

  /** The result in another unit: every value times {@code factor}, which must not be negative. */
  public Drawn times(double factor) {
    Check.notNegative(factor, "factor");
    return new Drawn(mean * factor, low * factor, high * factor);
  }
}
