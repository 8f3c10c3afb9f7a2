package swardcase.money;

import swardcase.check.Check;

/**
 * Equal payments that clear a loan: P r / (1 - (1 + r)^-n), the first at the end of the first
 * period. A loan of 200,000 over 180 months at 7.5 % / 12 a month costs 1,854.02 a month.
 */
public final class Repayment {

  private Repayment() {}

  /** The yearly payment that clears {@code principal} in {@code years} at {@code rate} per year. */
  public static double yearly(double principal, double rate, int years) {
    Check.notNegative(principal, "principal of a loan");
    return NetPresentValue.annuity(principal, rate, years);
  }
}
