package swardcase.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.check.ReadLimits;
import swardcase.farm.Identification;
import swardcase.farm.LeafTest;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.farm.StandSigns;
import swardcase.tables.CsvRow;
import swardcase.tables.CsvTable;

/** Reads the table of paddocks, {@code paddocks.csv} or a sheet, one row a paddock. */
final class PaddocksCsv {

  static final String TABLE = "paddocks";

  private static final double MOST_HA = 100_000;
  private static final List<String> REQUIRED = List.of("paddock", "area_ha");
  private static final List<String> OPTIONAL =
      List.of(
          "clover_percent_low",
          "clover_percent",
          "clover_percent_high",
          "growth_index",
          "waterlogged",
          "arable",
          "formononetin_percent",
          "formononetin_standard_error",
          "use",
          "seedlings_per_m2",
          "colwell_p_mg_per_kg",
          "phosphorus_buffering_index",
          "olsen_p_mg_per_kg",
          "ph_cacl2",
          "nodules_per_plant",
          "mites",
          "roots",
          "wet_ground");

  /** The columns a scenario may change. */
  static final List<String> CHANGEABLE =
      Stream.concat(Stream.of("area_ha"), OPTIONAL.stream()).toList();

  private static final Map<String, Boolean> YES_NO = Map.of("yes", true, "no", false);
  private static final Map<String, Boolean> GOOD_POOR = Map.of("good", true, "poor", false);

  /** What grazes a paddock: all ewes, one mob of them, or other stock. */
  private record Use(PaddockUse use, Optional<String> mob) {}

  private static final Use ALL_EWES = new Use(PaddockUse.EWES, Optional.empty());

  private final Defaults defaults;
  private final Map<String, Use> uses = new LinkedHashMap<>();
  private final boolean mobsKnown;

  /** Without the mobs, whose file has faults of its own, every word in {@code use} is let pass. */
  PaddocksCsv(Defaults defaults, Optional<List<Mob>> mobs) {
    this.defaults = defaults;
    mobsKnown = mobs.isPresent();
    mobs.orElse(List.of())
        .forEach(mob -> uses.put(mob.name(), new Use(PaddockUse.EWES, Optional.of(mob.name()))));
    uses.put(PaddockUse.EWES.label(), ALL_EWES);
    uses.put(PaddockUse.OTHER_STOCK.label(), new Use(PaddockUse.OTHER_STOCK, Optional.empty()));
  }

  /** The paddocks by the key of their name, in the order of the file, with nothing found yet. */
  Map<String, Paddock> read(CsvTable table, List<Fault> faults) {
    Map<String, Paddock> paddocks = new LinkedHashMap<>();
    if (!table.demand(REQUIRED, OPTIONAL)) {
      return paddocks;
    }
    if (table.rows().isEmpty()) {
      faults.add(new Fault(table.name(), 0, "", "must have a paddock", "", ""));
    }
    if (table.rows().size() > ReadLimits.PADDOCKS) {
      String rule = "must not have more than " + ReadLimits.PADDOCKS + " paddocks";
      faults.add(new Fault(table.name(), 0, "", rule, "", ""));
      return paddocks;
    }
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (CsvRow row : table.rows()) {
      String key = Names.key(row.text("paddock"));
      Integer first = lines.putIfAbsent(key, row.line());
      if (first != null && !key.isEmpty()) {
        row.fault("paddock", "must not be given twice; it stands in line " + first + " already");
      }
      find(row).ifPresent(paddock -> paddocks.put(key, paddock));
    }
    demandGrowth(table, paddocks);
    return paddocks;
  }

  /** The farm's growth is shared out by the index, so that it must not be 0 everywhere. */
  private static void demandGrowth(CsvTable table, Map<String, Paddock> paddocks) {
    boolean sound = paddocks.size() == table.rows().size() && !paddocks.isEmpty();
    if (sound && paddocks.values().stream().allMatch(p -> p.growthIndex().range().high() == 0)) {
      table.rows().get(0).fault("growth_index", "must be more than 0 in at least one paddock");
    }
  }

  /** The names given in the file, whether or not their rows are sound. */
  static List<String> names(CsvTable table) {
    return table.rows().stream().map(row -> row.findText("paddock").orElse("")).toList();
  }

