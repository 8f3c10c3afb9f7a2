package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import swardcase.check.NearestName;
import swardcase.check.ReadLimits;
import swardcase.farm.Identification;
import swardcase.tables.CsvRow;
import swardcase.tables.CsvTable;
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

  private static final List<String> REQUIRED = List.of("paddock", "cultivar");
  private static final List<String> OPTIONAL = List.of("plants", "percent", "plants_looked_at");

  /** What people write for a plant without a name, by the name that stands for it. */
  private static final Map<String, List<String>> EVERYDAY_WORDS =
      Map.of(
          UNIDENTIFIED,
          List.of(
              "?",
              "??",
              "clover",
              "don't know",
              "no name",
              "not known",
              "other",
              "others",
              "rest",
              "sub",
              "sub clover",
              "subclover",
              "subterranean clover",
              "unknown",
              "unnamed"),
          UNIDENTIFIED_OLD,
          List.of(
              "old",
              "old clover",
              "old kind",
              "old sub clover",
              "old type",
              "unknown old",
              "unnamed old"),
          "unnamed high oestrogen",
          List.of("high", "high oestrogen", "oestrogenic", "strong", "strong clover"),
          "unnamed low oestrogen",
          List.of("low", "low oestrogen", "weak"),
          "unnamed old high oestrogen",
          List.of("old high", "old high oestrogen", "old oestrogenic", "old strong"),
          "unnamed old low oestrogen",
          List.of("old low", "old low oestrogen", "old weak"),
          FarmYaml.USUAL_SOWN,
          List.of("new", "new clover", "new sub clover", "modern"));

  /** Percentages may miss 100 by what rounding to whole numbers does. */
  private static final double ROUNDING = 1;

  /** The same for fractions of one. */
  private static final double FRACTIONS_ROUNDING = 0.01;

  private static final int MOST_PLANTS = 100_000;

  private final Map<String, String> cultivars;

  PlantsCsv(Tables tables) {
    this.cultivars = Names.byKey(tables.cultivars().keySet());
  }

  /** What the rows of one paddock have in common. */
  private static final class Walk {
    private final List<Identification> found = new ArrayList<>();
    private final Map<List<String>, Integer> lines = new LinkedHashMap<>();
    private Boolean inPercent;
    private CsvRow firstInPercent;
    private double percent;
    private double lookedAt = Double.NaN;
    private boolean over;
  }

  /**
   * The identifications by the key of the paddock's name.
   *
   * @param paddocks the names of the paddocks, as written in their table
   * @param paddocksName what the user calls that table
   */
  Map<String, List<Identification>> read(
      CsvTable table, List<String> paddocks, String paddocksName) {
    Map<String, Walk> walks = new LinkedHashMap<>();
    if (table.demand(REQUIRED, OPTIONAL)) {
      Set<String> keys = paddocks.stream().map(Names::key).collect(Collectors.toSet());
      for (CsvRow row : table.rows()) {
        String key = Names.key(row.text("paddock"));
        if (!key.isEmpty() && !keys.isEmpty() && !keys.contains(key)) {
          row.faultName("paddock", "must be a paddock of " + paddocksName, paddocks);
        }
        read(row, walks.computeIfAbsent(key, name -> new Walk()));
      }
    }
    Map<String, List<Identification>> found = new LinkedHashMap<>();
    walks.forEach((key, walk) -> found.put(key, completed(walk)));
    return found;
  }

  private void read(CsvRow row, Walk walk) {
    List<String> candidates = candidates(row);
    Integer first = walk.lines.putIfAbsent(candidates, row.line());
    if (first != null && !candidates.isEmpty()) {
      row.fault("cultivar", "must be in one row for a paddock; line " + first + " has it already");
    }
    OptionalInt plants = row.findWhole("plants", 0, MOST_PLANTS);
    OptionalDouble percent = row.findNumber("percent", 0, 100);
    boolean inPercent = row.findText("percent").isPresent();
    if (inPercent == row.findText("plants").isPresent()) {
      row.fault("plants", "must be given, or percent in its place, but not both");
      return;
    }
    if (walk.inPercent != null && walk.inPercent != inPercent) {
      row.fault(inPercent ? "percent" : "plants", "must be one way throughout a paddock");
    }
    walk.inPercent = inPercent;
    OptionalDouble counted =
        inPercent ? inPlants(row, walk, percent) : plants.stream().asDoubleStream().findFirst();
    counted.ifPresent(
        count -> row.make(() -> new Identification(candidates, count)).ifPresent(walk.found::add));
  }

  private static OptionalDouble inPlants(CsvRow row, Walk walk, OptionalDouble percent) {
    double lookedAt =
        row.text("plants_looked_at").isEmpty()
            ? Double.NaN
            : row.findWhole("plants_looked_at", 1, MOST_PLANTS).stream()
                .asDoubleStream()
                .findFirst()
                .orElse(Double.NaN);
    if (!Double.isNaN(walk.lookedAt) && !Double.isNaN(lookedAt) && walk.lookedAt != lookedAt) {
      row.fault("plants_looked_at", "must be the same in all rows of a paddock");
    }
    walk.lookedAt = Double.isNaN(walk.lookedAt) ? lookedAt : walk.lookedAt;
    walk.firstInPercent = walk.firstInPercent == null ? row : walk.firstInPercent;
    walk.percent += percent.orElse(0);
    if (walk.percent > 100 + ROUNDING && !walk.over) {
      walk.over = true;
      row.fault("percent", "must not bring the paddock above 100 in all");
    }
    return percent.isPresent() && !Double.isNaN(lookedAt)
        ? OptionalDouble.of(percent.getAsDouble() / 100 * lookedAt)
        : OptionalDouble.empty();
  }

  /**
   * Plants that the percentages leave over are plants nobody named. Percentages that add up to 1
   * are fractions: almost the whole paddock would count as unnamed.
   */
  private static List<Identification> completed(Walk walk) {
    if (walk.percent > 0 && walk.percent <= 1 + FRACTIONS_ROUNDING) {
      walk.firstInPercent.fault(
          "percent",
          "must be in per cent, 88 and not 0.88: those of the paddock add up to "
              + NumberText.plain(Math.rint(walk.percent * 1e6) / 1e6)
              + "; if so little was named, give the rest as "
              + UNIDENTIFIED);
    }
    double left = 100 - walk.percent;
    if (Boolean.TRUE.equals(walk.inPercent) && left > ROUNDING && !Double.isNaN(walk.lookedAt)) {
      walk.found.add(new Identification(List.of(UNIDENTIFIED), left / 100 * walk.lookedAt));
    }
    return List.copyOf(walk.found);
  }

  /** {@code Dinninup or Yarloop} and {@code Dinninup / Yarloop} are two candidates. */
  private List<String> candidates(CsvRow row) {
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
      } else if (known == null && row.findText("cultivar").isPresent()) {
        unknown(row, part.strip(), parts.length == 1);
      }
    }
    return candidates.stream().sorted().toList();
  }

  private void unknown(CsvRow row, String name, boolean alone) {
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
        .filter(meaning -> meaning.getValue().contains(word))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
