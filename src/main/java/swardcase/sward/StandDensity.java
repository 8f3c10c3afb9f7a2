package swardcase.sward;

/**
 * What a thin stand costs in early winter growth.
 *
 * <p>Clover of p plants per m2 grows r(p) = p/(p + k) of what it could, relative to the density
 * p_ref that the growth profile stands for
 *
 * <pre>
 *   R = r(min(p, p_ref)) / r(p_ref)        factor = 1 − L e (1 − f) (1 − R)
 * </pre>
 *
 * <p>L is the clover share, f how much of the gap the rest of the sward fills, and e the part of
 * winter's growth that density bears on (the early-winter share of the growth year). The form is
 * inferred; k = 2,400 comes from the one published pair, 885 and 3,628 kg/ha at day 60 with 460 and
 * 4,600 plants per m2 (Ru, Fortune and Bellotti 1997, Australian Journal of Agricultural Research
 * 48, 977-988). No more is gained beyond p_ref: the profile is what a full stand grows
 * (docs/decisions/thin-stands.md).
 *
 * <p>150 plants, k 2,400, p_ref 1,000: R = 0.059/0.294 = 0.2. With half clover, e 0.4 and f 0.6 the
 * winter grows 1 − 0.5 x 0.4 x 0.4 x 0.8 = 0.936.
 */
public final class StandDensity {

  private StandDensity() {}

  /** Growth as a share of the most the clover could grow, p/(p + k). */
  public static double growth(double plantsPerM2, double k) {
    return plantsPerM2 / (plantsPerM2 + k);
  }

  /** R, growth of the clover relative to a stand of p_ref plants per m2; at most 1. */
  public static double relative(double plantsPerM2, double reference, double k) {
    return growth(Math.min(plantsPerM2, reference), k) / growth(reference, k);
  }

  /**
   * Winter growth of the sward relative to a stand of p_ref plants.
   *
   * @param cloverShare L, 0 to 1
   * @param relative R, 0 to 1
   * @param restFills f, 0 to 1
   * @param early e, 0 to 1
   */
  public static double factor(double cloverShare, double relative, double restFills, double early) {
    return 1 - cloverShare * early * (1 - restFills) * (1 - relative);
  }

  /** Seeds or seedlings per m2 in so many kg/ha: 10 kg/ha of 7.5 mg are 133. */
  public static double perM2(double kgPerHa, double seedMg) {
    return 100 * kgPerHa / seedMg;
  }
}
