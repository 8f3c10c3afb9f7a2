package swardcase.sward;

/** How much formononetin a sheep eats. */
public final class Dose {

  private Dose() {}

  /**
   * Formononetin in what is eaten, per cent of its dry matter: k g L λ Σ s_c F_c.
   *
   * <p>Half of green feed as clover (0.5), leaf making up 0.6 of the clover eaten and 1.0 % in the
   * leaf give 0.30 % of intake; on waterlogged ground (1.6) 0.48 %. Laboratory values are for leaf,
   * and stem and petiole hold less, hence λ. Dry clover has lost nearly all of it (g about 0.05);
   * hay made fast may hold most.
   *
   * @param stress k, 1 on drained ground; 1.6 if waterlogged (Enkhbat et al. 2023, Functional Plant
   *     Biology 50, 507-518: means of 0.31 against 0.19 % and 0.97 against 0.61 %)
   * @param greenFactor g, 1 for green feed, 0.05 for dry residue
   * @param cloverShare L, clover as a fraction of the feed eaten
   * @param leafShare λ, leaf as a fraction of the clover eaten
   * @param leafPercent Σ s_c F_c, formononetin of the paddock's clover, % of leaf dry matter
   */
  public static double percentOfIntake(
      double stress, double greenFactor, double cloverShare, double leafShare, double leafPercent) {
    return stress * greenFactor * cloverShare * leafShare * leafPercent;
  }
}
