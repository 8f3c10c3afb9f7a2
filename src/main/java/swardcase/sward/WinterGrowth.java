package swardcase.sward;

/** What outdated cultivars cost in winter growth. */
public final class WinterGrowth {

  private WinterGrowth() {}

  /**
   * Growth of the sward in the winter months relative to the same sward with a current cultivar in
   * place of its clover: 1 − L(1 − Σ s_c w_c).
   *
   * <p>Only the clover is at stake: the rest of the sward grows as before. A clover share of 0.5
   * whose cultivars yield 0.9 of a current one on average gives 0.95, five per cent of the winter
   * growth forgone. Published pairs of an older and a newer cultivar differ by 10 to 15 % (Nichols
   * et al. 2007 for Izmir against Nungarin: 10 % in winter); no trial has tested the cultivars from
   * before 1965 that are high in formononetin, and box swards showed little or no difference, so a
   * range of w must reach 1.
   *
   * @param cloverShare L, clover as a fraction of green dry matter, 0 to 1
   * @param meanRelativeYield Σ s_c w_c, the mean winter yield of the clover relative to a current
   *     cultivar; above 1 it is the better one
   */
  public static double factor(double cloverShare, double meanRelativeYield) {
    return 1 - cloverShare * (1 - meanRelativeYield);
  }
}
