package swardcase.feed;

import swardcase.check.Check;
import swardcase.farm.Supplement;

/**
 * What a tonne of supplement holds, and costs.
 *
 * <pre>  tonnes as fed = MJ / (1000 x DM x ME x (1 - waste))      cost = tonnes x price </pre>
 *
 * <p>Worked number: 150 a tonne, 90 % dry matter, 13 MJ/kg DM, no waste: 11,700 MJ a tonne, 1.28
 * cents a MJ.
 *
 * @param pricePerTonne per tonne as fed
 * @param energyMjPerKgDm metabolisable energy, MJ/kg DM
 * @param dryMatterFraction 90 % is 0.90
 * @param wasteFraction trampled or left: 5 % is 0.05
 */
public record SupplementCost(
    double pricePerTonne, double energyMjPerKgDm, double dryMatterFraction, double wasteFraction) {

  /** Checks ranges. */
  public SupplementCost {
    Check.notNegative(pricePerTonne, "price per tonne");
    Check.inRange(energyMjPerKgDm, 3, 20, "energy of the supplement");
    Check.inRange(dryMatterFraction, 0.1, 1, "dry matter of the supplement");
    Check.inRange(wasteFraction, 0, 0.8, "waste of the supplement");
  }

  /** The likely values of a supplement. */
  public static SupplementCost of(Supplement supplement) {
    return new SupplementCost(
        supplement.pricePerTonne().likely(),
        supplement.energyMjPerKgDm().likely(),
        supplement.dryMatterFraction().likely(),
        supplement.wasteFraction().likely());
  }

  /** Energy that reaches the stock from a tonne as fed, MJ. */
  public double energyMjPerTonne() {
    return energyMjPerTonne(energyMjPerKgDm, dryMatterFraction, wasteFraction);
  }

  /** The same from three numbers, unchecked and without an object, for runs by the thousand. */
  public static double energyMjPerTonne(
      double energyMjPerKgDm, double dryMatterFraction, double wasteFraction) {
    return 1000 * dryMatterFraction * energyMjPerKgDm * (1 - wasteFraction);
  }
}
