package swardcase.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import swardcase.check.NearestName;
import swardcase.check.NumberText;
import swardcase.check.ReadLimits;
import swardcase.farm.Identification;
import swardcase.reading.Fields;
import swardcase.reading.Names;
import swardcase.reading.Table;
import swardcase.tables.Tables;

/**
 * Reads the table of plants, {@code plants.csv} or a sheet: what was found on the walk over each
 * paddock, as counts or as per cent of a number of plants looked at.
 */
final class PlantsCsv {

  static final String TABLE = "plants";

  /** The row of the cultivar table for plants nobody could name. */
  static final String UNIDENTIFIED = "unidentified";

  /** The row for plants of an old kind that nobody could name. */
  private static final String UNIDENTIFIED_OLD = "unidentified old";

  /** Between names of which the plant may be either. */
  private static final Pattern BETWEEN = Pattern.compile(" (?i:or) |/");

  private static final String LOOKED_AT = "plants_looked_at";

  /** What people write for a plant without a name, by the name that stands for it. */
  private static final Map<String, String> EVERYDAY_WORDS =
      Map.of(
          UNIDENTIFIED,
          "?, ??, clover, don't know, no name, not known, other, others, rest, sub, sub clover,"
              + " subclover, subterranean clover, unknown, unnamed",
          UNIDENTIFIED_OLD,
          "old, old clover, old kind, old sub clover, old type, unknown old, unnamed old",
          "unnamed high oestrogen",
          "high, high oestrogen, oestrogenic, strong, strong clover",
          "unnamed low oestrogen",
          "low, low oestrogen, weak",
          "unnamed old high oestrogen",
          "old high, old high oestrogen, old oestrogenic, old strong",
          "unnamed old low oestrogen",
          "old low, old low oestrogen, old weak",
          FarmReader.USUAL_SOWN,
          "new, new clover, new sub clover, modern");

  /** Percentages may miss 100 by what rounding to whole numbers does. */
  private static final double ROUNDING = 1;

  /** The same for fractions of one. */
  private static final double FRACTIONS_ROUNDING = 0.01;

  private static final int MOST_PLANTS = 100_000;

  private final Map<String, String> cultivars;

  PlantsCsv(Tables tables) {
    this.cultivars = Names.byKey(tables.cultivars().keySet());
  }

  /**
   * The identifications by the key of the paddock's name.
   *
   * @param paddocks the names of the paddocks, as written in their table
   * @param paddocksName what the user calls that table
   */
  Map<String, List<Identification>> read(Table table, List<String> paddocks, String paddocksName) {
    Set<String> keys = paddocks.stream().map(Names::key).collect(Collectors.toSet());
    Map<String, List<Fields>> rows = new LinkedHashMap<>();
    for (Fields row : table.rows()) {
      String key = Names.key(row.text("paddock"));
      if (!key.isEmpty() && !keys.isEmpty() && !keys.contains(key)) {
        row.fault("paddock", "must be a paddock of " + paddocksName, paddocks);
      }
      rows.computeIfAbsent(key, paddock -> new ArrayList<>()).add(row);
    }
    Map<String, List<Identification>> found = new LinkedHashMap<>();
    rows.forEach((key, ofPaddock) -> found.put(key, walk(ofPaddock)));
    table.finish();
    return found;
  }

  /** What was found in one paddock, as counts or as per cent of the plants looked at. */
  private List<Identification> walk(List<Fields> rows) {
    List<Identification> found = new ArrayList<>();
    Map<List<String>, Integer> lines = new HashMap<>();
    List<Fields> told = new ArrayList<>();
    for (Fields row : rows) {
      List<String> candidates = candidates(row);
      Integer first = lines.putIfAbsent(candidates, row.at().line());
      if (first != null && !candidates.isEmpty()) {
        String rule = "must be in one row for a paddock; line " + first + " has it already";
        row.fault("cultivar", rule);
      }
      boolean inPercent = row.has("percent");
      row.has(LOOKED_AT);
      if (inPercent == row.has("plants")) {
        row.fault("plants", "must be given, or percent in its place, but not both");
        continue;
      }
      if (!told.isEmpty() && told.get(0).has("percent") != inPercent) {
        row.fault(inPercent ? "percent" : "plants", "must be one way throughout a paddock");
      }
      told.add(row);
      row.make(() -> plants(row))
          .filter(count -> !candidates.isEmpty())
          .ifPresent(count -> found.add(new Identification(candidates, count)));
    }
    told.removeIf(row -> !row.has("percent"));
    if (!told.isEmpty()) {
      unnamed(told).ifPresent(found::add);
    }
    return found;
  }

