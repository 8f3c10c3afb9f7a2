package swardcase.tables;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.farm.PastureQuality;

/** Reads the tables about feed: districts, pasture quality, supplements and dry stock. */
final class FeedTables {

  private static final Map<String, Month> MONTHS =
      Arrays.stream(Month.values())
          .collect(Collectors.toUnmodifiableMap(FeedTables::label, Function.identity()));

  private FeedTables() {}

  static SortedMap<String, District> districts(List<TableRow> rows, Iterable<String> profiles) {
    List<String> known = new ArrayList<>();
    profiles.forEach(known::add);
    SortedMap<String, District> districts = new TreeMap<>();
    rows.forEach(
        row ->
            district(row, known).ifPresent(district -> districts.put(district.name(), district)));
    return districts;
  }

  private static Optional<District> district(TableRow row, List<String> profiles) {
    CsvRow cells = row.cells();
    String name = cells.text("name");
    List<Double> growth =
        Stream.of(Month.values())
            .map(month -> cells.number(TableFile.growthColumn(month), 0, 250))
            .toList();
    List<Month> winter = months(cells, "winter_months");
    String quality = cells.text("quality_profile");
    if (!quality.isEmpty() && !profiles.contains(quality)) {
      cells.faultName("quality_profile", "must name a profile of pasture-quality.csv", profiles);
    }
    Evidence evidence = row.evidence("evidence");
    String source = row.source("source", evidence);
    Optional<Assumption> later =
        ofDistrict(
            row, "later break in a poor season", "break_later_in_poor", "half-months", "break");
    Optional<Assumption> earlier =
        ofDistrict(
            row, "earlier break in a good season", "break_earlier_in_good", "half-months", "break");
    OptionalInt rain = markedWhole(row, "rain_mm_per_year", 5000, "rain_evidence");
    row.source("rain_source", rain.isEmpty() ? Evidence.INFERRED : row.evidence("rain_evidence"));
    OptionalInt green = markedWhole(row, "green_months", 12, "green_months_evidence");
    Optional<Assumption> unknownHigh =
        ofDistrict(
            row,
            "chance that clover of unknown formononetin is high in it",
            "unknown_high_chance",
            "-",
            "unknown_high_chance");
    return cells.make(
        () ->
            new District(
                name,
                growth,
                winter,
                quality,
                evidence,
                source,
                row.setBy(),
                later,
                earlier,
                rain,
                green,
                unknownHigh));
  }

  /** Three cells of a district that may be blank, a share or a number of half-months. */
  private static Optional<Assumption> ofDistrict(
      TableRow row, String name, String stem, String unit, String markStem) {
    boolean isShare = unit.equals("-");
    String ending = isShare ? "" : "_half_months";
    String likely = stem + "_likely" + ending;
    row.evidenceOf(likely, markStem + "_evidence");
    Optional<Range> range =
        row.cells()
            .findRange(stem + "_low" + ending, likely, stem + "_high" + ending, 0, isShare ? 1 : 6);
    return range.isEmpty()
        ? Optional.empty()
        : row.assumption(name, range, unit, markStem + "_evidence", markStem + "_source");
  }

  private static OptionalInt markedWhole(TableRow row, String column, int most, String mark) {
    row.evidenceOf(column, mark);
    return row.cells().findWhole(column, 0, most);
  }

  private static List<Month> months(CsvRow cells, String column) {
    List<Month> months = new ArrayList<>();
    cells.text(column);
    for (String word : cells.list(column)) {
      Month month = MONTHS.get(word.toLowerCase(Locale.ROOT));
      if (month == null) {
        cells.fault(column, "must hold month names in full, such as June;July");
      } else {
        months.add(month);
      }
    }
    return List.copyOf(months);
  }

