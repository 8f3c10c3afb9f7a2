package swardcase.money;

import java.util.OptionalDouble;
import swardcase.check.Check;

/**
 * Modified internal rate of return: one figure also where the flows change sign several times.
 *
 * <p>MIRR = (future value of the inflows at the reinvestment rate / present value of the outflows
 * at the finance rate)^(1/n) - 1, n the number of periods, one fewer than the flows (the MIRR
 * function of spreadsheets, and numpy-financial). Flows of -70,000, 22,000, 25,000, 28,000 and
 * 31,000, financed at 10 % and reinvested at 12 %, give 15.5 %.
 */
public final class ModifiedRate {

  private ModifiedRate() {}

  /** The rate per year as a fraction; empty unless there is both an inflow and an outflow. */
  public static OptionalDouble of(double[] flows, double financeRate, double reinvestRate) {
    Check.that(financeRate > -1, "finance rate must be above -1, but was %s", financeRate);
    Check.that(reinvestRate > -1, "reinvestment rate must be above -1, but was %s", reinvestRate);
    double inflows = 0;
    double outflows = 0;
    for (int t = flows.length - 1; t >= 0; t--) {
      outflows = outflows / (1 + financeRate) + Math.max(0, -flows[t]);
    }
    for (double flow : flows) {
      inflows = inflows * (1 + reinvestRate) + Math.max(0, flow);
    }
    if (!(inflows > 0 && outflows > 0)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Math.pow(inflows / outflows, 1.0 / (flows.length - 1)) - 1);
  }
}
