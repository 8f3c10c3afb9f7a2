package swardcase.tables;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The files of the reference tables: their headings and the columns that make up the key of a row.
 */
enum TableFile {
  SOURCES("sources", List.of("key"), "key", "citation", "url", "read"),
  CULTIVARS(
      "cultivars",
      List.of("name"),
      "name",
      "subspecies",
      "subspecies_evidence",
      "era",
      "release_year",
      "release_evidence",
      "maturity",
      "days_to_flower_perth",
      "days_evidence",
      "rain_min_mm",
      "rain_max_mm",
      "rain_evidence",
      "hard_seed",
      "hard_seed_evidence",
      "hard_seed_note",
      "oestrogen_class",
      "oestrogen_class_evidence",
      "formononetin_published_percent_dm",
      "formononetin_low_percent_dm",
      "formononetin_likely_percent_dm",
      "formononetin_high_percent_dm",
      "formononetin_evidence",
      "relative_winter_yield_low",
      "relative_winter_yield_likely",
      "relative_winter_yield_high",
      "winter_yield_class",
      "winter_yield_evidence",
      "herbage_gain_low_percent",
      "herbage_gain_high_percent",
      "herbage_gain_over",
      "herbage_gain_season",
      "herbage_gain_evidence",
      "source",
      "note"),
  DISTRICTS("districts", List.of("name"), districtColumns()),
  PASTURE_QUALITY(
      "pasture-quality",
      List.of("profile", "month"),
      "profile",
      "month",
      "green_digestibility_percent",
      "dry_digestibility_percent",
      "green_dying_percent_per_month",
      "dry_lost_percent_per_month",
      "evidence",
      "source"),
  SUPPLEMENTS(
      "supplements",
      List.of("name"),
      "name",
      "energy_low_mj_per_kg_dm",
      "energy_likely_mj_per_kg_dm",
      "energy_high_mj_per_kg_dm",
      "energy_evidence",
      "energy_source",
      "dry_matter_low_percent",
      "dry_matter_likely_percent",
      "dry_matter_high_percent",
      "dry_matter_evidence",
      "dry_matter_source",
      "waste_low_percent",
      "waste_likely_percent",
      "waste_high_percent",
      "waste_evidence",
      "waste_source",
      "price_low_per_tonne",
      "price_likely_per_tonne",
      "price_high_per_tonne",
      "price_currency",
      "price_date",
      "price_evidence",
      "price_source",
      "note"),
  DRY_STOCK(
      "dry-stock",
      List.of("stock"),
      "stock",
      "dse_low_per_head",
      "dse_likely_per_head",
      "dse_high_per_head",
      "evidence",
      "source",
      "most_risky_days",
      "risky_days_evidence",
      "note"),
  ACTIONS(
      "actions",
      List.of("key"),
      "key",
      "name",
      "kind",
      "needs_arable",
      "run_down_years",
      "cropped",
      "months_ungrazed",
      "evidence",
      "source",
      "note"),
  ACTION_VALUES(
      "action-values",
      List.of("action", "value"),
      "action",
      "value",
      "low",
      "likely",
      "high",
      "unit",
      "doubt",
      "evidence",
      "source",
      "note"),
  ACTION_COSTS(
      "action-costs",
      List.of("action", "name"),
      "action",
      "name",
      "phase",
      "own_labour",
      "low_per_ha",
      "likely_per_ha",
      "high_per_ha",
      "currency",
      "date",
      "doubt",
      "evidence",
      "source",
      "note"),
  FEED_PARAMETERS("feed-parameters", List.of("key"), parameterColumns("doubt")),
  STAND_PARAMETERS("stand-parameters", List.of("key"), parameterColumns()),
  STAND_CHECKS("stand-checks", List.of("key"), parameterColumns()),
  DOSE_RESPONSE("dose-response", List.of("key"), parameterColumns()),
  FARM_DEFAULTS("farm-defaults", List.of("key"), parameterColumns());

  /** The files that hold nothing but parameters of the calculators. */
  static final List<TableFile> PARAMETERS =
      List.of(FEED_PARAMETERS, STAND_PARAMETERS, STAND_CHECKS, DOSE_RESPONSE, FARM_DEFAULTS);

  private final String title;
  private final List<String> key;
  private final List<String> columns;

  TableFile(String title, List<String> key, String... columns) {
    this.title = title;
    this.key = key;
    this.columns = List.of(columns);
  }

  /** The name without its ending, such as {@code dry-stock}. */
  String title() {
    return title;
  }

  String fileName() {
    return title + ".csv";
  }

  List<String> key() {
    return key;
  }

  List<String> columns() {
    return columns;
  }

  private static String[] parameterColumns(String... more) {
    List<String> columns = new ArrayList<>(List.of("key", "name", "low", "likely", "high"));
    columns.addAll(List.of("unit", "evidence", "source"));
    columns.addAll(List.of(more));
    columns.add("note");
    return columns.toArray(String[]::new);
  }

  private static String[] districtColumns() {
    List<String> columns = new ArrayList<>(List.of("name"));
    for (Month month : Month.values()) {
      columns.add(growthColumn(month));
    }
    columns.addAll(
        List.of(
            "winter_months",
            "quality_profile",
            "evidence",
            "source",
            "break_later_in_poor_low_half_months",
            "break_later_in_poor_likely_half_months",
            "break_later_in_poor_high_half_months",
            "break_earlier_in_good_low_half_months",
            "break_earlier_in_good_likely_half_months",
            "break_earlier_in_good_high_half_months",
            "break_evidence",
            "break_source",
            "rain_mm_per_year",
            "rain_evidence",
            "rain_source",
            "green_months",
            "green_months_evidence",
            "unknown_high_chance_low",
            "unknown_high_chance_likely",
            "unknown_high_chance_high",
            "unknown_high_chance_evidence",
            "unknown_high_chance_source",
            "note"));
    return columns.toArray(String[]::new);
  }

  /** The heading of a month's daily growth, such as {@code july_kg_dm_per_ha_day}. */
  static String growthColumn(Month month) {
    return month.name().toLowerCase(Locale.ROOT) + "_kg_dm_per_ha_day";
  }
}
