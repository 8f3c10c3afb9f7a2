package swardcase.chance;

import org.apache.commons.math3.special.Beta;
import swardcase.check.Check;

/**
 * The PERT distribution of a {@link Range}: a beta distribution stretched over low to high, with
 * its mode at the likely value.
 *
 * <p>With the usual weight of 4 on the likely value, α = 1 + 4(likely − low)/(high − low) and β = 1
 * + 4(high − likely)/(high − low). Then the mean is (low + 4 likely + high)/6 and the variance is
 * (mean − low)(high − mean)/7, both exact. The often quoted variance ((high − low)/6)² is an
 * approximation: for 2, 5, 8 it gives 1 where the exact value is 9/7 = 1.2857.
 *
 * <p>The quantile function is tabulated when the distribution is built, so that {@link
 * #quantile(double)} is a look-up: the middle of the distribution in 96 cells of equal probability,
 * and each tail (1/32 of the probability) in 32 cells of equal u^(1/α) or (1 − u)^(1/β), in which
 * the quantile is nearly straight. Between nodes it is the cubic that has the right value and the
 * right slope at both (the slope of a quantile is one over the density). The error stays below one
 * part in a hundred thousand of the width. A value known exactly has a quantile function that is
 * that value everywhere.
 */
public final class Pert {

  private static final double WEIGHT = 4;
  private static final double TAIL = 1.0 / 32;
  private static final int TAIL_CELLS = 32;
  private static final int MIDDLE_CELLS = 96;
  private static final double MIDDLE_STEP = (1 - 2 * TAIL) / MIDDLE_CELLS;
  private static final double PRECISION = 1e-12;

  private final Range range;
  private final double inverseAlpha;
  private final double inverseBeta;
  private final double lowerScale;
  private final double upperScale;
  private final double[] lower;
  private final double[] middle;
  private final double[] upper;

  private Pert(Range range) {
    this.range = Check.notNull(range, "range of a PERT distribution");
    double width = range.high() - range.low();
    double mode = range.isExact() ? 0.5 : (range.likely() - range.low()) / width;
    double alpha = 1 + WEIGHT * mode;
    double beta = 1 + WEIGHT * (1 - mode);
    this.inverseAlpha = 1 / alpha;
    this.inverseBeta = 1 / beta;
    this.lowerScale = TAIL_CELLS / Math.pow(TAIL, inverseAlpha);
    this.upperScale = TAIL_CELLS / Math.pow(TAIL, inverseBeta);
    if (range.isExact()) {
      this.lower = new double[0];
      this.middle = new double[0];
      this.upper = new double[0];
    } else {
      this.lower = tail(alpha, beta, lowerScale);
      this.middle = middle(alpha, beta, lower[2 * TAIL_CELLS]);
      this.upper = tail(beta, alpha, upperScale);
    }
  }

  /** The PERT distribution of a range. */
  public static Pert of(Range range) {
    return new Pert(range);
  }

  /**
   * The value that a draw stays below with probability {@code u}. Allocates nothing.
   *
   * @param u from 0 (the low end) to 1 (the high end)
   */
  public double quantile(double u) {
    if (middle.length == 0) {
      return range.likely();
    }
    double x;
    if (u < TAIL) {
      x = between(lower, Math.pow(u, inverseAlpha) * lowerScale);
    } else if (u > 1 - TAIL) {
      x = 1 - between(upper, Math.pow(1 - u, inverseBeta) * upperScale);
    } else {
      x = between(middle, (u - TAIL) / MIDDLE_STEP);
    }
    return range.low() + x * (range.high() - range.low());
  }

  /** The cubic between two nodes; a table holds value and slope per cell of each node in turn. */
  private static double between(double[] table, double position) {
    int cell = Math.min((int) position, table.length / 2 - 2);
    double t = position - cell;
    double left = table[2 * cell];
    double slope = table[2 * cell + 1];
    double rise = table[2 * cell + 2] - left;
    double end = table[2 * cell + 3];
    return left + t * (slope + t * (3 * rise - 2 * slope - end + t * (slope + end - 2 * rise)));
  }

  /** Quantiles of Beta(a, b) at probabilities (j/scale)^a, j = 0 to {@link #TAIL_CELLS}. */
  private static double[] tail(double a, double b, double scale) {
    double logBeta = Beta.logBeta(a, b);
    double[] table = new double[2 * (TAIL_CELLS + 1)];
    table[1] = Math.exp((logBeta + Math.log(a)) / a) / scale;
    for (int j = 1; j <= TAIL_CELLS; j++) {
      double before = table[2 * j - 2];
      double x = inverse(Math.pow(j / scale, a), a, b, logBeta, before, before + table[2 * j - 1]);
      table[2 * j] = x;
      table[2 * j + 1] = a * Math.pow(j / scale, a - 1) / scale / density(x, a, b, logBeta);
    }
    return table;
  }

  private static double[] middle(double a, double b, double first) {
    double logBeta = Beta.logBeta(a, b);
    double[] table = new double[2 * (MIDDLE_CELLS + 1)];
    double x = first;
    for (int j = 0; j <= MIDDLE_CELLS; j++) {
      x = j == 0 ? first : inverse(TAIL + j * MIDDLE_STEP, a, b, logBeta, x, x + table[2 * j - 1]);
      table[2 * j] = x;
      table[2 * j + 1] = MIDDLE_STEP / density(x, a, b, logBeta);
    }
    return table;
  }

  /**
   * Newton's method from {@code guess}, kept between {@code above} and 1. A step of a millionth is
   * the last, for the error after a step is of the order of its square.
   */
  private static double inverse(
      double u, double a, double b, double logBeta, double above, double guess) {
    double low = above;
    double high = 1;
    double x = guess < high ? guess : (low + high) / 2;
    for (int i = 0; i < 60; i++) {
      double excess = Beta.regularizedBeta(x, a, b, PRECISION) - u;
      if (excess > 0) {
        high = x;
      } else {
        low = x;
      }
      double next = x - excess / density(x, a, b, logBeta);
      if (!(next >= low && next <= high)) {
        next = (low + high) / 2;
      }
      double moved = Math.abs(next - x);
      x = next;
      if (moved <= 1e-6 * x) {
        return x;
      }
    }
    return x;
  }

  private static double density(double x, double a, double b, double logBeta) {
    return Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) - logBeta);
  }
}
