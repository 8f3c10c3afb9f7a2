package swardcase.tables;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import swardcase.evidence.Evidence;
import swardcase.reading.Fields;

/** Reads {@code cultivars.csv}. */
final class CultivarTable {

  private static final Map<String, Cultivar.Era> ERAS =
      Fields.words(Cultivar.Era.values(), era -> era.name().toLowerCase(Locale.ROOT));
  private static final Map<String, Cultivar.HardSeed> HARD_SEED =
      Fields.words(Cultivar.HardSeed.values(), hard -> hard.name().toLowerCase(Locale.ROOT));
  private static final Map<String, Boolean> IS_HIGH =
      Map.of("high", true, "low", false, "trace", false, "unknown", false);
  private static final Map<String, String> SUBSPECIES =
      Fields.words(new String[] {"subterraneum", "yanninicum", "brachycalycinum"}, name -> name);

  private CultivarTable() {}

  static SortedMap<String, Cultivar> read(List<TableRow> rows) {
    SortedMap<String, Cultivar> cultivars = new TreeMap<>();
    for (TableRow row : rows) {
      row.make(() -> cultivar(row)).ifPresent(of -> cultivars.put(of.name(), of));
    }
    return cultivars;
  }

  private static Cultivar cultivar(TableRow row) {
    String name = row.text("name");
    checkMarks(row);
    return new Cultivar(
        name,
        row.findChoice("subspecies", SUBSPECIES).orElse(""),
        row.choice("era", ERAS),
        row.findChoice("hard_seed", HARD_SEED).orElse(Cultivar.HardSeed.MODERATE),
        row.findNumber(
            "formononetin of " + name,
            "% of leaf DM",
            "formononetin_%_percent_dm",
            0,
            5,
            "formononetin_"),
        Boolean.TRUE.equals(row.choice("oestrogen_class", IS_HIGH)),
        row.number(
            "winter growth of " + name + " relative to a current cultivar",
            "-",
            "relative_winter_yield_%",
            0,
            2,
            "winter_yield_"),
        row.text("winter_yield_class").toLowerCase(Locale.ROOT));
  }

  /** Checks columns that are kept for the reader of the table and enter no calculation. */
  private static void checkMarks(TableRow row) {
    row.evidenceOf("subspecies", "subspecies_evidence");
    row.evidenceOf("release_year", "release_evidence");
    row.evidenceOf("days_to_flower_perth", "days_evidence");
    row.evidenceOf("hard_seed", "hard_seed_evidence");
    row.evidenceOf("herbage_gain_low_percent", "herbage_gain_evidence");
    if (!row.findText("oestrogen_class").orElse("unknown").equalsIgnoreCase("unknown")) {
      row.evidence("oestrogen_class_evidence");
    }
    if (row.has("rain_min_mm") || row.has("rain_max_mm")) {
      row.evidence("rain_evidence");
    }
    boolean published =
        row.keys().stream()
            .filter(column -> column.endsWith("_evidence"))
            .flatMap(column -> row.findText(column).stream())
            .anyMatch(Evidence.PUBLISHED.label()::equalsIgnoreCase);
    row.source("source", published ? Evidence.PUBLISHED : Evidence.INFERRED);
    row.findWhole("days_to_flower_perth", 30, 250);
    row.findWhole("release_year", 1850, 2100);
    row.findWhole("rain_min_mm", 0, 3000);
    row.findWhole("rain_max_mm", 0, 3000);
    row.findRange(
        "herbage_gain_low_percent",
        "herbage_gain_low_percent",
        "herbage_gain_high_percent",
        -100,
        400);
    List.of(
            "formononetin_published_percent_dm",
            "hard_seed_note",
            "herbage_gain_over",
            "herbage_gain_season",
            "maturity",
            "note")
        .forEach(row::has);
  }
}