  private Optional<Paddock> find(CsvRow row) {
    if (row.findText("paddock").orElse("").length() > ReadLimits.NAME_CHARACTERS) {
      row.fault("paddock", "must not be longer than " + ReadLimits.NAME_CHARACTERS + " characters");
    }
    double area = row.number("area_ha");
    if (area <= 0 || area > MOST_HA) {
      row.fault("area_ha", "must be more than zero and not above " + NumberText.plain(MOST_HA));
    }
    Optional<Range> clover = clover(row);
    Optional<Range> index = exactly(row.findNumber("growth_index", 0, 5));
    boolean waterlogged = row.findChoice("waterlogged", YES_NO).orElse(false);
    boolean arable = row.findChoice("arable", YES_NO).orElse(true);
    Optional<LeafTest> leafTest = leafTest(row);
    OptionalDouble seedlings = row.findNumber("seedlings_per_m2", 0, 100_000);
    Optional<StandSigns> signs = signs(row);
    Use use = mobsKnown ? row.findChoice("use", uses).orElse(ALL_EWES) : ALL_EWES;
    return row.make(
        () ->
            new Paddock(
                Names.tidy(row.text("paddock")),
                area,
                defaults.orUser("clover-share", clover, 100),
                defaults.orUser("growth-index", index, 1),
                waterlogged,
                arable,
                leafTest,
                use.use(),
                use.mob(),
                seedlings,
                signs.orElseThrow(),
                List.of()));
  }

  private static Optional<StandSigns> signs(CsvRow row) {
    OptionalDouble colwell = row.findNumber("colwell_p_mg_per_kg", 0, 1000);
    OptionalDouble buffering = row.findNumber("phosphorus_buffering_index", 0, 5000);
    OptionalDouble olsen = row.findNumber("olsen_p_mg_per_kg", 0, 500);
    OptionalDouble ph = row.findNumber("ph_cacl2", 2, 11);
    OptionalDouble nodules = row.findNumber("nodules_per_plant", 0, 1000);
    Optional<Boolean> mites = row.findChoice("mites", GOOD_POOR);
    Optional<Boolean> roots = row.findChoice("roots", GOOD_POOR);
    Optional<Boolean> wet = row.findChoice("wet_ground", GOOD_POOR);
    boolean isColwell = row.findText("colwell_p_mg_per_kg").isPresent();
    if (isColwell && row.findText("olsen_p_mg_per_kg").isPresent()) {
      row.fault("olsen_p_mg_per_kg", "must not stand beside colwell_p_mg_per_kg: give one test");
    }
    if (!isColwell && row.findText("phosphorus_buffering_index").isPresent()) {
      row.fault("phosphorus_buffering_index", "must come with colwell_p_mg_per_kg");
    }
    if (wet.isPresent() && !row.findText("waterlogged").orElse("").equalsIgnoreCase("yes")) {
      row.fault("wet_ground", "must come with yes in waterlogged");
    }
    return row.make(
        () -> new StandSigns(colwell, buffering, olsen, ph, nodules, mites, roots, wet));
  }

  private static Optional<Range> clover(CsvRow row) {
    String low = "clover_percent_low";
    String likely = "clover_percent";
    String high = "clover_percent_high";
    return row.findText(low).isEmpty() && row.findText(high).isEmpty()
        ? exactly(row.findNumber(likely, 0, 100))
        : row.findRange(low, likely, high, 0, 100);
  }

  private Optional<LeafTest> leafTest(CsvRow row) {
    OptionalDouble percent = row.findNumber("formononetin_percent", 0, 5);
    OptionalDouble error = row.findNumber("formononetin_standard_error", 0, 5);
    if (percent.isEmpty()) {
      if (row.findText("formononetin_standard_error").isPresent()) {
        row.fault("formononetin_standard_error", "must come with formononetin_percent");
      }
      return Optional.empty();
    }
    return Optional.of(
        new LeafTest(
            percent.getAsDouble(),
            error.orElseGet(
                () -> percent.getAsDouble() * defaults.get("leaf-test-relative-error").likely())));
  }

  private static Optional<Range> exactly(OptionalDouble number) {
    return number.isPresent() ? Optional.of(Range.exactly(number.getAsDouble())) : Optional.empty();
  }

  /** The same paddock with what was found on the walk. */
  static Paddock with(Paddock paddock, List<Identification> identifications) {
    return new Paddock(
        paddock.name(),
        paddock.areaHa(),
        paddock.cloverShare(),
        paddock.growthIndex(),
        paddock.waterlogged(),
        paddock.arable(),
        paddock.leafTest(),
        paddock.use(),
        paddock.mob(),
        paddock.seedlingsPerM2(),
        paddock.signs(),
        identifications);
  }
}
