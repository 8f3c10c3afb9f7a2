package swardcase.tables;

import java.util.Optional;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.farm.Supplement;

/**
 * A row of the supplement table. Some feeds have no price in the table: the farm then has to give
 * one.
 *
 * @param name such as {@code barley}
 * @param energyMjPerKgDm metabolisable energy, MJ per kg dry matter
 * @param dryMatterFraction dry matter as a fraction: 90 % is 0.90
 * @param wasteFraction share trampled or left: 5 % is 0.05
 * @param pricePerTonne per tonne as fed, where quotes were found or a price was judged
 */
public record SupplementRow(
    String name,
    Assumption energyMjPerKgDm,
    Assumption dryMatterFraction,
    Assumption wasteFraction,
    Optional<Assumption> pricePerTonne) {

  /** Checks that it has a name. */
  public SupplementRow {
    Check.notBlank(name, "name of a supplement");
  }

  /** The feed at the table's price, if it has one. */
  public Optional<Supplement> atTablePrice() {
    return pricePerTonne.map(
        price -> new Supplement(name, price, energyMjPerKgDm, dryMatterFraction, wasteFraction));
  }
}
