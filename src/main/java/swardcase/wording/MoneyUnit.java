package swardcase.wording;

import java.util.stream.DoubleStream;

/**
 * The one unit to which all money of a farm is rounded, so that what adds up does so in print.
 *
 * <p>It is the largest power of ten that is at most a twentieth of the largest mean sum of one
 * paddock, its cost or its gain, up or down: sums of 46,000 and 18,000 have a unit of 1,000, one of
 * 900 a unit of 10. It is never less than 1.
 */
public final class MoneyUnit {

  private static final double LARGEST = 20;

  private MoneyUnit() {}

  /** A power of ten, 1 or more, for these sums. */
  public static double of(DoubleStream sums) {
    double most = sums.map(Math::abs).max().orElse(0) / LARGEST;
    return most < 10 ? 1 : Math.pow(10, Math.floor(Math.log10(most) + 1e-12));
  }
}
