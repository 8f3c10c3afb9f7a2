package swardcase.chance;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import swardcase.check.Check;

/** Where a gain turns into a loss. */
public final class BreakEven {

  private static final int STEPS = 12;
  private static final int MOST_EVALUATIONS = 100;

  private BreakEven() {}

  /**
   * The value nearest to {@code from} at which a function of one number crosses zero: the limits
   * are searched in twelve steps and the nearest step that changes sign is narrowed by Brent's
   * method (1973, Algorithms for Minimization without Derivatives, cited from memory). Two
   * crossings within one step are not seen.
   *
   * @return empty if no step changes sign
   */
  public static OptionalDouble find(
      DoubleUnaryOperator gain, double low, double high, double from) {
    Check.that(low < high, "limits of a break-even must be in rising order");
    double nearest = Double.NaN;
    double before = gain.applyAsDouble(low);
    for (int step = 1; step <= STEPS; step++) {
      double left = low + (high - low) * (step - 1) / STEPS;
      double right = step == STEPS ? high : low + (high - low) * step / STEPS;
      double after = gain.applyAsDouble(right);
      if (before < 0 != after < 0) {
        double root = narrow(gain, left, right, before, after, (high - low) * 1e-6);
        if (!(Math.abs(nearest - from) <= Math.abs(root - from))) {
          nearest = root;
        }
      }
      before = after;
    }
    return Double.isNaN(nearest) ? OptionalDouble.empty() : OptionalDouble.of(nearest);
  }

  private static double narrow(
      DoubleUnaryOperator gain,
      double left,
      double right,
      double atLeft,
      double atRight,
      double to) {
    if (atLeft == 0) {
      return left;
    }
    if (atRight == 0) {
      return right;
    }
    return new BrentSolver(to).solve(MOST_EVALUATIONS, gain::applyAsDouble, left, right);
  }
}
