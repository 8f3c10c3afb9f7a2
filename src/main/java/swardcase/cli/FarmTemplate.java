package swardcase.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Turns answers into the files of a farm folder.
 *
 * <p>In the template of {@code farm.yaml} a line with <code>{key}</code> takes the answer and is
 * left out where there is none; a line with <code>{?key}</code> is kept only where there is one.
 */
final class FarmTemplate {

  private static final Pattern PLACE = Pattern.compile("\\{(\\??)([a-z-]+)}");
  private static final Set<String> NAMES =
      Set.of("name", "currency", "growth", "joining-start", "figures", "supplement", "sow");
  private static final Set<String> NONE_AT_ZERO = Set.of("ewes", "other-dse");
  private static final Set<String> PRICES = Set.of("supplement-price", "lamb-value");
  private static final String DATE = "date";
  private static final Pattern AREA = Pattern.compile("(.*?)\\s+([\\d.,]+)\\s*(?:ha)?");

  private FarmTemplate() {}

  /** File names with their texts, made of answers and the day on which prices were taken. */
  static Map<String, String> of(Map<String, String> answers, LocalDate day) {
    Map<String, String> files = new LinkedHashMap<>();
    Map<String, String> dated = new LinkedHashMap<>(answers);
    if (PRICES.stream().anyMatch(price -> given(answers, price))) {
      dated.put(DATE, day.toString());
    }
    files.put("farm.yaml", farm(dated));
    boolean ewes = given(answers, "ewes");
    files.put(
        "paddocks.csv",
        text("paddocks.csv")
            + paddocks(answers.getOrDefault("paddocks", "")).stream()
                .map(row -> row + (ewes ? "ewes" : "other stock") + "\n")
                .collect(Collectors.joining()));
    files.put("plants.csv", text("plants.csv"));
    return files;
  }

  /** The same files to be filled in by hand. */
  static Map<String, String> blank(LocalDate day) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("farm.yaml", text("blank-farm.yaml").replace("{" + DATE + "}", day.toString()));
    files.put("paddocks.csv", text("paddocks.csv"));
    files.put("plants.csv", text("plants.csv"));
    return files;
  }

  private static String farm(Map<String, String> answers) {
    List<String> lines = new ArrayList<>();
    for (String line : text("farm.yaml").lines().toList()) {
      List<MatchResult> places = PLACE.matcher(line).results().toList();
      if (places.isEmpty()) {
        addUnlessSecondBlank(lines, line);
      } else if (places.stream().allMatch(place -> given(answers, place.group(2)))) {
        lines.add(PLACE.matcher(line).replaceAll(place -> filled(place, answers)));
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static String filled(MatchResult place, Map<String, String> answers) {
    boolean condition = !place.group(1).isEmpty();
    return condition ? "" : Matcher.quoteReplacement(value(place.group(2), answers));
  }

  /** Parts that are left out leave no gap. */
  private static void addUnlessSecondBlank(List<String> lines, String line) {
    if (!line.isEmpty() || !lines.get(lines.size() - 1).isEmpty()) {
      lines.add(line);
    }
  }

  private static boolean given(Map<String, String> answers, String key) {
    String answer = answers.getOrDefault(key, "");
    return !answer.isEmpty() && !(NONE_AT_ZERO.contains(key) && answer.equals("0"));
  }

  /** Names in quotation marks; one number bare, several as a list. */
  private static String value(String key, Map<String, String> answers) {
    String answer = answers.get(key);
    if (NAMES.contains(key) || !answer.matches("[\\w.,;+\\s-]+")) {
      return "'" + answer.replace("'", "''") + "'";
    }
    String[] numbers = answer.split("[,;\\s]+");
    return numbers.length == 1 ? numbers[0] : "[" + String.join(", ", numbers) + "]";
  }

  /** Rows that lack only what grazes the paddock. */
  private static List<String> paddocks(String answer) {
    List<String> rows = new ArrayList<>();
    for (String paddock : answer.split("[,;](?!\\d)")) {
      Matcher area = AREA.matcher(paddock.strip());
      boolean both = area.matches();
      String name = both ? area.group(1) : paddock.strip();
      rows.add(cell(name) + "," + cell(both ? area.group(2) : "") + ",,,,,,,,,");
    }
    return rows;
  }

  private static String cell(String text) {
    return text.matches("[\\p{L}\\d][\\p{L}\\d .'-]*")
        ? text
        : '"' + text.replace("\"", "\"\"") + '"';
  }

  private static String text(String resource) {
    try (InputStream in = FarmTemplate.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
