package swardcase.chance;

import swardcase.check.Check;

/**
 * What it is worth to know more before choosing, from {@link Payoffs} of many draws.
 *
 * @param value in the unit of the payoffs, zero or more
 * @param standardError of {@code value}, as if the draws were independent
 */
public record DrawnInformation(double value, double standardError) {

  /** Checks that information is not worth less than nothing. */
  public DrawnInformation {
    Check.notNegative(value, "value of information");
    Check.notNegative(standardError, "standard error of a value of information");
  }

  /** From what is gained in each draw over the choice that pays most on average. */
  static DrawnInformation of(double[] gain) {
    return new DrawnInformation(
        Math.max(0, Sample.mean(gain)), Sample.standardDeviation(gain) / Math.sqrt(gain.length));
  }

  /**
   * Whether it counts as worth anything, given that {@code tried} unknowns were tried: the value
   * passes its standard error times {@link ManyTried#quantile}. 2,500 ± 1,000 counts if it was the
   * only one tried (1,645), not if it was one of ten (2,576).
   */
  public boolean countsAmong(int tried) {
    return value > standardError * ManyTried.quantile(tried);
  }
}
