package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
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

  /** Between names of which the plant may be either. */
  private static final Pattern BETWEEN = Pattern.compile(" (?i:or) |/");

  private static final List<String> REQUIRED = List.of("paddock", "cultivar");
  private static final List<String> OPTIONAL = List.of("plants", "percent", "plants_looked_at");

  /** Percentages may miss 100 by what rounding to whole numbers does. */
  private static final double ROUNDING = 1;

  private final Map<String, String> cultivars;

  PlantsCsv(Tables tables) {
    this.cultivars = Names.byKey(tables.cultivars().keySet());
  }

  /** What the rows of one paddock have in common. */
  private static final class Walk {
    private final List<Identification> found = new ArrayList<>();
    private final Map<List<String>, Integer> lines = new LinkedHashMap<>();
    private Boolean inPercent;
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
    OptionalDouble plants = row.findNumber("plants", 0, 100_000);
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
    OptionalDouble counted = inPercent ? inPlants(row, walk, percent) : plants;
    counted.ifPresent(
        count -> row.make(() -> new Identification(candidates, count)).ifPresent(walk.found::add));
  }

  private static OptionalDouble inPlants(CsvRow row, Walk walk, OptionalDouble percent) {
    double lookedAt = row.number("plants_looked_at", 1, 100_000);
    if (!Double.isNaN(walk.lookedAt) && !Double.isNaN(lookedAt) && walk.lookedAt != lookedAt) {
      row.fault("plants_looked_at", "must be the same in all rows of a paddock");
    }
    walk.lookedAt = Double.isNaN(walk.lookedAt) ? lookedAt : walk.lookedAt;
    walk.percent += percent.orElse(0);
    if (walk.percent > 100 + ROUNDING && !walk.over) {
      walk.over = true;
      row.fault("percent", "must not bring the paddock above 100 in all");
    }
    return percent.isPresent() && !Double.isNaN(lookedAt)
        ? OptionalDouble.of(percent.getAsDouble() / 100 * lookedAt)
        : OptionalDouble.empty();
  }

  /** Plants that the percentages leave over are plants nobody named. */
  private static List<Identification> completed(Walk walk) {
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
    if (alone) {
      row.faultName("cultivar", rule, cultivars.values());
      return;
    }
    String nearest =
        NearestName.find(name, cultivars.values())
            .map(found -> ": '" + name + "' is nearest to '" + found + "'")
            .orElse(": '" + name + "' is not");
    row.fault("cultivar", rule + nearest);
  }
}
