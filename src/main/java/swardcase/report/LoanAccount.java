package swardcase.report;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import swardcase.farm.Loan;
import swardcase.money.NetPresentValue;
import swardcase.money.RunningBalance;
import swardcase.outcome.Outcome;

/**
 * The plan's account if its costs are borrowed: what is paid for actions in a year, own labour
 * aside, is a loan of their own, cleared by equal payments from the year after. Net present value
 * stays that of the plan without a loan, so that how it is paid for does not decide what is worth
 * doing.
 *
 * @param ratePercent real, per year
 * @param years years of repayment
 * @param borrowed all loans together
 * @param repayments paid in each year counted
 * @param balance the account after each year: gains less repayments, with interest at the discount
 *     rate
 * @param peakDebt its deepest debt, a positive number
 * @param yearPositive calendar year from which it stays out of debt; empty if it ends in debt
 * @param owedAfter repayments that fall after the years counted
 */
public record LoanAccount(
    double ratePercent,
    int years,
    double borrowed,
    List<Double> repayments,
    List<Double> balance,
    double peakDebt,
    OptionalInt yearPositive,
    double owedAfter) {

  static LoanAccount of(Outcome outcome, Loan loan, double discountRate, int firstYear) {
    int n = outcome.years();
    double[] repaid = new double[n];
    double borrowed = 0;
    double owedAfter = 0;
    for (int t = 0; t < n; t++) {
      double cost = outcome.actionCost(t);
      borrowed += cost;
      double payment = NetPresentValue.annuity(cost, loan.rate(), loan.years());
      for (int k = 1; k <= loan.years(); k++) {
        if (t + k < n) {
          repaid[t + k] += payment;
        } else {
          owedAfter += payment;
        }
      }
    }
    double[] flows = new double[n];
    Arrays.setAll(
        flows, t -> outcome.net(t) + outcome.endValue(t) + outcome.actionCost(t) - repaid[t]);
    OptionalInt out = RunningBalance.yearOutOfDebt(discountRate, flows);
    return new LoanAccount(
        100 * loan.rate(),
        loan.years(),
        borrowed,
        DoubleStream.of(repaid).boxed().toList(),
        DoubleStream.of(RunningBalance.of(discountRate, flows)).boxed().toList(),
        RunningBalance.peakDebt(discountRate, flows),
        out.isPresent() ? OptionalInt.of(firstYear + out.getAsInt()) : out,
        owedAfter);
  }
}
