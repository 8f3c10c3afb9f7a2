package swardcase.intake;

import java.util.Optional;
import swardcase.evidence.Assumption;
import swardcase.farm.Supplement;
import swardcase.tables.SupplementRow;
import swardcase.tables.Tables;

/** Reads what is fed when pasture is short. */
final class SupplementReader {

  /** The supplement taken where the farm names none. */
  private static final String USUAL = "barley";

  private final Tables tables;
  private final Defaults defaults;
  private final String currency;

  SupplementReader(Tables tables, Defaults defaults, String currency) {
    this.tables = tables;
    this.defaults = defaults;
    this.currency = currency;
  }

  /** The supplement, by its name alone or with the farm's own numbers. */
  Optional<Supplement> find(Fields farm) {
    if (farm.has("supplement") && !farm.isScalar("supplement")) {
      return own(farm.section("supplement"));
    }
    int before = farm.faults().count();
    String name =
        farm.findName("supplement", "a supplement of the tables", tables.supplements().keySet())
            .orElse(USUAL);
    SupplementRow row = tables.supplements().get(name);
    if (row.pricePerTonne().isEmpty()) {
      farm.fault(
          "supplement",
          "has no price in the tables: write 'name: " + name + "' and price_per_tonne below it",
          name);
    }
    return farm.faults()
        .build(before, farm.place("supplement"), () -> row.atTablePrice().orElseThrow());
  }

  private Optional<Supplement> own(Fields own) {
    int before = own.faults().count();
    String name = own.text("name");
    Optional<SupplementRow> row =
        Names.find(name, tables.supplements().keySet()).map(tables.supplements()::get);
    Optional<Assumption> price =
        number(own, "price_per_tonne", "price of " + name, currency + "/t as fed", 0, 100_000, 1)
            .or(() -> row.flatMap(SupplementRow::pricePerTonne));
    Optional<Assumption> energy =
        number(own, "energy_mj_per_kg_dm", "energy of " + name, "MJ/kg DM", 3, 20, 1)
            .or(() -> row.map(SupplementRow::energyMjPerKgDm));
    Assumption dryMatter =
        number(own, "dry_matter_percent", "dry matter of " + name, "-", 10, 100, 100)
            .or(() -> row.map(SupplementRow::dryMatterFraction))
            .orElseGet(() -> defaults.get("supplement-dry-matter"));
    Assumption waste =
        number(own, "waste_percent", "waste of " + name, "-", 0, 80, 100)
            .or(() -> row.map(SupplementRow::wasteFraction))
            .orElseGet(() -> defaults.get("supplement-waste"));
    own.finish();
    if (own.faults().count() == before && row.isEmpty() && (price.isEmpty() || energy.isEmpty())) {
      own.faults()
          .add(
              own.place("name"),
              "must be in the table of supplements, or come with price_per_tonne and"
                  + " energy_mj_per_kg_dm",
              name,
              tables.supplements().keySet());
    } else if (own.faults().count() == before && price.isEmpty()) {
      own.fault("price_per_tonne", "must be given: the tables have no price of " + name, "");
    }
    return own.faults()
        .build(
            before,
            own.place(),
            () ->
                new Supplement(
                    row.map(SupplementRow::name).orElse(name),
                    price.orElseThrow(),
                    energy.orElseThrow(),
                    dryMatter,
                    waste));
  }

  private static Optional<Assumption> number(
      Fields own, String key, String name, String unit, double low, double high, double perUnit) {
    return own.findRange(key, low, high)
        .map(range -> Assumption.ofFarm(name, Defaults.divided(range, perUnit), unit));
  }
}
