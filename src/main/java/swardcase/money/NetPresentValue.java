package swardcase.money;

import swardcase.check.Check;

/**
 * Net present value of yearly flows, the first of them now.
 *
 * <p>NPV = sum over t = 0..n of CF_t / (1 + r)^t, flows in any one currency, r per year as a
 * fraction, above -1 (L. J. Gitman, Principles of Managerial Finance, 2003, p. 346, as cited in the
 * numpy-financial source). The NPV function of spreadsheets discounts the first value too; ours
 * does not. Flows of -40,000, 5,000, 8,000, 12,000 and 30,000 at 8 % are worth 3,065.22 now.
 */
public final class NetPresentValue {

  private NetPresentValue() {}

  /** Value now of {@code flows}; {@code flows[0]} falls now and is not discounted. */
  public static double of(double rate, double[] flows) {
    checkRate(rate);
    double value = 0;
    for (int t = flows.length - 1; t >= 0; t--) {
      value = value / (1 + rate) + flows[t];
    }
    return value;
  }

  /** Value now of one {@code amount} in {@code years}: 100 in 10 years at 4 % is worth 67.56. */
  public static double ofSingle(double amount, double rate, int years) {
    checkRate(rate);
    return amount * Math.exp(-years * Math.log1p(rate));
  }

  /**
   * The equal yearly sum at the ends of {@code years} years that is worth {@code npv} now: npv x r
   * / (1 - (1 + r)^-n), and npv / n where r is 0. It compares plans of unequal lives: 48.20 over 4
   * years and 44.37 over 3, at 11 %, are 15.53 and 18.16 a year. It is also the payment that clears
   * a loan of {@code npv}, the first at the end of the first period: 200,000 over 180 months at 7.5
   * % / 12 a month cost 1,854.02 a month.
   */
  public static double annuity(double npv, double rate, int years) {
    checkRate(rate);
    Check.that(years >= 1, "years of an annuity must be at least 1, but was %s", years);
    return rate == 0 ? npv / years : npv * rate / -Math.expm1(-years * Math.log1p(rate));
  }

  private static void checkRate(double rate) {
    if (!(rate > -1 && rate < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("rate must be above -1, but was " + rate);
    }
  }
}
