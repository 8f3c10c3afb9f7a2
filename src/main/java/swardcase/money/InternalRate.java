package swardcase.money;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Internal rates of return: the rates at which the net present value is zero (Gitman 2003, p. 348,
 * as cited in the numpy-financial source).
 *
 * <p>Flows that change sign once have at most one such rate above -100 %; flows that change sign
 * more often may have several, or none, and then the rate says nothing on its own. Rates are sought
 * from -99 % to 1,000 % a year: the net present value is evaluated on a grid even in log(1 + r) and
 * each change of sign is refined by Brent's method. A rate at which the value touches zero without
 * crossing it is not found. Flows of -70,000, 12,000, 15,000, 18,000, 21,000 and 26,000 return 8.7
 * %.
 */
public final class InternalRate {

  /** Lowest rate sought, per year. */
  public static final double LOWEST = -0.99;

  /** Highest rate sought, per year. */
  public static final double HIGHEST = 10;

  private static final int STEPS = 1024;
  private static final int MOST_EVALUATIONS = 200;

  private InternalRate() {}

  /**
   * Every rate per year at which the value of {@code flows} changes sign, in rising order: 8 % is
   * 0.08. Where there are several, none of them is "the" return.
   */
  public static List<Double> of(double[] flows) {
    List<Double> found = new ArrayList<>();
    double rate = LOWEST;
    double value = NetPresentValue.of(rate, flows);
    for (int step = 1; step <= STEPS; step++) {
      double nextRate = gridRate(step);
      double next = NetPresentValue.of(nextRate, flows);
      if (value < 0 && next > 0 || value > 0 && next < 0) {
        found.add(root(flows, rate, nextRate));
      } else if (next == 0 && value != 0) {
        found.add(nextRate);
      }
      rate = nextRate;
      value = next;
    }
    return found;
  }

  private static double gridRate(int step) {
    double from = Math.log1p(LOWEST);
    double to = Math.log1p(HIGHEST);
    return Math.expm1(from + (to - from) * step / STEPS);
  }

  private static double root(double[] flows, double low, double high) {
    return new BrentSolver(1e-14, 1e-13)
        .solve(MOST_EVALUATIONS, rate -> NetPresentValue.of(rate, flows), low, high);
  }
}
