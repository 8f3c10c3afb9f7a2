package swardcase.folder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swardcase.farm.ScanningBasis;
import swardcase.folder.Questions.AskedMob;
import swardcase.reading.CsvEdit;
import swardcase.reading.Table;

/**
 * Turns answers into the files of a farm folder.
 *
 * <p>In the template of {@code farm.yaml} a line with <code>{key}</code> takes the answer and is
 * left out where there is none; a line with <code>{?key}</code> is kept only where there is one.
 * The line <code>{mobs}</code> takes an entry of {@code mob.yaml} for each mob.
 */
public final class FarmTemplate {

  private static final Pattern PLACE = Pattern.compile("\\{(\\??)([a-z-]+)}");
  private static final Set<String> NONE_AT_ZERO = Set.of("ewes", "maidens", "other-dse");
  private static final Map<String, String> FIGURES =
      Map.of("yes", ScanningBasis.OBSERVED.label(), "no", ScanningBasis.UNAFFECTED.label());
  private static final String AGES = "ages";
  private static final String MOBS = "{mobs}";
  private static final Set<String> PRICES = Set.of("supplement-price", "lamb-value");
  private static final String DATE = "date";
  private static final Pattern AREA = Pattern.compile("(.*?)\\s+([\\d.,]+)\\s*(?:ha)?");

  private FarmTemplate() {}

  /**
   * File names with their texts.
   *
   * @param day on which prices were taken
   * @param joinings how often a ewe is joined in her life, where the farm does not say
   */
  static Map<String, String> of(Map<String, String> answers, LocalDate day, int joinings) {
    Map<String, String> files = new LinkedHashMap<>();
    Map<String, String> dated = new LinkedHashMap<>(answers);
    if (PRICES.stream().anyMatch(price -> given(answers, price))) {
      dated.put(DATE, day.toString());
    }
    files.put("farm.yaml", farm(dated, joinings));
    files.put("paddocks.csv", paddocks(answers));
    files.put("plants.csv", text("plants.csv"));
    return files;
  }

  /** The same files to be filled in by hand. */
  public static Map<String, String> blank(LocalDate day) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("farm.yaml", text("blank-farm.yaml").replace("{" + DATE + "}", day.toString()));
    files.put("paddocks.csv", text("paddocks.csv"));
    files.put("plants.csv", text("plants.csv"));
    return files;
  }

  private static String farm(Map<String, String> answers, int joinings) {
    List<String> lines = new ArrayList<>();
    for (String line : text("farm.yaml").lines().toList()) {
      if (line.equals(MOBS)) {
        Questions.MOBS.stream()
            .filter(mob -> mob.isThere(answers))
            .map(mob -> ofMob(mob, answers, joinings))
            .forEach(mob -> text("mob.yaml").lines().forEach(row -> fill(row, mob, lines)));
      } else {
        fill(line, answers, lines);
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static void fill(String line, Map<String, String> answers, List<String> lines) {
    List<MatchResult> places = PLACE.matcher(line).results().toList();
    if (places.isEmpty()) {
      addUnlessSecondBlank(lines, line);
    } else if (places.stream().allMatch(place -> given(answers, place.group(2)))) {
      lines.add(PLACE.matcher(line).replaceAll(place -> filled(place, answers)));
    }
  }

  /** The answers about a mob, under the keys of the first. */
  private static Map<String, String> ofMob(
      AskedMob asked, Map<String, String> answers, int joinings) {
    Map<String, String> mob = new LinkedHashMap<>();
    answers.forEach(
        (key, answer) -> {
          if (key.startsWith(asked.prefix())) {
            mob.put(key.substring(asked.prefix().length()), answer);
          }
        });
    String ewes = answers.get(asked.ewes());
    boolean apart = given(answers, "maidens");
    mob.put("ewes", ewes);
    if (!asked.name().isEmpty()) {
      mob.put("mob", answers.get(asked.name()));
    } else if (asked.prefix().isEmpty()) {
      mob.put("mob", apart ? "mature ewes" : "ewes");
      mob.put(AGES, apart ? withoutMaidens(ewes, joinings) : "");
    } else {
      mob.put("mob", "maidens");
      mob.put(AGES, "[" + ewes + "]");
    }
    return mob;
  }

  /** Equal numbers at each joining but the first, with a note that says so. */
  private static String withoutMaidens(String ewes, int joinings) {
    if (!ewes.matches("\\d{1,7}") || joinings < 2) {
      return "";
    }
    int head = Integer.parseInt(ewes);
    int ages = joinings - 1;
    String equal =
        IntStream.range(0, ages)
            .mapToObj(age -> Integer.toString(head / ages + (age < head % ages ? 1 : 0)))
            .collect(Collectors.joining(", "));
    return "[0, " + equal + "]   # by number of joinings: put in your own where they are not equal";
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
    return Questions.given(answers, key)
        && !(NONE_AT_ZERO.contains(key) && answers.get(key).equals("0"));
  }

  private static String value(String key, Map<String, String> answers) {
    String answer = answers.get(key);
    return switch (key) {
      case AGES -> answer;
      case "figures" -> FIGURES.getOrDefault(answer, answer);
      default -> Typed.yaml(answer);
    };
  }

  /** That a paddock of an answer has no hectares behind its name; blank if all have. */
  static String withoutArea(String answer) {
    return eachPaddock(answer).stream()
        .map(String::strip)
        .filter(paddock -> !AREA.matcher(paddock).matches())
        .findFirst()
        .map(name -> "must have hectares behind each name, as House 28: '" + name + "' has none")
        .orElse("");
  }

  /** Commas stand between paddocks, unless a digit follows: that is a decimal comma. */
  private static List<String> eachPaddock(String answer) {
    return List.of(answer.split("[,;](?!\\d)"));
  }

  /** A row for each paddock, with its area and what grazes it. */
  private static String paddocks(Map<String, String> answers) {
    CsvEdit table = new CsvEdit("paddocks.csv", text("paddocks.csv"));
    String use = given(answers, "ewes") ? "ewes" : "other stock";
    List<Table.Line> rows = new ArrayList<>();
    for (String paddock : eachPaddock(answers.getOrDefault("paddocks", ""))) {
      Matcher area = AREA.matcher(paddock.strip());
      boolean both = area.matches();
      List<String> cells = new ArrayList<>(Collections.nCopies(table.columns().size(), ""));
      cells.set(0, both ? area.group(1) : paddock.strip());
      cells.set(table.columns().indexOf("area_ha"), both ? area.group(2) : "");
      cells.set(table.columns().indexOf("use"), use);
      rows.add(new Table.Line(0, cells));
    }
    return table.with(rows, new HashMap<>());
  }

  private static String text(String resource) {
    try (InputStream in = FarmTemplate.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
