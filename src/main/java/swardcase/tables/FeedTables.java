package swardcase.tables;

import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.farm.PastureQuality;
import swardcase.farm.SeasonType;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Node.Spot;

/** Reads the tables about feed: districts, pasture quality, supplements and dry stock. */
final class FeedTables {

  private static final Map<String, Month> MONTHS = Fields.words(Month.values(), FeedTables::label);

  private FeedTables() {}

  static SortedMap<String, District> districts(List<TableRow> rows, Set<String> profiles) {
    SortedMap<String, District> districts = new TreeMap<>();
    for (TableRow row : rows) {
      row.make(() -> district(row, profiles))
          .ifPresent(district -> districts.put(district.name(), district));
    }
    return districts;
  }

  private static District district(TableRow row, Set<String> profiles) {
    row.has("note");
    String quality = row.text("quality_profile");
    if (!quality.isEmpty() && !profiles.contains(quality)) {
      row.fault("quality_profile", "must name a profile of pasture-quality.csv", profiles);
    }
    OptionalInt rain = markedWhole(row, "rain_mm_per_year", 5000, "rain_evidence");
    row.source("rain_source", rain.isEmpty() ? Evidence.INFERRED : row.evidence("rain_evidence"));
    row.text("winter_months");
    Evidence evidence = row.evidence("evidence");
    return new District(
        row.text("name"),
        Map.of(
            SeasonType.AVERAGE,
            Stream.of(Month.values())
                .map(month -> row.number(label(month) + "_kg_dm_per_ha_day", 0, 250))
                .toList()),
        row.months("winter_months"),
        quality,
        evidence,
        row.source("source", evidence),
        row.setBy(),
        breakMoves(row),
        rain,
        markedWhole(row, "green_months", 12, "green_months_evidence"),
        row.findNumber(
            "chance that clover of unknown formononetin is high in it",
            "-",
            "unknown_high_chance_%",
            0,
            1,
            "unknown_high_chance_"));
  }

  private static Map<SeasonType, Assumption> breakMoves(TableRow row) {
    Map<SeasonType, Assumption> moves = new EnumMap<>(SeasonType.class);
    String later = "break_later_in_poor_%_half_months";
    row.findNumber("later break in a poor season", "half-months", later, 0, 6, "break_")
        .ifPresent(moved -> moves.put(SeasonType.POOR, moved));
    String earlier = "break_earlier_in_good_%_half_months";
    row.findNumber("earlier break in a good season", "half-months", earlier, 0, 6, "break_")
        .ifPresent(moved -> moves.put(SeasonType.GOOD, moved));
    return moves;
  }

  private static OptionalInt markedWhole(TableRow row, String column, int most, String mark) {
    row.evidenceOf(column, mark);
    return row.findWhole(column, 0, most);
  }

  /** Twelve months for each profile; a profile that lacks one is a fault. */
  static SortedMap<String, List<PastureQuality>> pastureQuality(
      List<TableRow> rows, Faults faults) {
    SortedMap<String, Map<Month, PastureQuality>> found = new TreeMap<>();
    int before = faults.count();
    for (TableRow row : rows) {
      Map<Month, PastureQuality> months =
          found.computeIfAbsent(row.text("profile"), key -> new EnumMap<>(Month.class));
      row.make(() -> quality(row)).ifPresent(quality -> months.put(quality.month(), quality));
    }
    boolean rowsGood = faults.count() == before;
    SortedMap<String, List<PastureQuality>> profiles = new TreeMap<>();
    found.forEach(
        (profile, months) -> {
          if (rowsGood && months.size() != 12) {
            String missing =
                Stream.of(Month.values())
                    .filter(month -> !months.containsKey(month))
                    .map(FeedTables::label)
                    .collect(Collectors.joining(", "));
            faults.add(
                new Spot(TableFile.PASTURE_QUALITY.fileName(), 0),
                "month",
                "profile '" + profile + "' must have all 12 months, but lacks " + missing,
                "");
          }
          profiles.put(profile, List.copyOf(months.values()));
        });
    return profiles;
  }

  private static PastureQuality quality(TableRow row) {
    Evidence evidence = row.evidence("evidence");
    return new PastureQuality(
        row.choice("month", MONTHS),
        row.number("green_digestibility_percent", 0, 100) / 100,
        row.number("dry_digestibility_percent", 0, 100) / 100,
        row.number("green_dying_percent_per_month", 0, 100) / 100,
        row.number("dry_lost_percent_per_month", 0, 100) / 100,
        evidence,
        row.source("source", evidence));
  }

  static SortedMap<String, SupplementRow> supplements(List<TableRow> rows) {
    SortedMap<String, SupplementRow> supplements = new TreeMap<>();
    for (TableRow row : rows) {
      row.make(() -> supplement(row)).ifPresent(feed -> supplements.put(feed.name(), feed));
    }
    return supplements;
  }

  private static SupplementRow supplement(TableRow row) {
    String name = row.text("name");
    String currency = row.findText("price_currency").orElse("");
    boolean dated = row.has("price_date") && !currency.isEmpty();
    row.has("note");
    if (row.has("price_likely_per_tonne") && !dated) {
      row.fault("price_date", "the price of " + name + " must have a currency and a date");
    }
    return new SupplementRow(
        name,
        row.number("energy of " + name, "MJ/kg DM", "energy_%_mj_per_kg_dm", 3, 20, "energy_"),
        row.fraction("dry matter of " + name, "dry_matter_%_percent", "dry_matter_"),
        row.fraction("waste of " + name, "waste_%_percent", "waste_"),
        row.findNumber(
            "price of " + name, currency + "/t as fed", "price_%_per_tonne", 0, 10_000, "price_"));
  }

  static SortedMap<String, DryStock> dryStock(List<TableRow> rows) {
    SortedMap<String, DryStock> stock = new TreeMap<>();
    for (TableRow row : rows) {
      String name = row.text("stock");
      row.has("note");
      row.make(() -> dryStock(row, name)).ifPresent(of -> stock.put(name, of));
    }
    return stock;
  }

  private static DryStock dryStock(TableRow row, String name) {
    String unit = "DSE/head";
    String sheep = "dry sheep equivalents of a " + name;
    return new DryStock(
        row.number(sheep, unit, "dse_%_per_head", 0, 40, ""), mostRiskyDays(row, name));
  }

  private static Optional<Assumption> mostRiskyDays(TableRow row, String name) {
    OptionalInt days = markedWhole(row, "most_risky_days", 366, "risky_days_evidence");
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Assumption(
                "most days on risky green feed of a " + name,
                Range.exactly(days.getAsInt()),
                "days",
                row.evidence("risky_days_evidence"),
                "",
                row.setBy()));
  }

  private static String label(Month month) {
    return month.name().toLowerCase(Locale.ROOT);
  }
}
