package swardcase.evaluation;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * One number of the reference tables, taken to the low and to the high end of its range; a number
 * without a range is taken a tenth down and a tenth up.
 *
 * @param file the table
 * @param input what is changed, in words
 * @param range its ends, in words
 * @param evidence mark of the row
 * @param low rows of the table with the number at its low end
 * @param high the same at its high end
 * @param factor name of the number that is drawn in place of this one and others; blank if none is
 */
record ReferenceChange(
    String file,
    String input,
    String range,
    String evidence,
    List<Map<String, String>> low,
    List<Map<String, String>> high,
    String factor) {

  private static final Path TABLES = Path.of("tables");
  private static final double TENTH = 0.1;

  /** Tables whose rows carry low, likely and high values. */
  private static final List<String> RANGED =
      List.of(
          "feed-parameters.csv",
          "stand-parameters.csv",
          "dose-response.csv",
          "farm-defaults.csv",
          "action-values.csv",
          "action-costs.csv",
          "cultivars.csv",
          "supplements.csv",
          "dry-stock.csv");

  /**
   * What is drawn in place of a column of pasture-quality.csv; growth is for those of a district.
   */
  private static final Map<String, String> FACTORS =
      Map.of(
          "green_digestibility_percent", "feed.green-digestibility",
          "dry_digestibility_percent", "feed.dry-selection",
          "green_dying_percent_per_month", "feed.green-dying-multiplier",
          "dry_lost_percent_per_month", "feed.dry-loss-multiplier");

  /** Tables of which a farm uses some rows only, and the column with the row's name. */
  private static final Map<String, String> NAMES =
      Map.of(
          "cultivars.csv", "name",
          "supplements.csv", "name",
          "dry-stock.csv", "stock");

  /**
   * Every number that a farm could use, tables in a fixed order.
   *
   * @param used names that the farm uses, in any order
   */
  static List<ReferenceChange> all(String used) {
    List<ReferenceChange> changes = new ArrayList<>();
    for (String file : RANGED) {
      String name = NAMES.get(file);
      for (Map<String, String> row : PublishedRows.rows(TABLES.resolve(file))) {
        if (name != null && !used.contains(row.get(name))) {
          continue;
        }
        row.keySet().stream()
            .filter(column -> column.contains("likely") && !row.get(column).isEmpty())
            .forEach(column -> changes.add(ofRange(file, row, column)));
      }
    }
    for (String file : List.of("pasture-quality.csv", "districts.csv")) {
      List<Map<String, String>> rows = PublishedRows.rows(TABLES.resolve(file));
      rows.get(0).keySet().stream()
          .filter(column -> column.contains("percent") || column.contains("kg_dm"))
          .forEach(column -> changes.add(ofColumn(file, rows, column)));
    }
    return changes;
  }

  /** What the value is, where it stands, its range and mark, as cells of a table. */
  String cells() {
    return String.format(
        Locale.ROOT, "| %s | %s | %s | %s |", input, file.replace(".csv", ""), range, evidence);
  }

  private static ReferenceChange ofRange(String file, Map<String, String> row, String column) {
    String lowColumn = column.replace("likely", "low");
    String highColumn = column.replace("likely", "high");
    double low = PublishedRows.number(row, lowColumn);
    double high = PublishedRows.number(row, highColumn);
    double likely = PublishedRows.number(row, column);
    boolean exact = low == high;
    List<String> columns = List.of(lowColumn, column, highColumn);
    return new ReferenceChange(
        file,
        name(file, row, column),
        exact ? plain(likely) + " ± 10 %" : plain(low) + " to " + plain(high),
        mark(row, column),
        List.of(with(row, columns, value -> exact ? likely * (1 - TENTH) : low)),
        List.of(with(row, columns, value -> exact ? likely * (1 + TENTH) : high)),
        file.equals("feed-parameters.csv") ? row.get("doubt") : "");
  }

  private static ReferenceChange ofColumn(
      String file, List<Map<String, String>> rows, String column) {
    double most = column.contains("percent") ? 100 : Double.MAX_VALUE;
    return new ReferenceChange(
        file,
        column.replace('_', ' ') + ", all rows",
        "± 10 %",
        rows.get(0).get("evidence"),
        rows.stream().map(row -> with(row, List.of(column), v -> v * (1 - TENTH))).toList(),
        rows.stream()
            .map(row -> with(row, List.of(column), v -> Math.min(most, v * (1 + TENTH))))
            .toList(),
        nameOf(FACTORS.getOrDefault(column, "feed.growth-multiplier")));
  }

  private static String nameOf(String key) {
    return PublishedRows.rows(TABLES.resolve("feed-parameters.csv")).stream()
        .filter(row -> row.get("key").equals(key))
        .findFirst()
        .orElseThrow()
        .get("name");
  }

  private static String name(String file, Map<String, String> row, String column) {
    String first = row.values().iterator().next();
    if (file.equals("action-costs.csv")) {
      return first + ": cost of " + row.get("name") + ", " + row.get("phase");
    }
    if (file.equals("action-values.csv")) {
      return first + ": " + row.get("value");
    }
    return row.containsKey("key")
        ? row.get("name")
        : first + ": " + column.replace("_likely", "").replace('_', ' ');
  }

  /** The mark that stands beside a column: its own where the table has several. */
  private static String mark(Map<String, String> row, String column) {
    String stem = column.substring(0, column.indexOf("likely"));
    return row.keySet().stream()
        .filter(name -> name.endsWith("_evidence"))
        .filter(name -> stem.contains(name.substring(0, name.length() - "evidence".length())))
        .findFirst()
        .map(row::get)
        .orElseGet(() -> row.getOrDefault("evidence", ""));
  }

  private static Map<String, String> with(
      Map<String, String> row, List<String> columns, DoubleUnaryOperator change) {
    Map<String, String> changed = new LinkedHashMap<>(row);
    for (String column : columns) {
      changed.put(column, plain(change.applyAsDouble(PublishedRows.number(row, column))));
    }
    return changed;
  }

  private static String plain(double value) {
    String text = String.format(Locale.ROOT, "%.6f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  /** Writes changed rows as a user's table into an empty folder. */
  static void write(Path folder, String file, List<Map<String, String>> rows) throws IOException {
    StringBuilder text = new StringBuilder(String.join(",", rows.get(0).keySet())).append('\n');
    for (Map<String, String> row : rows) {
      List<String> cells =
          row.values().stream().map(cell -> '"' + cell.replace("\"", "\"\"") + '"').toList();
      text.append(String.join(",", cells)).append('\n');
    }
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }
}
