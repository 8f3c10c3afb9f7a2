package swardcase.farm;

import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * What is bought when pasture is short.
 *
 * @param name such as {@code barley}
 * @param pricePerTonne delivered and fed out, per tonne as fed
 * @param energyMjPerKgDm metabolisable energy, MJ per kg dry matter
 * @param dryMatterFraction dry matter as a fraction: 90 % is 0.90
 * @param wasteFraction share trampled or left: 5 % is 0.05
 */
public record Supplement(
    String name,
    Assumption pricePerTonne,
    Assumption energyMjPerKgDm,
    Assumption dryMatterFraction,
    Assumption wasteFraction) {

  /** Checks ranges. */
  public Supplement {
    Check.notBlank(name, "name of the supplement");
    Check.notNegative(pricePerTonne.range().low(), "price of " + name);
    Check.inRange(energyMjPerKgDm.range().low(), 3, 20, "energy of " + name);
    Check.inRange(dryMatterFraction.range().low(), 0.1, 1, "dry matter of " + name);
    Check.inRange(wasteFraction.range().high(), 0, 0.8, "waste of " + name);
  }
}
