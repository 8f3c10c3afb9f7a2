package swardcase.money;

import java.util.OptionalDouble;

/**
 * Discounted payback: the years from now until the discounted flows add up to zero or more for
 * good, each year's flow taken as arriving evenly within it.
 *
 * <p>Flows of -40,000, 5,000, 8,000, 12,000 and 30,000 pay back in 3.86 years at 8 %. Textbooks
 * take the first time the sum reaches zero, which is the same where all outlays come first; a plan
 * that resows again later is paid back only when the later outlay is too.
 */
public final class Payback {

  private Payback() {}

  /** Years from now; 0 if the sum is never below zero; empty if it ends there. */
  public static OptionalDouble discountedYears(double rate, double[] flows) {
    double sum = 0;
    double years = 0;
    for (int t = 0; t < flows.length; t++) {
      double discounted = NetPresentValue.ofSingle(flows[t], rate, t);
      if (sum < 0 && sum + discounted >= 0) {
        years = t - 1 - sum / discounted;
      }
      sum += discounted;
    }
    return sum < 0 ? OptionalDouble.empty() : OptionalDouble.of(years);
  }
}
