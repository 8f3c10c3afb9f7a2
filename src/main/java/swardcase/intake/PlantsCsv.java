package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.check.NearestName;
import swardcase.farm.Identification;
import swardcase.tables.CsvRow;
import swardcase.tables.CsvTable;
import swardcase.tables.Tables;

/**
 * Reads {@code plants.csv}: what was found on the walk over each paddock, as counts or as per cent
 * of a number of plants looked at.
 */
final class PlantsCsv {

  static final String FILE = "plants.csv";

  /** The row of the cultivar table for plants nobody could name. */
  static final String UNIDENTIFIED = "unidentified";

  private static final List<String> REQUIRED = List.of("paddock", "cultivar");
  private static final List<String> OPTIONAL = List.of("plants", "percent", "plants_looked_at");

  /** Percentages may miss 100 by what rounding to whole numbers does. */
  private static final double ROUNDING = 1;

  private final Tables tables;

  PlantsCsv(Tables tables) {
    this.tables = tables;
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
   * @param paddocks the names of the paddocks, as written in {@code paddocks.csv}
   */
  Map<String, List<Identification>> read(CsvTable table, List<String> paddocks) {
    Map<String, Walk> walks = new LinkedHashMap<>();
    if (table.demand(REQUIRED, OPTIONAL)) {
      List<String> keys = paddocks.stream().map(Names::key).toList();
      for (CsvRow row : table.rows()) {
        String key = Names.key(row.text("paddock"));
        if (!key.isEmpty() && !keys.isEmpty() && !keys.contains(key)) {
          row.faultName("paddock", "must be a paddock of " + PaddocksCsv.FILE, paddocks);
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
    String[] parts = row.text("cultivar").split("\\s+(?i:or)\\s+|/");
    for (String part : parts) {
      Optional<String> known = Names.find(part, tables.cultivars().keySet());
      if (known.isPresent() && !candidates.contains(known.get())) {
        candidates.add(known.get());
      } else if (known.isEmpty() && row.findText("cultivar").isPresent()) {
        unknown(row, part.strip(), parts.length == 1);
      }
    }
    return candidates.stream().sorted().toList();
  }

  private void unknown(CsvRow row, String name, boolean alone) {
    String rule = "must be in the table of cultivars";
    if (alone) {
      row.faultName("cultivar", rule, tables.cultivars().keySet());
      return;
    }
    String nearest =
        NearestName.find(name, tables.cultivars().keySet())
            .map(found -> ": '" + name + "' is nearest to '" + found + "'")
            .orElse(": '" + name + "' is not");
    row.fault("cultivar", rule + nearest);
  }
}
