package swardcase.intake;

import java.util.Optional;
import java.util.Set;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Supplement;
import swardcase.reading.Fields;
import swardcase.reading.Names;
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

  /** The supplement, by its name alone or with the farm's own numbers; null after a fault. */
  Supplement read(Fields farm) {
    if (farm.has("supplement") && !farm.isScalar("supplement")) {
      Fields own = farm.section("supplement");
      return own.make(() -> own(own)).orElse(null);
    }
    Set<String> names = tables.supplements().keySet();
    String name = farm.findName("supplement", "a supplement of the tables", names).orElse(USUAL);
    Optional<Supplement> supplement = tables.supplements().get(name).atTablePrice();
    if (supplement.isEmpty()) {
      farm.fault(
          "supplement",
          "has no price in the tables: write 'name: " + name + "' and price_per_tonne below it");
    }
    return supplement.orElse(null);
  }

  private Supplement own(Fields own) {
    String name = own.text("name");
    Set<String> names = tables.supplements().keySet();
    Optional<SupplementRow> row = Names.find(name, names).map(tables.supplements()::get);
    Optional<Assumption> price =
        number("price of " + name, currency + "/t as fed", own.findRange("price_per_tonne", 0, 1e5))
            .or(() -> row.flatMap(SupplementRow::pricePerTonne));
    Optional<Assumption> energy =
        number("energy of " + name, "MJ/kg DM", own.findRange("energy_mj_per_kg_dm", 3, 20))
            .or(() -> row.map(SupplementRow::energyMjPerKgDm));
    Assumption dryMatter =
        fraction("dry matter of " + name, own.findRange("dry_matter_percent", 10, 100))
            .or(() -> row.map(SupplementRow::dryMatterFraction))
            .orElseGet(() -> defaults.get("supplement-dry-matter"));
    Assumption waste =
        fraction("waste of " + name, own.findRange("waste_percent", 0, 80))
            .or(() -> row.map(SupplementRow::wasteFraction))
            .orElseGet(() -> defaults.get("supplement-waste"));
    boolean told = own.has("price_per_tonne") && own.has("energy_mj_per_kg_dm");
    if (row.isEmpty() && !told && !name.isEmpty()) {
      String rule =
          "must be in the table of supplements, or come with price_per_tonne and"
              + " energy_mj_per_kg_dm";
      own.fault("name", rule, names);
    } else if (row.isPresent() && price.isEmpty() && !own.has("price_per_tonne")) {
      own.fault("price_per_tonne", "must be given: the tables have no price of " + name);
    }
    return new Supplement(
        row.map(SupplementRow::name).orElse(name),
        price.orElse(null),
        energy.orElse(null),
        dryMatter,
        waste);
  }

  private static Optional<Assumption> number(String name, String unit, Optional<Range> own) {
    return own.map(range -> Assumption.ofFarm(name, range, unit));
  }

  private static Optional<Assumption> fraction(String name, Optional<Range> own) {
    return number(name, "-", own.map(Fields::fractions));
  }
}
