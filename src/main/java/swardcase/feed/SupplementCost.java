package swardcase.feed;

/**
 * What a tonne of supplement holds.
 *
 * <pre>  tonnes as fed = MJ / (1000 x DM x ME x (1 - waste))      cost = tonnes x price </pre>
 *
 * <p>Worked number: 150 a tonne, 90 % dry matter, 13 MJ/kg DM, no waste: 11,700 MJ a tonne, 1.28
 * cents a MJ.
 */
public final class SupplementCost {

  private SupplementCost() {}

  /**
   * Energy that reaches the stock from a tonne as fed, MJ.
   *
   * @param energyMjPerKgDm metabolisable energy, MJ/kg DM
   * @param dryMatterFraction 90 % is 0.90
   * @param wasteFraction trampled or left: 5 % is 0.05
   */
  public static double energyMjPerTonne(
      double energyMjPerKgDm, double dryMatterFraction, double wasteFraction) {
    return 1000 * dryMatterFraction * energyMjPerKgDm * (1 - wasteFraction);
  }
}
