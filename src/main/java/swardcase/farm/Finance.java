package swardcase.farm;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * Rate, horizon and limits. All flows are real (no inflation) and before tax.
 *
 * @param discountRate real, per year: 7 % is 0.07
 * @param horizonYears years counted, the coming one first
 * @param budgetPerYear most money to be spent on resowing in one year; empty for no limit
 * @param mostOutOfGrazing largest share of the farm shut up at once: 0.2 is a fifth
 * @param mostCropHa most hectares in crop at once; empty for no limit
 * @param endValuePerHa value of a resown hectare beyond the horizon; 0 unless the user gives one
 * @param riskTolerance R of exponential utility, in money for the whole farm, more than 0: a bet
 *     that wins R or loses R/2, each in one case of two, would just about be taken
 * @param loan how the cost is borrowed, if it is
 */
public record Finance(
    Assumption discountRate,
    int horizonYears,
    OptionalDouble budgetPerYear,
    Assumption mostOutOfGrazing,
    OptionalDouble mostCropHa,
    Assumption endValuePerHa,
    Assumption riskTolerance,
    Optional<Loan> loan) {

  /** Checks ranges. */
  public Finance {
    Check.inRange(discountRate.range().low(), 0, 1, "discount rate");
    Check.inRange(discountRate.range().high(), 0, 1, "discount rate");
    Check.inRange(horizonYears, 1, 40, "horizon in years");
    Check.inRange(mostOutOfGrazing.likely(), 0, 1, "largest share out of grazing");
    Check.that(
        riskTolerance.range().low() > 0,
        "risk tolerance must be more than zero, but was %s",
        riskTolerance.range().low());
  }

  /** The same with another most money a year. */
  public Finance withBudgetPerYear(double budget) {
    return with(discountRate, horizonYears, OptionalDouble.of(budget));
  }

  /** The same with another number of years counted. */
  public Finance withHorizonYears(int years) {
    return with(discountRate, years, budgetPerYear);
  }

  /** The same with another discount rate. */
  public Finance withDiscountRate(Assumption rate) {
    return with(rate, horizonYears, budgetPerYear);
  }

  private Finance with(Assumption rate, int years, OptionalDouble budget) {
    return new Finance(
        rate, years, budget, mostOutOfGrazing, mostCropHa, endValuePerHa, riskTolerance, loan);
  }
}
