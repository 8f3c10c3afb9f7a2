package swardcase.farm;

import swardcase.check.Check;

/**
 * A loan for the cost of resowing, repaid in equal yearly payments.
 *
 * @param rate real, per year: 6 % is 0.06
 * @param years years of repayment
 */
public record Loan(double rate, int years) {

  /** Checks ranges. */
  public Loan {
    Check.inRange(rate, 0, 1, "rate of the loan");
    Check.inRange(years, 1, 40, "years of the loan");
  }
}
