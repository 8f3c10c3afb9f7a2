package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Range;
import swardcase.check.NumberText;
import swardcase.check.ReadLimits;
import swardcase.farm.Identification;
import swardcase.farm.LeafTest;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.farm.StandSigns;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Names;
import swardcase.reading.Table;

/** Reads the table of paddocks, {@code paddocks.csv} or a sheet, one row a paddock. */
final class PaddocksCsv {

  static final String TABLE = "paddocks";

  private static final double MOST_HA = 100_000;
  private static final Map<String, Boolean> GOOD_POOR = Map.of("good", true, "poor", false);

  /** What grazes a paddock: all ewes, one mob of them, or other stock. */
  private record Use(PaddockUse use, Optional<String> mob) {}

  private static final Use ALL_EWES = new Use(PaddockUse.EWES, Optional.empty());

  private final Defaults defaults;
  private final Map<String, List<Identification>> found;
  private final Map<String, Use> uses = new LinkedHashMap<>();
  private final boolean mobsKnown;

  /**
   * A reader.
   *
   * @param mobs without them, since they have faults of their own, every word in {@code use} is let
   *     pass
   * @param found what was found on the walk, by the key of the paddock's name
   */
  PaddocksCsv(
      Defaults defaults, Optional<List<Mob>> mobs, Map<String, List<Identification>> found) {
    this.defaults = defaults;
    this.found = found;
    mobsKnown = mobs.isPresent();
    mobs.orElse(List.of())
        .forEach(mob -> uses.put(mob.name(), new Use(PaddockUse.EWES, Optional.of(mob.name()))));
    uses.put(PaddockUse.EWES.label(), ALL_EWES);
    uses.put(PaddockUse.OTHER_STOCK.label(), new Use(PaddockUse.OTHER_STOCK, Optional.empty()));
  }

  /** The paddocks in the order of the file. */
  List<Paddock> read(Table table, Faults faults) {
    List<Paddock> paddocks = new ArrayList<>();
    if (table.rows().isEmpty() && !table.columns().isEmpty()) {
      faults.add(table.name(), "must have a paddock");
    }
    if (table.rows().size() > ReadLimits.PADDOCKS) {
      faults.add(table.name(), "must not have more than " + ReadLimits.PADDOCKS + " paddocks");
      return paddocks;
    }
    table.demandUnique(List.of("paddock"));
    table.rows().forEach(row -> row.make(() -> read(row)).ifPresent(paddocks::add));
    table.finish();
    demandGrowth(table, paddocks);
    return paddocks;
  }

  /** The farm's growth is shared out by the index, so that it must not be 0 everywhere. */
  private static void demandGrowth(Table table, List<Paddock> paddocks) {
    boolean sound = paddocks.size() == table.rows().size() && !paddocks.isEmpty();
    if (sound && paddocks.stream().allMatch(p -> p.growthIndex().range().high() == 0)) {
      table.rows().get(0).fault("growth_index", "must be more than 0 in at least one paddock");
    }
  }

  /** The names given in the file, whether or not their rows are sound. */
  static List<String> names(Table table) {
    return table.rows().stream().map(row -> row.findText("paddock").orElse("")).toList();
  }

  private Paddock read(Fields row) {
    String name = row.text("paddock");
    if (name.length() > ReadLimits.NAME_CHARACTERS) {
      row.fault("paddock", "must not be longer than " + ReadLimits.NAME_CHARACTERS + " characters");
    }
    double area = row.number("area_ha", -Double.MAX_VALUE, Double.MAX_VALUE);
    if (area <= 0 || area > MOST_HA) {
      row.fault("area_ha", "must be more than zero and not above " + NumberText.plain(MOST_HA));
    }
    Use use = row.has("use") && mobsKnown ? row.findChoice("use", uses).orElse(ALL_EWES) : ALL_EWES;
    return new Paddock(
        name,
        area,
        defaults.orPercent("clover-share", clover(row)),
        defaults.orUser("growth-index", row.findExact("growth_index", 0, 5)),
        row.findYesNo("waterlogged").orElse(false),
        row.findYesNo("arable").orElse(true),
        leafTest(row),
        use.use(),
        use.mob(),
        row.findNumber("seedlings_per_m2", 0, 100_000),
        signs(row),
        found.getOrDefault(Names.key(name), List.of()));
  }

  private static StandSigns signs(Fields row) {
    boolean isColwell = row.has("colwell_p_mg_per_kg");
    if (isColwell && row.has("olsen_p_mg_per_kg")) {
      row.fault("olsen_p_mg_per_kg", "must not stand beside colwell_p_mg_per_kg: give one test");
    }
    if (!isColwell && row.has("phosphorus_buffering_index")) {
      row.fault("phosphorus_buffering_index", "must come with colwell_p_mg_per_kg");
    }
    if (row.has("wet_ground") && !row.findYesNo("waterlogged").orElse(false)) {
      row.fault("wet_ground", "must come with yes in waterlogged");
    }
    return new StandSigns(
        row.findNumber("colwell_p_mg_per_kg", 0, 1000),
        row.findNumber("phosphorus_buffering_index", 0, 5000),
        row.findNumber("olsen_p_mg_per_kg", 0, 500),
        row.findNumber("ph_cacl2", 2, 11),
        row.findNumber("nodules_per_plant", 0, 1000),
        row.findChoice("mites", GOOD_POOR),
        row.findChoice("roots", GOOD_POOR),
        row.findChoice("wet_ground", GOOD_POOR));
  }

  private static Optional<Range> clover(Fields row) {
    String likely = "clover_percent";
    return row.has("clover_percent_low") || row.has("clover_percent_high")
        ? row.findRange("clover_percent_low", likely, "clover_percent_high", 0, 100)
        : row.findExact(likely, 0, 100);
  }

  private Optional<LeafTest> leafTest(Fields row) {
    OptionalDouble percent = row.findNumber("formononetin_percent", 0, 5);
    OptionalDouble error = row.findNumber("formononetin_standard_error", 0, 5);
    if (!row.has("formononetin_percent") && error.isPresent()) {
      row.fault("formononetin_standard_error", "must come with formononetin_percent");
    }
    double usual = defaults.unsaid("leaf-test-relative-error").likely();
    return percent.stream().mapToObj(of -> new LeafTest(of, error.orElse(of * usual))).findFirst();
  }
}
