package swardcase.tables;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;

/** Reads {@code cultivars.csv}. */
final class CultivarTable {

  private static final Map<String, Cultivar.Era> ERAS =
      Map.of(
          "old", Cultivar.Era.OLD,
          "transition", Cultivar.Era.TRANSITION,
          "current", Cultivar.Era.CURRENT);

  private static final Map<String, Cultivar.HardSeed> HARD_SEED =
      Map.of(
          "soft", Cultivar.HardSeed.SOFT,
          "moderate", Cultivar.HardSeed.MODERATE,
          "hard", Cultivar.HardSeed.HARD);

  private static final Map<String, String> OESTROGEN =
      Map.of("high", "high", "low", "low", "trace", "trace", "unknown", "unknown");

  private static final Map<String, String> SUBSPECIES =
      Map.of(
          "subterraneum", "subterraneum",
          "yanninicum", "yanninicum",
          "brachycalycinum", "brachycalycinum");

  private static final List<String> MARK_COLUMNS =
      TableFile.CULTIVARS.columns().stream()
          .filter(column -> column.endsWith("_evidence"))
          .toList();

  private CultivarTable() {}

  static SortedMap<String, Cultivar> read(List<TableRow> rows) {
    SortedMap<String, Cultivar> cultivars = new TreeMap<>();
    rows.forEach(
        row -> cultivar(row).ifPresent(cultivar -> cultivars.put(cultivar.name(), cultivar)));
    return cultivars;
  }

  private static Optional<Cultivar> cultivar(TableRow row) {
    CsvRow cells = row.cells();
    String name = cells.text("name");
    checkMarks(row);
    Optional<Cultivar.Era> era = cells.choice("era", ERAS);
    Optional<String> oestrogen = cells.choice("oestrogen_class", OESTROGEN);
    Optional<String> subspecies = cells.findChoice("subspecies", SUBSPECIES);
    OptionalInt release = cells.findWhole("release_year", 1850, 2100);
    OptionalInt rainMin = cells.findWhole("rain_min_mm", 0, 3000);
    OptionalInt rainMax = cells.findWhole("rain_max_mm", 0, 3000);
    Optional<Cultivar.HardSeed> hardSeed = cells.findChoice("hard_seed", HARD_SEED);
    Optional<Assumption> formononetin = formononetin(row, name);
    Optional<Assumption> winter = winter(row, name);
    String winterClass = cells.text("winter_yield_class");
    return cells.make(
        () ->
            new Cultivar(
                name,
                subspecies.orElse(""),
                era.orElseThrow(),
                release,
                cells.findText("maturity").orElse(""),
                rainMin,
                rainMax,
                hardSeed.orElse(Cultivar.HardSeed.MODERATE),
                formononetin,
                oestrogen.orElseThrow().equals("high"),
                winter.orElseThrow(),
                winterClass.toLowerCase(Locale.ROOT),
                String.join(";", cells.list("source")),
                cells.findText("note").orElse("")));
  }

  private static Optional<Assumption> formononetin(TableRow row, String name) {
    row.evidenceOf("formononetin_likely_percent_dm", "formononetin_evidence");
    Optional<Range> range =
        row.cells()
            .findRange(
                "formononetin_low_percent_dm",
                "formononetin_likely_percent_dm",
                "formononetin_high_percent_dm",
                0,
                5);
    return range.isEmpty()
        ? Optional.empty()
        : row.assumption(
            "formononetin of " + name, range, "% of leaf DM", "formononetin_evidence", "source");
  }

  private static Optional<Assumption> winter(TableRow row, String name) {
    Optional<Range> range =
        row.cells()
            .range(
                "relative_winter_yield_low",
                "relative_winter_yield_likely",
                "relative_winter_yield_high",
                0,
                2);
    return row.assumption(
        "winter growth of " + name + " relative to a current cultivar",
        range,
        "-",
        "winter_yield_evidence",
        "source");
  }

  /** Checks columns that are kept for the reader of the table and enter no calculation. */
  private static void checkMarks(TableRow row) {
    CsvRow cells = row.cells();
    row.evidenceOf("subspecies", "subspecies_evidence");
    row.evidenceOf("release_year", "release_evidence");
    row.evidenceOf("days_to_flower_perth", "days_evidence");
    row.evidenceOf("hard_seed", "hard_seed_evidence");
    row.evidenceOf("herbage_gain_low_percent", "herbage_gain_evidence");
    if (!cells.findText("oestrogen_class").orElse("unknown").equalsIgnoreCase("unknown")) {
      row.evidence("oestrogen_class_evidence");
    }
    if (cells.findText("rain_min_mm").isPresent() || cells.findText("rain_max_mm").isPresent()) {
      row.evidence("rain_evidence");
    }
    boolean published =
        MARK_COLUMNS.stream()
            .flatMap(column -> cells.findText(column).stream())
            .anyMatch(Evidence.PUBLISHED.label()::equalsIgnoreCase);
    row.source("source", published ? Evidence.PUBLISHED : Evidence.INFERRED);
    cells.findWhole("days_to_flower_perth", 30, 250);
    cells.findRange(
        "herbage_gain_low_percent",
        "herbage_gain_low_percent",
        "herbage_gain_high_percent",
        -100,
        400);
  }
}
