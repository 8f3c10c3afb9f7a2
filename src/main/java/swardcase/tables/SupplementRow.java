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
 * @param currency currency of the price, such as {@code A$}; blank without one
 * @param priceDate what the price refers to, such as {@code 2021-25}; blank without one
 * @param note in words
 */
public record SupplementRow(
    String name,
    Assumption energyMjPerKgDm,
    Assumption dryMatterFraction,
    Assumption wasteFraction,
    Optional<Assumption> pricePerTonne,
    String currency,
    String priceDate,
    String note) {

  /** Checks that a price has a currency and a date. */
  public SupplementRow {
    Check.notBlank(name, "name of a supplement");
    Check.notNull(note, "note of " + name);
    Check.that(
        pricePerTonne.isEmpty() || !currency.isBlank() && !priceDate.isBlank(),
        "the price of %s must have a currency and a date",
        name);
  }

  /** The feed at the given price, which replaces the table's. */
  public Supplement atPrice(Assumption price) {
    return new Supplement(name, price, energyMjPerKgDm, dryMatterFraction, wasteFraction);
  }

  /** The feed at the table's price, if it has one. */
  public Optional<Supplement> atTablePrice() {
    return pricePerTonne.map(this::atPrice);
  }
}
