package swardcase.intake;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.evidence.Assumption;
import swardcase.farm.OtherStock;
import swardcase.farm.Supplement;
import swardcase.tables.Tables;

/** Reads stock other than ewes, and what is fed when pasture is short. */
final class StockReader {

  /** The supplement taken where the farm names none. */
  static final String USUAL_SUPPLEMENT = "barley";

  private final Tables tables;
  private final Defaults defaults;

  StockReader(Tables tables, Defaults defaults) {
    this.tables = tables;
    this.defaults = defaults;
  }

  List<OtherStock> list(Fields farm) {
    List<OtherStock> stock = new ArrayList<>();
    farm.sections("other_stock").forEach(fields -> find(fields).ifPresent(stock::add));
    return stock;
  }

  private Optional<OtherStock> find(Fields stock) {
    int before = stock.faults().count();
    String name = stock.text("name");
    OptionalInt head = stock.findWhole("head", 0, 1_000_000);
    if (!stock.has("head")) {
      stock.fault("head", "must be given", "");
    }
    Optional<Assumption> dse = dse(stock, name);
    List<Month> months = months(stock);
    stock.finish();
    return stock
        .faults()
        .build(
            before,
            stock.place(),
            () -> new OtherStock(name, head.orElseThrow(), dse.orElseThrow(), months));
  }

  private Optional<Assumption> dse(Fields stock, String name) {
    Optional<Assumption> ofKind =
        stock
            .findName("kind", "a class of stock in the tables", tables.dryStock().keySet())
            .map(kind -> tables.dryStock().get(kind));
    Optional<Assumption> own =
        stock
            .findRange("dse_per_head", 0, 40)
            .map(dse -> Assumption.ofFarm("dry sheep equivalents, " + name, dse, "DSE/head"));
    if (stock.has("kind") == stock.has("dse_per_head")) {
      stock.fault("kind", "must be given, or dse_per_head in its place, but not both", "");
    }
    return own.or(() -> ofKind);
  }

  /** A list of months, or from one month to another, over the new year too; else all twelve. */
  private static List<Month> months(Fields stock) {
    Optional<Month> from = month(stock, "from");
    Optional<Month> to = month(stock, "to");
    List<Month> listed = GrowthReader.months(stock, "months");
    if (stock.has("from") != stock.has("to") || stock.has("from") && stock.has("months")) {
      stock.fault("from", "must come with 'to', and without 'months'", "");
    }
    if (!listed.isEmpty()) {
      return listed;
    }
    List<Month> months = new ArrayList<>();
    Month first = from.orElse(Month.JANUARY);
    int count = Math.floorMod(to.orElse(Month.DECEMBER).getValue() - first.getValue(), 12) + 1;
    for (int i = 0; i < count; i++) {
      months.add(first.plus(i));
    }
    return months.stream().sorted().toList();
  }

  private static Optional<Month> month(Fields stock, String key) {
    Optional<String> text = stock.findText(key);
    Optional<Month> month = text.flatMap(CalendarText::findMonth);
    if (text.isPresent() && month.isEmpty()) {
      stock
          .faults()
          .add(
              stock.place(key),
              "must be a month such as June",
              text.get(),
              CalendarText.monthNames());
    }
    return month;
  }

  /** The supplement, by its name alone or with the farm's own numbers. */
  Optional<Supplement> findSupplement(Fields farm) {
    if (!farm.has("supplement")) {
      return Fields.nameOf(USUAL_SUPPLEMENT, tables.supplements().keySet())
          .map(tables.supplements()::get);
    }
    if (farm.isScalar("supplement")) {
      return farm.findName(
              "supplement", "a supplement of the tables", tables.supplements().keySet())
          .map(name -> tables.supplements().get(name));
    }
    Fields own = farm.section("supplement");
    int before = own.faults().count();
    String name = own.text("name");
    Optional<Supplement> row =
        Fields.nameOf(name, tables.supplements().keySet()).map(tables.supplements()::get);
    if (row.isEmpty() && !(own.has("price_per_tonne") && own.has("energy_mj_per_kg_dm"))) {
      own.faults()
          .add(
              own.place("name"),
              "must be in the table of supplements, or come with price_per_tonne and"
                  + " energy_mj_per_kg_dm",
              name,
              tables.supplements().keySet());
    }
    Optional<Assumption> price =
        number(own, "price_per_tonne", "price of " + name, "/t", 0, 100_000, 1)
            .or(() -> row.map(Supplement::pricePerTonne));
    Optional<Assumption> energy =
        number(own, "energy_mj_per_kg_dm", "energy of " + name, "MJ/kg DM", 3, 20, 1)
            .or(() -> row.map(Supplement::energyMjPerKgDm));
    Assumption dryMatter =
        number(own, "dry_matter_percent", "dry matter of " + name, "fraction", 10, 100, 100)
            .or(() -> row.map(Supplement::dryMatterFraction))
            .orElseGet(() -> defaults.get("supplement-dry-matter"));
    Assumption waste =
        number(own, "waste_percent", "waste of " + name, "fraction", 0, 80, 100)
            .or(() -> row.map(Supplement::wasteFraction))
            .orElseGet(() -> defaults.get("supplement-waste"));
    own.finish();
    return own.faults()
        .build(
            before,
            own.place(),
            () ->
                new Supplement(
                    row.map(Supplement::name).orElse(name),
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
