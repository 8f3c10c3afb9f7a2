package swardcase.reproduction;

/**
 * How far formononetin in the diet lowers a ewe's chance of conceiving at a mating.
 *
 * <p>T(d) = 1 / (1 + (d / D50)^n): d formononetin of green feed, % of dry matter eaten; D50 the
 * dose that halves conception; n the steepness. The form is a Hill curve, our choice; D50 = 0.41 %
 * and n = 3 were fitted to one trial on red clover (McDonald, Anwar and Keogh 1994, Proc. NZ Soc.
 * Anim. Prod. 54:231-234; 67 exposed ewes, two doses, 0.26 and 0.55 %), so the curve is inferred. A
 * straight line fits as well. There is no trial above 0.6 %: a dose above that is "at least" the
 * effect at 0.6 %. At 0.3 % T is 0.72.
 */
public final class DoseResponse {

  private DoseResponse() {}

  /** T(d), 1 at no dose, falling towards 0. */
  public static double conceptionMultiplier(
      double dosePercent, double d50Percent, double steepness) {
    return dosePercent <= 0 ? 1 : 1 / (1 + Math.pow(dosePercent / d50Percent, steepness));
  }

  /** 1 - T(d), the share of conceptions lost. */
  static double effect(double dosePercent, double d50Percent, double steepness) {
    return 1 - conceptionMultiplier(dosePercent, d50Percent, steepness);
  }
}
