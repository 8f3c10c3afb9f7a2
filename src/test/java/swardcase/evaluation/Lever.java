package swardcase.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A change of the tables that would do away with a miss, and what it moves on the demonstration
 * farms. Levers stand in levers.csv; what they move, in a file that {@link MovesTest} makes.
 *
 * @param name the key
 * @param words what is changed
 * @param changes rows of levers.csv
 */
record Lever(String name, String words, List<Map<String, String>> changes) {

  static final List<String> FARMS =
      List.of("mixed-farm", "northern-farm", "current-farm", "risky-farm", "large-farm");

  static final Path MOVES = Path.of("src/test/resources/lever-moves.csv");

  private static final Path LEVERS = Path.of("src/test/resources/levers.csv");
  private static final Path TABLES = Path.of("tables");
  private static final List<String> ENDS = List.of("low", "likely", "high");

  /** Every lever, in the order of the file. */
  static List<Lever> all() {
    return PublishedRows.rows(LEVERS).stream()
        .collect(
            Collectors.groupingBy(row -> row.get("lever"), LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(
            lever ->
                new Lever(lever.getKey(), lever.getValue().get(0).get("words"), lever.getValue()))
        .toList();
  }

  /** Writes the changed rows as a user's tables. */
  void write(Path folder) throws IOException {
    Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
    for (Map<String, String> change : changes) {
      List<String> keys = List.of(change.get("key").split("\\|"));
      for (Map<String, String> row : PublishedRows.rows(TABLES.resolve(change.get("file")))) {
        if (keys.contains("*") || keys.contains(row.values().iterator().next())) {
          tables
              .computeIfAbsent(change.get("file"), file -> new ArrayList<>())
              .add(changed(row, change.get("columns"), change.get("value")));
        }
      }
    }
    for (Map.Entry<String, List<Map<String, String>>> table : tables.entrySet()) {
      ReferenceChange.write(folder, table.getKey(), table.getValue());
    }
  }

  private static Map<String, String> changed(
      Map<String, String> row, String columns, String change) {
    Map<String, String> changed = new LinkedHashMap<>(row);
    List<String> ends =
        ENDS.stream()
            .flatMap(
                end ->
                    row.keySet().stream()
                        .filter(
                            column -> isEnd(column, columns, end) && !row.get(column).isEmpty()))
            .toList();
    if (ends.isEmpty()) {
      row.keySet().stream()
          .filter(column -> column.contains(columns))
          .forEach(column -> changed.put(column, plain(apply(row.get(column), change))));
      return changed;
    }
    double[] values = ends.stream().mapToDouble(end -> Double.parseDouble(row.get(end))).toArray();
    double likely = apply(row.get(ends.get(1)), change);
    changed.put(ends.get(0), plain(Math.min(values[0], likely)));
    changed.put(ends.get(1), plain(likely));
    changed.put(ends.get(2), plain(Math.max(values[2], likely)));
    return changed;
  }

  private static boolean isEnd(String column, String columns, String end) {
    String stem = columns.isEmpty() ? end : columns + "_" + end;
    return column.equals(stem) || column.startsWith(stem + "_");
  }

  private static double apply(String cell, String change) {
    double value = Double.parseDouble(change.substring(1));
    return change.charAt(0) == 'x' ? value * Double.parseDouble(cell) : value;
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.6f", value).replaceAll("\\.?0+$", "");
  }

  /** What a lever moves, for the last column of a check; a reason in words stays as it is. */
  static String inWords(String effect) {
    List<Map<String, String>> moves = moves(effect);
    if (moves.isEmpty()) {
      return effect;
    }
    String otherwise =
        moves.stream()
            .filter(move -> PublishedRows.number(move, "planned_otherwise") > 0)
            .map(move -> move.get("planned_otherwise") + " on " + move.get("farm"))
            .collect(Collectors.joining(", "));
    return "*%s*: %s"
        .formatted(
            effect, otherwise.isEmpty() ? "no other plan" : "planned otherwise " + otherwise);
  }

  private static List<Map<String, String>> moves(String lever) {
    return Files.exists(MOVES)
        ? PublishedRows.rows(MOVES).stream().filter(row -> row.get("lever").equals(lever)).toList()
        : List.of();
  }

  /** The table of all levers: what is changed, and what each farm then plans and gains. */
  static String table() {
    StringBuilder text = new StringBuilder("| lever | what is changed |");
    FARMS.forEach(farm -> text.append(' ').append(farm).append(" |"));
    text.append("\n|---|---|").append("---|".repeat(FARMS.size())).append("\n| | as it is |");
    FARMS.forEach(farm -> text.append(' ').append(cell("", farm)).append(" |"));
    for (Lever lever : all()) {
      text.append("\n| ").append(lever.name()).append(" | ").append(lever.words()).append(" |");
      FARMS.forEach(farm -> text.append(' ').append(cell(lever.name(), farm)).append(" |"));
    }
    return text.append('\n').toString();
  }

  private static String cell(String lever, String farm) {
    return moves(lever).stream()
        .filter(move -> move.get("farm").equals(farm))
        .map(
            move ->
                lever.isEmpty()
                    ? move.get("gain")
                    : move.get("planned_otherwise") + "; " + move.get("gain"))
        .findFirst()
        .orElse("");
  }
}