  /** Twelve months for each profile; a profile that lacks one is a fault. */
  static SortedMap<String, List<PastureQuality>> pastureQuality(
      List<TableRow> rows, List<Fault> faults) {
    SortedMap<String, Map<Month, PastureQuality>> found = new TreeMap<>();
    for (TableRow row : rows) {
      Map<Month, PastureQuality> months =
          found.computeIfAbsent(row.cells().text("profile"), key -> new EnumMap<>(Month.class));
      quality(row).ifPresent(quality -> months.put(quality.month(), quality));
    }
    boolean rowsGood = rows.stream().allMatch(row -> row.cells().isGood());
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
                new Fault(
                    "pasture-quality.csv",
                    0,
                    "month",
                    "profile '" + profile + "' must have all 12 months, but lacks " + missing,
                    "",
                    ""));
          }
          profiles.put(profile, List.copyOf(months.values()));
        });
    return profiles;
  }

  private static Optional<PastureQuality> quality(TableRow row) {
    CsvRow cells = row.cells();
    Optional<Month> month = cells.choice("month", MONTHS);
    double green = cells.number("green_digestibility_percent", 0, 100) / 100;
    double dry = cells.number("dry_digestibility_percent", 0, 100) / 100;
    double dying = cells.number("green_dying_percent_per_month", 0, 100) / 100;
    double lost = cells.number("dry_lost_percent_per_month", 0, 100) / 100;
    Evidence evidence = row.evidence("evidence");
    String source = row.source("source", evidence);
    return cells.make(
        () -> new PastureQuality(month.orElseThrow(), green, dry, dying, lost, evidence, source));
  }

  static SortedMap<String, SupplementRow> supplements(List<TableRow> rows) {
    SortedMap<String, SupplementRow> supplements = new TreeMap<>();
    rows.forEach(row -> supplement(row).ifPresent(feed -> supplements.put(feed.name(), feed)));
    return supplements;
  }

  private static Optional<SupplementRow> supplement(TableRow row) {
    CsvRow cells = row.cells();
    String name = cells.text("name");
    Optional<Assumption> energy =
        row.assumption(
            "energy of " + name,
            cells.range(
                "energy_low_mj_per_kg_dm",
                "energy_likely_mj_per_kg_dm",
                "energy_high_mj_per_kg_dm",
                3,
                20),
            "MJ/kg DM",
            "energy_evidence",
            "energy_source");
    Optional<Assumption> dryMatter = percent(row, "dry_matter", "dry matter of " + name);
    Optional<Assumption> waste = percent(row, "waste", "waste of " + name);
    String currency = cells.findText("price_currency").orElse("");
    Optional<Assumption> price = price(row, name, currency);
    return cells.make(
        () ->
            new SupplementRow(
                name,
                energy.orElseThrow(),
                dryMatter.orElseThrow(),
                waste.orElseThrow(),
                price,
                currency,
                cells.findText("price_date").orElse(""),
                cells.findText("note").orElse("")));
  }

  private static Optional<Assumption> price(TableRow row, String name, String currency) {
    row.evidenceOf("price_likely_per_tonne", "price_evidence");
    Optional<Range> range =
        row.cells()
            .findRange(
                "price_low_per_tonne", "price_likely_per_tonne", "price_high_per_tonne", 0, 10_000);
    return range.isEmpty()
        ? Optional.empty()
        : row.assumption(
            "price of " + name, range, currency + "/t as fed", "price_evidence", "price_source");
  }

  /** A fraction that the table gives in per cent. */
  private static Optional<Assumption> percent(TableRow row, String stem, String name) {
    Optional<Range> range =
        row.cells()
            .range(stem + "_low_percent", stem + "_likely_percent", stem + "_high_percent", 0, 100)
            .map(it -> Range.of(it.low() / 100, it.likely() / 100, it.high() / 100));
    return row.assumption(name, range, "-", stem + "_evidence", stem + "_source");
  }

  static SortedMap<String, DryStock> dryStock(List<TableRow> rows) {
    SortedMap<String, DryStock> stock = new TreeMap<>();
    for (TableRow row : rows) {
      String name = row.cells().text("stock");
      Optional<Range> range =
          row.cells().range("dse_low_per_head", "dse_likely_per_head", "dse_high_per_head", 0, 40);
      Optional<Assumption> riskyDays = mostRiskyDays(row, name);
      row.assumption("dry sheep equivalents of a " + name, range, "DSE/head", "evidence", "source")
          .ifPresent(dse -> stock.put(name, new DryStock(dse, riskyDays)));
    }
    return stock;
  }

  private static Optional<Assumption> mostRiskyDays(TableRow row, String name) {
    row.evidenceOf("most_risky_days", "risky_days_evidence");
    OptionalInt days = row.cells().findWhole("most_risky_days", 0, 366);
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
