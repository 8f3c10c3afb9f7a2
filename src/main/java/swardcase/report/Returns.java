package swardcase.report;

import java.util.OptionalDouble;
import swardcase.money.BenefitCost;
import swardcase.money.InternalRate;
import swardcase.money.ModifiedRate;
import swardcase.money.Payback;
import swardcase.money.RunningBalance;
import swardcase.outcome.Outcome;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The returns of a cash flow in words.
 *
 * @param irrPercent internal rate of return: a number, {@code none} or {@code several}
 * @param mirrPercent modified internal rate of return at the discount rate, or {@code none}
 * @param paybackYears discounted payback, or {@code over 15}
 * @param peakDebt deepest running balance at the discount rate, a positive number
 * @param benefitCost present value of gains for each unit of action costs, or {@code none}
 */
record Returns(
    String irrPercent,
    String mirrPercent,
    String paybackYears,
    double peakDebt,
    String benefitCost) {

  static Returns of(Outcome outcome, double rate) {
    double[] flows = outcome.cashFlow();
    double[] costs = new double[flows.length];
    double[] gains = new double[flows.length];
    for (int t = 0; t < flows.length; t++) {
      costs[t] = outcome.actionCost(t);
      gains[t] = flows[t] + costs[t];
    }
    InternalRate.Rates rates = InternalRate.of(flows);
    String irr =
        rates.none()
            ? Texts.get("returns.none")
            : rates.several() ? Texts.get("returns.several") : percent(rates.rates().get(0));
    OptionalDouble payback = Payback.discountedYears(rate, flows);
    return new Returns(
        irr,
        orNone(ModifiedRate.of(flows, rate, rate), Returns::percent),
        payback.isPresent()
            ? Words.rounded(payback.getAsDouble(), 1)
            : Texts.get("returns.over", flows.length),
        RunningBalance.peakDebt(rate, flows),
        orNone(BenefitCost.ratio(rate, gains, costs), ratio -> Words.rounded(ratio, 0.1)));
  }

  private static String percent(double rate) {
    return Words.rounded(100 * rate, 1) + " %";
  }

  private static String orNone(OptionalDouble value, java.util.function.DoubleFunction<String> as) {
    return value.isPresent() ? as.apply(value.getAsDouble()) : Texts.get("returns.none");
  }
}
