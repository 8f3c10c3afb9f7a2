package swardcase.report;

import java.util.List;
import java.util.OptionalDouble;
import swardcase.money.BenefitCost;
import swardcase.money.InternalRate;
import swardcase.money.ModifiedRate;
import swardcase.money.Payback;
import swardcase.outcome.Outcome;

/**
 * The returns of a mean cash flow.
 *
 * @param irr internal rate of return
 * @param mirrPercent modified internal rate of return at the discount rate; empty if there is none
 * @param paybackYears discounted payback; empty if it is not paid back in the years counted
 * @param benefitCost present value of gains for each unit of action costs, own labour among them;
 *     empty without costs
 */
public record Returns(
    Rate irr, OptionalDouble mirrPercent, OptionalDouble paybackYears, OptionalDouble benefitCost) {

  /**
   * A rate that a cash flow may not have, or have several of.
   *
   * @param status whether there is one
   * @param percent the rate, per year; empty unless there is exactly one
   */
  public record Rate(Status status, OptionalDouble percent) {}

  /** How many rates there are. */
  public enum Status {
    /** No rate makes the net present value nil. */
    NONE,
    /** Exactly one does. */
    VALUE,
    /** Several do, so that none of them is the return. */
    SEVERAL
  }

  static Returns of(Outcome outcome, double rate) {
    double[] flows = outcome.cashFlow();
    double[] costs = new double[flows.length];
    double[] gains = new double[flows.length];
    for (int t = 0; t < flows.length; t++) {
      costs[t] = outcome.cost(t);
      gains[t] = flows[t] + costs[t];
    }
    List<Double> rates = InternalRate.of(flows);
    Status status =
        rates.isEmpty() ? Status.NONE : rates.size() > 1 ? Status.SEVERAL : Status.VALUE;
    return new Returns(
        new Rate(
            status,
            percent(
                status == Status.VALUE ? OptionalDouble.of(rates.get(0)) : OptionalDouble.empty())),
        percent(ModifiedRate.of(flows, rate, rate)),
        Payback.discountedYears(rate, flows),
        BenefitCost.ratio(rate, gains, costs));
  }

  private static OptionalDouble percent(OptionalDouble rate) {
    return rate.isPresent() ? OptionalDouble.of(100 * rate.getAsDouble()) : rate;
  }
}
