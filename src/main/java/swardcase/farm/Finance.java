package swardcase.farm;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;

/**
 * Rate, horizon and limits. All flows are real (no inflation) and before tax.
 *
 * @param discountRate real, per year: 7 % is 0.07
 * @param horizonYears years counted, the coming one first
 * @param horizonSetBy who set the horizon
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
    SetBy horizonSetBy,
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
    Check.notNull(budgetPerYear, "budget per year");
    Check.inRange(mostOutOfGrazing.likely(), 0, 1, "largest share out of grazing");
    Check.notNull(mostCropHa, "most hectares in crop");
    Check.notNull(endValuePerHa, "end value");
    Check.that(
        riskTolerance.range().low() > 0,
        "risk tolerance must be more than zero, but was %s",
        riskTolerance.range().low());
    Check.notNull(loan, "loan");
  }

  /** The same with another most money a year. */
  public Finance withBudgetPerYear(double budget) {
    return new Finance(
        discountRate,
        horizonYears,
        horizonSetBy,
        OptionalDouble.of(budget),
        mostOutOfGrazing,
        mostCropHa,
        endValuePerHa,
        riskTolerance,
        loan);
  }

  /** The same with another number of years counted, set by the user. */
  public Finance withHorizonYears(int years) {
    return new Finance(
        discountRate,
        years,
        SetBy.USER,
        budgetPerYear,
        mostOutOfGrazing,
        mostCropHa,
        endValuePerHa,
        riskTolerance,
        loan);
  }

  /** The same with another discount rate. */
  public Finance withDiscountRate(Assumption rate) {
    return new Finance(
        rate,
        horizonYears,
        horizonSetBy,
        budgetPerYear,
        mostOutOfGrazing,
        mostCropHa,
        endValuePerHa,
        riskTolerance,
        loan);
  }

  /** The same with another risk tolerance. */
  public Finance withRiskTolerance(Assumption tolerance) {
    return new Finance(
        discountRate,
        horizonYears,
        horizonSetBy,
        budgetPerYear,
        mostOutOfGrazing,
        mostCropHa,
        endValuePerHa,
        tolerance,
        loan);
  }
}
