package swardcase.tables;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import swardcase.check.Check;
import swardcase.check.FaultsException;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.PastureQuality;
import swardcase.reading.Faults;

/**
 * Loads the reference tables, all or nothing: a single bad row anywhere refuses them, and every
 * fault is reported at once.
 *
 * <p>A folder of the user's may hold files of the same names and headings. Its rows replace the
 * program's rows of the same key, or are added; they count as {@link SetBy#OVERRIDE}, and {@link
 * Tables#overridden} names them. In such a folder a blank evidence cell means "told by the farm".
 * The columns of each file are described in {@code docs/method/tables.md}.
 */
public final class TablesLoader {

  private static final Pattern SOURCE_KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private final Path base;
  private final List<Path> users;

  private TablesLoader(Path base, List<Path> users) {
    this.base = base;
    this.users = List.copyOf(users);
  }

  /** Loads the tables that come with the program. */
  public static TablesLoader standard() {
    return new TablesLoader(null, List.of());
  }

  /** Loads the tables of a folder, which must hold every file, in place of the program's. */
  public static TablesLoader from(Path folder) {
    return new TablesLoader(Check.notNull(folder, "folder of the tables"), List.of());
  }

  /** The same with a user's folder laid over; a later folder wins over an earlier one. */
  public TablesLoader with(Path userFolder) {
    return new TablesLoader(base, Stream.concat(users.stream(), Stream.of(userFolder)).toList());
  }

  /** The tables; throws {@link FaultsException} with every fault if there is one. */
  public Tables load() {
    Faults faults = new Faults();
    TableLayers layers = new TableLayers(base, users, faults);
    SortedMap<String, Source> sources = sources(layers.rows(TableFile.SOURCES));
    layers.knowSources(sources.keySet());
    SortedMap<String, List<PastureQuality>> quality =
        FeedTables.pastureQuality(layers.rows(TableFile.PASTURE_QUALITY), faults);
    Tables tables =
        new Tables(
            CultivarTable.read(layers.rows(TableFile.CULTIVARS)),
            FeedTables.districts(layers.rows(TableFile.DISTRICTS), quality.keySet()),
            quality,
            FeedTables.supplements(layers.rows(TableFile.SUPPLEMENTS)),
            FeedTables.dryStock(layers.rows(TableFile.DRY_STOCK)),
            parameters(layers),
            ActionTables.read(
                layers.rows(TableFile.ACTIONS),
                layers.rows(TableFile.ACTION_VALUES),
                layers.rows(TableFile.ACTION_COSTS),
                faults),
            sources,
            layers.overridden());
    layers.finish();
    faults.throwIfAny();
    return tables;
  }

  /** Names of the tables, such as {@code dry-stock}, in the order of their subjects. */
  public static List<String> names() {
    return Stream.of(TableFile.values()).map(TableFile::title).toList();
  }

  /** One table as it is written; {@code name} must be among {@link #names}. */
  public TableListing list(String name) {
    Tables tables = load();
    TableFile file = TableFile.values()[names().indexOf(name)];
    TableLayers layers = new TableLayers(base, users, new Faults());
    List<TableListing.Row> rows = layers.rows(file).stream().map(row -> row.listed(file)).toList();
    List<Source> sources =
        rows.stream()
            .flatMap(row -> row.cells().entrySet().stream())
            .filter(cell -> cell.getKey().endsWith("source"))
            .flatMap(cell -> tables.sourcesOf(cell.getValue()).stream())
            .distinct()
            .sorted(Comparator.comparing(Source::key))
            .toList();
    return new TableListing(name, rows, sources);
  }

  private static SortedMap<String, Source> sources(List<TableRow> rows) {
    SortedMap<String, Source> sources = new TreeMap<>();
    for (TableRow row : rows) {
      String key = row.text("key");
      if (!SOURCE_KEY.matcher(key).matches()) {
        row.fault("key", "must be small letters and digits with single hyphens");
      }
      String url = row.findText("url").orElse("");
      row.make(() -> new Source(key, row.text("citation"), url, row.text("read")))
          .ifPresent(source -> sources.put(key, source));
    }
    return sources;
  }

  private static SortedMap<String, Assumption> parameters(TableLayers layers) {
    SortedMap<String, Assumption> parameters = new TreeMap<>();
    double any = Double.MAX_VALUE;
    for (TableFile file : TableFile.PARAMETERS) {
      for (TableRow row : layers.rows(file)) {
        String key = row.text("key");
        String name = row.text("name");
        String unit = row.text("unit");
        row.has("note");
        row.make(() -> row.number(name, unit, "%", -any, any, ""))
            .map(number -> number.withDoubt(row.findText("doubt").orElse("")))
            .filter(number -> parameters.putIfAbsent(key, number) != null)
            .ifPresent(twice -> row.fault("key", "must not stand in two parameter tables"));
      }
    }
    return parameters;
  }
}
