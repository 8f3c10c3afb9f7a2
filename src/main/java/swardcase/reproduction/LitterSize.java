package swardcase.reproduction;

/**
 * Share by which litters shrink while ewes graze oestrogenic clover at mating. A scenario, not a
 * finding: used only where the user asks for it.
 *
 * <p>b (1 - T(d)) / (1 - T(0.55)), at most 1; b is the drop at 0.55 % of dry matter eaten. Fewer
 * ovulations (-18 %) were found after two weeks on red clover by Anwar, Keogh and McDonald 1994
 * (Proc. NZ Soc. Anim. Prod. 54:235-238), none by others; the scaling is inferred. It is gone one
 * to two weeks after leaving. With b = 0.10, 0.3 % in the diet costs 4 % of the litter.
 */
public final class LitterSize {

  private static final double TRIAL_DOSE_PERCENT = 0.55;

  private LitterSize() {}

  /** The share lost at {@code dosePercent}, where {@code dropAtTrialDose} is b. */
  public static double shareLost(
      double dosePercent, double d50Percent, double steepness, double dropAtTrialDose) {
    double scale =
        DoseResponse.effect(dosePercent, d50Percent, steepness)
            / DoseResponse.effect(TRIAL_DOSE_PERCENT, d50Percent, steepness);
    return Math.min(1, dropAtTrialDose * scale);
  }
}
