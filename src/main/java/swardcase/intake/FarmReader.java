package swardcase.intake;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import swardcase.farm.Climate;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockShape;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Spot;
import swardcase.reading.Table;
import swardcase.tables.Tables;

/** Puts a farm together from its keys and its tables, wherever those come from. */
final class FarmReader {

  /** The file of the keys. */
  static final String FILE = "farm.yaml";

  /** The row of the cultivar table for a current cultivar that was not chosen. */
  static final String USUAL_SOWN = "current cultivar";

  /** The currency sign where the farm names none. */
  private static final String USUAL_CURRENCY = "$";

  private static final Map<String, Climate> CLIMATES =
      Fields.words(Climate.values(), Climate::label);
  private static final Map<String, ExtraFeedUse> FEED_USES =
      Fields.words(ExtraFeedUse.values(), ExtraFeedUse::label);

  private final Tables tables;
  private final Faults faults;
  private final Function<String, Optional<Table>> files;
  private final Defaults defaults;
  private List<String> names = List.of();
  private Optional<RecordsCsv> records = Optional.empty();
  private Optional<LocalDate> priceDate = Optional.empty();

  /**
   * A reader for one farm.
   *
   * @param files finds the table of a name: of paddocks, which must be there, of what was found on
   *     the walk, and of what was written down in past years
   */
  FarmReader(Tables tables, Faults faults, Function<String, Optional<Table>> files) {
    this.tables = tables;
    this.faults = faults;
    this.files = files;
    defaults = new Defaults(tables);
  }

  /**
   * The farm.
   *
   * @param whole what a fault of the farm as a whole points to
   * @param top its keys; empty after a fault
   * @param map finds where the paddocks of these names lie, if anything says so
   * @throws swardcase.check.FaultsException with all faults at once
   */
  LoadedFarm read(
      Spot whole, Optional<Entries> top, Function<List<String>, List<PaddockShape>> map) {
    Optional<Farm> farm =
        top.map(keys -> new Fields(new Entries(whole, keys.entries()), "", faults))
            .flatMap(keys -> keys.make(() -> farm(keys)));
    if (top.isEmpty()) {
      paddocks(Optional.empty());
    }
    List<PaddockShape> shapes = map.apply(names);
    faults.throwIfAny();
    return new LoadedFarm(
        farm.orElseThrow(),
        Stream.concat(
                Doubts.of(farm.get(), tables).stream(),
                PaddocksGeoJson.doubts(farm.get(), shapes).stream())
            .toList(),
        Notices.of(farm.get(), defaults, priceDate),
        priceDate,
        shapes);
  }

  private Farm farm(Fields keys) {
    String currency = keys.findText("currency").orElse(USUAL_CURRENCY);
    MoneyReader money = new MoneyReader(defaults, currency);
    int before = faults.count();
    List<Mob> mobs = new MobReader(defaults).list(keys);
    List<Paddock> paddocks =
        paddocks(faults.count() == before ? Optional.of(mobs) : Optional.empty());
    // After a fault of the paddocks any area will do: no farm is made.
    double area = paddocks.isEmpty() ? 1 : paddocks.stream().mapToDouble(Paddock::areaHa).sum();
    priceDate = MoneyReader.priceDate(keys);
    Fields prices = keys.section("prices");
    Fields finance = keys.section("finance");
    Fields management = keys.section("management");
    Farm farm =
        new Farm(
            keys.text("name"),
            currency,
            keys.findChoice("climate", CLIMATES).orElse(Climate.HOT_DRY_SUMMER),
            new GrowthReader(tables, defaults).read(keys),
            paddocks,
            mobs,
            new StockReader(tables).list(keys),
            new SupplementReader(tables, defaults, currency).read(keys),
            prices.make(() -> money.prices(prices)).orElse(null),
            finance.make(() -> money.finance(finance, area)).orElse(null),
            keys.findChoice("extra_feed_use", FEED_USES).orElse(ExtraFeedUse.HOLD_NUMBERS),
            management.make(() -> money.management(management)).orElse(null),
            new ActionsReader(tables, currency).list(keys),
            keys.findName("sow", "a cultivar of the tables", tables.cultivars().keySet())
                .orElse(USUAL_SOWN),
            List.of());
    return records.map(told -> told.with(farm)).orElse(farm);
  }

  /**
   * Reads the tables; without the mobs, which have faults of their own, their names are let pass.
   */
  private List<Paddock> paddocks(Optional<List<Mob>> mobs) {
    Optional<Table> rows = files.apply(PaddocksCsv.TABLE);
    names = rows.map(PaddocksCsv::names).orElse(List.of());
    String from = rows.map(Table::name).orElse("");
    Map<String, List<Identification>> found =
        files
            .apply(PlantsCsv.TABLE)
            .map(table -> new PlantsCsv(tables).read(table, names, from))
            .orElse(Map.of());
    records = files.apply(RecordsCsv.TABLE).map(table -> new RecordsCsv(table, mobs, names));
    return rows.map(table -> new PaddocksCsv(defaults, mobs, found).read(table, faults))
        .orElse(List.of());
  }
}
