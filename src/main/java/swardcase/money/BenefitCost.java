package swardcase.money;

import java.util.OptionalDouble;

/**
 * Present value of the benefits over present value of the costs (USDA Natural Resources
 * Conservation Service, Utah, Economics Technical Note UT200-7-1, 1997). Benefits of 5,000, 8,000,
 * 12,000 and 30,000 in years 1 to 4 against a cost of 40,000 now make 1.077 at 8 %.
 */
public final class BenefitCost {

  private BenefitCost() {}

  /** The ratio; costs are given as positive sums; empty if they are worth nothing. */
  public static OptionalDouble ratio(double rate, double[] benefits, double[] costs) {
    double spent = NetPresentValue.of(rate, costs);
    return spent > 0
        ? OptionalDouble.of(NetPresentValue.of(rate, benefits) / spent)
        : OptionalDouble.empty();
  }
}