  private static double plants(Fields row) {
    return row.has("percent")
        ? row.number("percent", 0, 100) / 100 * row.whole(LOOKED_AT, 1, MOST_PLANTS)
        : row.whole("plants", 0, MOST_PLANTS);
  }

  /**
   * Plants that the percentages leave over are plants nobody named. Percentages that add up to 1
   * are fractions: almost the whole paddock would count as unnamed.
   */
  private static Optional<Identification> unnamed(List<Fields> rows) {
    Fields first = rows.get(0);
    OptionalInt lookedAt = first.findWhole(LOOKED_AT, 1, MOST_PLANTS);
    double sum = 0;
    for (Fields row : rows) {
      boolean under = sum <= 100 + ROUNDING;
      sum += row.findNumber("percent", 0, 100).orElse(0);
      if (under && sum > 100 + ROUNDING) {
        row.fault("percent", "must not bring the paddock above 100 in all");
      }
      OptionalInt also = row.findWhole(LOOKED_AT, 1, MOST_PLANTS);
      if (lookedAt.isPresent() && also.isPresent() && !also.equals(lookedAt)) {
        row.fault(LOOKED_AT, "must be the same in all rows of a paddock");
      }
    }
    if (sum > 0 && sum <= 1 + FRACTIONS_ROUNDING) {
      first.fault(
          "percent",
          "must be in per cent, 88 and not 0.88: those of the paddock add up to "
              + NumberText.plain(Math.rint(sum * 1e6) / 1e6)
              + "; if so little was named, give the rest as "
              + UNIDENTIFIED);
    }
    double left = 100 - sum;
    return left > ROUNDING && lookedAt.isPresent()
        ? Optional.of(new Identification(List.of(UNIDENTIFIED), left / 100 * lookedAt.getAsInt()))
        : Optional.empty();
  }

  /** {@code Dinninup or Yarloop} and {@code Dinninup / Yarloop} are two candidates. */
  private List<String> candidates(Fields row) {
    List<String> candidates = new ArrayList<>();
    String[] parts = BETWEEN.split(Names.tidy(row.text("cultivar")));
    if (parts.length > ReadLimits.CANDIDATES) {
      row.fault("cultivar", "must not be more than " + ReadLimits.CANDIDATES + " names");
      return candidates;
    }
    for (String part : parts) {
      String known = cultivars.get(Names.key(part));
      if (known != null && !candidates.contains(known)) {
        candidates.add(known);
      } else if (known == null && row.has("cultivar")) {
        unknown(row, part.strip(), parts.length == 1);
      }
    }
    return candidates.stream().sorted().toList();
  }

  private void unknown(Fields row, String name, boolean alone) {
    String rule = "must be in the table of cultivars";
    Supplier<String> meant =
        () -> everydayWord(name).or(() -> NearestName.find(name, cultivars.values())).orElse("");
    if (alone) {
      row.fault("cultivar", rule, meant);
    } else {
      String nearest = meant.get();
      String hint = nearest.isEmpty() ? "' is not" : "' is nearest to '" + nearest + "'";
      row.fault("cultivar", rule + ": '" + name + hint);
    }
  }

  private static Optional<String> everydayWord(String typed) {
    String word = Names.key(typed);
    return EVERYDAY_WORDS.entrySet().stream()
        .filter(meaning -> List.of(meaning.getValue().split(", ")).contains(word))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
