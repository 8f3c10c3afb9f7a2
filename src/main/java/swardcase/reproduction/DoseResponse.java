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
  public static double effect(double dosePercent, double d50Percent, double steepness) {
    return 1 - conceptionMultiplier(dosePercent, d50Percent, steepness);
  }

  /**
   * The same from (d / D50)^n. Where a dose is a product, so is this power, and parts of it that
   * stay can be worked out once.
   */
  public static double effectOfPower(double power) {
    return 1 - 1 / (1 + power);
  }

  /** Fills {@code into} with the share lost at each dose; equal doses in a row cost one power. */
  static void effects(double[] dosePercent, double d50Percent, double steepness, double[] into) {
    double dose = 0;
    double effect = 0;
    for (int p = 0; p < dosePercent.length; p++) {
      if (dosePercent[p] != dose) {
        dose = dosePercent[p];
        effect = effect(dose, d50Percent, steepness);
      }
      into[p] = effect;
    }
  }
}
