package swardcase.reproduction;

import swardcase.farm.HalfMonths;

/** The formulas of joining and of sterility as a source prints them, in one call. */
public final class ByFormula {

  private ByFormula() {}

  /**
   * Fills {@code multiplierByCycle}, which must hold {@link JoiningWalk#cycles} values or more,
   * with the mean multiplier of each cycle; values beyond are left alone.
   *
   * @param dosePercent formononetin, % of dry matter eaten, by half-month (24 values) or by day
   *     (365)
   * @param joiningStartDayOfYear from 0, 1 January
   * @param joiningWeeks length of joining; of the last cycle only its days of joining count
   * @param d50 dose that halves conception, %
   * @param n steepness of the curve
   * @param rampDays days of grazing until the full effect
   * @param lagDays days without recovery; part days count
   * @param halfLifeDays days in which the effect then halves
   */
  public static void multipliers(
      double[] dosePercent,
      int joiningStartDayOfYear,
      double joiningWeeks,
      double d50,
      double n,
      double rampDays,
      double lagDays,
      double halfLifeDays,
      double[] multiplierByCycle) {
    JoiningWalk walk = new JoiningWalk(joiningStartDayOfYear, joiningWeeks, dosePercent.length);
    walk.set(rampDays, lagDays, halfLifeDays);
    walk.multipliers(dosePercent, d50, n, multiplierByCycle);
  }

  /** S of one year of doses, {@code dosePercent} by half-month. */
  public static double seasonExposure(
      double[] dosePercent, double d50, double n, double referenceDosePercent) {
    double[] effect = new double[HalfMonths.COUNT];
    DoseResponse.effects(dosePercent, d50, n, effect);
    double reference = DoseResponse.effect(referenceDosePercent, d50, n);
    return Sterility.exposureOfDays(Sterility.daysInFullEffect(effect), reference);
  }

  /** s, the share barren after {@code exposure}, where {@code q} goes barren per unit of it. */
  public static double sterileShare(double exposure, double q) {
    return exposure <= 0 ? 0 : 1 - Math.pow(1 - q, exposure);
  }
}
