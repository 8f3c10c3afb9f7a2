package swardcase.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The large demonstration farm with its paddocks repeated until there are as many as wanted; ewes,
 * other stock and the budget in proportion.
 */
final class GrownFarm {

  private static final Path LARGE = Path.of("demo-data", "large-farm");
  private static final Pattern HEAD =
      Pattern.compile("(?m)(?<=^ {4}ewes: |^ {4}head: |^ {2}budget_per_year: )\\d+");
  private static final Pattern AGES = Pattern.compile("(?<=ages: \\[)[\\d, ]+");

  private GrownFarm() {}

  /** Writes the folder. */
  static void write(int paddocks, Path folder) throws IOException {
    List<String> rows = rows("paddocks.csv");
    List<String> plants = rows("plants.csv");
    int given = rows.size() - 1;
    List<String> grown = new ArrayList<>(rows.subList(0, 1));
    List<String> walked = new ArrayList<>(plants.subList(0, 1));
    for (int i = 0; i < paddocks; i++) {
      String row = rows.get(1 + i % given);
      String name = row.substring(0, row.indexOf(','));
      String mark = i < given ? "" : " " + (i / given + 1);
      grown.add(name + mark + row.substring(name.length()));
      for (String plant : plants) {
        if (plant.startsWith(name + ",")) {
          walked.add(name + mark + plant.substring(name.length()));
        }
      }
    }
    double factor = (double) paddocks / given;
    String farm = Files.readString(LARGE.resolve("farm.yaml"));
    farm = HEAD.matcher(farm).replaceAll(number -> times(number, factor));
    farm = AGES.matcher(farm).replaceAll(ages -> times(ages, factor));
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("farm.yaml"), farm);
    Files.write(folder.resolve("paddocks.csv"), grown);
    Files.write(folder.resolve("plants.csv"), walked);
  }

  private static List<String> rows(String file) throws IOException {
    return Files.readAllLines(LARGE.resolve(file)).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .toList();
  }

  private static String times(MatchResult numbers, double factor) {
    return Arrays.stream(numbers.group().split(","))
        .map(number -> Math.round(Double.parseDouble(number.strip()) * factor))
        .map(number -> String.format(Locale.ROOT, "%d", number))
        .collect(Collectors.joining(", "));
  }
}
