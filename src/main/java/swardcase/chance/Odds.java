package swardcase.chance;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Reads a chance from a range whose ends are passed about one time in twenty on each side: each
 * side of the likely value is taken for half of a normal distribution (inferred).
 *
 * <p>{@code Range.of(-1, 2, 9)}: zero lies two thirds of the way down, 2 / 3 x 1.645 = 1.10
 * standard deviations, so the chance of more than zero is 0.86.
 */
public final class Odds {

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final double Z = NORMAL.inverseCumulativeProbability(0.95);

  private Odds() {}

  /** The chance that the number is above {@code threshold}, 0 to 1. */
  public static double above(Range range, double threshold) {
    double distance = threshold - range.likely();
    double side = distance < 0 ? range.likely() - range.low() : range.high() - range.likely();
    if (distance == 0) {
      return side == 0 ? 0 : 0.5;
    }
    if (side == 0) {
      return distance < 0 ? 1 : 0;
    }
    return 1 - NORMAL.cumulativeProbability(Z * distance / side);
  }
}
