package swardcase.report;

import swardcase.evidence.Assumption;
import swardcase.farm.Farm;

/**
 * Prices and rate by which someone else can work the plan's years out again.
 *
 * @param lambPrice money for a lamb, by which lambs saved are scaled
 * @param supplementPrice money a tonne as fed, by which supplement saved is scaled
 * @param discountRate per year, as a fraction
 */
public record Budget(Assumption lambPrice, Assumption supplementPrice, Assumption discountRate) {

  /** Those of a farm. */
  public static Budget of(Farm farm) {
    return new Budget(
        farm.prices().netValuePerLamb(),
        farm.supplement().pricePerTonne(),
        farm.finance().discountRate());
  }
}
