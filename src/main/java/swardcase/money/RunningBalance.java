package swardcase.money;

import java.util.Arrays;
import java.util.OptionalInt;

/**
 * The account of a plan: B_t = B_(t-1) (1 + r) + CF_t, debts and credits bearing one rate.
 *
 * <p>It ends at NPV x (1 + r)^n. At 8 %, flows of -40,000, 5,000, 8,000, 12,000 and 30,000 run
 * through -40,000, -38,200, -33,256, -23,916 and 4,170.
 */
public final class RunningBalance {

  private RunningBalance() {}

  /** The balance after each flow. */
  public static double[] of(double rate, double[] flows) {
    double[] balances = new double[flows.length];
    double balance = 0;
    for (int t = 0; t < flows.length; t++) {
      balance = balance * (1 + rate) + flows[t];
      balances[t] = balance;
    }
    return balances;
  }

  /** The deepest debt with interest, as a positive sum; 0 if the account is never in debt. */
  public static double peakDebt(double rate, double[] flows) {
    return 0 - Arrays.stream(of(rate, flows)).reduce(0, Math::min);
  }

  /**
   * The year, from 0, at whose flow the account comes out of debt for good; 0 if it is never in
   * debt, empty if it ends in debt.
   */
  public static OptionalInt yearOutOfDebt(double rate, double[] flows) {
    double[] balances = of(rate, flows);
    int year = flows.length;
    while (year > 0 && balances[year - 1] >= 0) {
      year--;
    }
    return year == flows.length && year > 0 ? OptionalInt.empty() : OptionalInt.of(year);
  }
}
