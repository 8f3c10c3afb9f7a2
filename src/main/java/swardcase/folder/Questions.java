package swardcase.folder;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.check.NearestName;
import swardcase.evidence.Assumption;
import swardcase.folder.Question.Kind;
import swardcase.tables.Cultivar;
import swardcase.tables.District;
import swardcase.tables.SupplementRow;
import swardcase.tables.Tables;
import swardcase.wording.KeyWords;
import swardcase.wording.Texts;

/** What a new farm folder is made of, in the order of a talk over the fence. */
final class Questions {

  /** Most mobs that are asked about; more can be added to the file. */
  private static final int MOST_MOBS = 6;

  /** Sown where nothing is said. */
  private static final String SOWN = "current cultivar";

  private static final Predicate<Map<String, String>> ALWAYS = answers -> true;
  private static final Predicate<Map<String, String>> EWES = answers -> some(answers, "ewes");

  /** The ewes, the maidens if they are joined apart, and mobs with names of their own. */
  static final List<AskedMob> MOBS =
      Stream.concat(
              Stream.of(
                  new AskedMob("", "ewes", "", ""),
                  new AskedMob("maidens-", "maidens", "", "maidens")),
              IntStream.rangeClosed(3, MOST_MOBS)
                  .mapToObj(mob -> "mob-" + mob)
                  .map(mob -> new AskedMob(mob + "-", mob + "-ewes", mob, "this mob")))
          .toList();

  private final Tables tables;
  private final List<Question> all = new ArrayList<>();

  /**
   * A mob of ewes among the answers.
   *
   * @param prefix begins the keys of its answers
   * @param ewes key of its number of ewes
   * @param name key of its name; blank where it has one already
   * @param of tells its questions from those of the first mob
   */
  record AskedMob(String prefix, String ewes, String name, String of) {

    /** Whether there is such a mob, after the answers so far. */
    boolean isThere(Map<String, String> answers) {
      return EWES.test(answers) && (name.isEmpty() || given(answers, name)) && some(answers, ewes);
    }
  }

  Questions(Tables tables) {
    this.tables = tables;
    all.add(text("name", "start.name").neededAfter(ALWAYS));
    all.add(text("currency", "start.currency").usually("A$"));
    all.add(
        text(
                "growth",
                "start.growth",
                inTables(tables.districts().values().stream().map(Questions::told)))
            .neededAfter(ALWAYS));
    MOBS.forEach(this::mob);
    all.add(number("other-dse", "start.other-dse", "").usually("0"));
    feed();
    all.add(
        numbers("lamb-value", "key.prices.net_value_per_lamb", "", usual("net-value-per-lamb")));
    all.add(number("budget", "key.finance.budget_per_year", ""));
    all.add(
        text(
                "sow",
                "key.sow",
                inTables(
                    tables.cultivars().values().stream()
                        .filter(Cultivar::isCurrent)
                        .map(Cultivar::name)
                        .filter(name -> !name.equals(SOWN))))
            .usually(SOWN));
    all.add(ask("paddocks", Kind.PADDOCKS, "start.paddocks", "").neededAfter(ALWAYS));
  }

  List<Question> all() {
    return all;
  }

  /** A question whose help ends with {@code more}. */
  private static Question ask(String key, Kind kind, String words, String of, String... more) {
    KeyWords asked = new KeyWords(words, of);
    String help =
        Stream.concat(Stream.of(asked.help()), Stream.of(more))
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" "));
    return new Question(key, kind, asked, help);
  }

  private static Question text(String key, String words, String... more) {
    return ask(key, Kind.TEXT, words, "", more);
  }

  private static Question number(String key, String words, String of) {
    return ask(key, Kind.ONE_NUMBER, words, of);
  }

  private static Question numbers(String key, String words, String of, String... more) {
    String three = Texts.get("start.numbers");
    return ask(
        key,
        Kind.NUMBERS,
        words,
        of,
        Stream.concat(Stream.of(three), Stream.of(more)).toArray(String[]::new));
  }

  private static String inTables(Stream<String> names) {
    return Texts.get("start.inTables", names.collect(Collectors.joining(", ")));
  }

  /**
   * A district with what tells it from others: {@code Katanning (480 mm a year, 7 green months)}.
   */
  private static String told(District district) {
    List<String> parts = new ArrayList<>();
    district.rainMmPerYear().ifPresent(mm -> parts.add(mm + " mm a year"));
    district.greenMonths().ifPresent(months -> parts.add(months + " green months"));
    return parts.isEmpty()
        ? district.name()
        : district.name() + " (" + String.join(", ", parts) + ")";
  }

  private void mob(AskedMob mob) {
    int place = MOBS.indexOf(mob);
    if (place == 0) {
      all.add(number(mob.ewes(), "key.mobs.ewes", "").usually("0"));
    } else if (place == 1) {
      all.add(number(mob.ewes(), "start.maidens", "").usually("0").askedAfter(EWES));
    } else {
      AskedMob before = MOBS.get(place - 1); // one after the other, until one is left out
      all.add(
          text(mob.name(), "start.mob")
              .askedAfter(before.name().isEmpty() ? EWES : before::isThere));
      all.add(
          number(mob.ewes(), "key.mobs.ewes", mob.of())
              .neededAfter(ALWAYS)
              .askedAfter(answers -> EWES.test(answers) && given(answers, mob.name())));
    }
    String prefix = mob.prefix();
    all.add(
        ask(prefix + "joining-start", Kind.TEXT, "key.mobs.joining_start", mob.of())
            .neededAfter(ALWAYS)
            .askedAfter(mob::isThere));
    all.add(
        numbers(prefix + "joining-weeks", "key.mobs.joining_weeks", mob.of())
            .usually(plain(tables.parameter("default.joining-weeks").likely()))
            .askedAfter(mob::isThere));
    figure(mob, "in-lamb", "key.mobs.pregnant_percent", "pregnant-percent");
    figure(mob, "scanned", "key.mobs.scanning_percent", "scanning-percent");
    figure(mob, "marked", "key.mobs.marking_percent", "marking-percent");
    all.add(
        ask(prefix + "figures", Kind.YES_NO, "start.figures", mob.of())
            .usually("yes")
            .askedAfter(
                answers ->
                    mob.isThere(answers)
                        && Stream.of("in-lamb", "scanned", "marked")
                            .anyMatch(key -> given(answers, prefix + key))));
  }

  private void figure(AskedMob mob, String key, String words, String row) {
    all.add(numbers(mob.prefix() + key, words, mob.of(), usual(row)).askedAfter(mob::isThere));
  }

  private void feed() {
    String known = inTables(tables.supplements().keySet().stream());
    all.add(text("supplement", "start.supplement", known).usually("barley"));
    all.add(
        numbers("supplement-energy", "start.supplement-energy", "")
            .neededAfter(ALWAYS)
            .askedAfter(answers -> feed(answers).isEmpty()));
    all.add(
        numbers("supplement-price", "key.supplement.price_per_tonne", "")
            .neededAfter(
                answers ->
                    given(answers, "supplement")
                        && feed(answers).flatMap(SupplementRow::pricePerTonne).isEmpty()));
  }

  private Optional<SupplementRow> feed(Map<String, String> answers) {
    String name = answers.getOrDefault("supplement", "barley").strip();
    return tables.supplements().values().stream()
        .filter(row -> row.name().equalsIgnoreCase(name))
        .findFirst();
  }

  /** What to say of an answer that is taken but may be a slip. */
  Optional<String> remark(String key, Map<String, String> answers) {
    String answer = answers.getOrDefault(key, "");
    if (key.equals("supplement") && feed(answers).isEmpty()) {
      String hint =
          NearestName.find(answer, tables.supplements().keySet())
              .map(near -> " If '" + near + "' is meant, write back.")
              .orElse("");
      return Optional.of(
          "The tables do not know '" + answer + "', so its energy and price are asked for." + hint);
    }
    return tables.cultivars().values().stream()
        .filter(cultivar -> key.equals("sow") && !cultivar.isCurrent())
        .filter(cultivar -> cultivar.name().equalsIgnoreCase(answer))
        .map(old -> "'" + answer + "' is not a current cultivar of the tables.")
        .findFirst();
  }

  static boolean given(Map<String, String> answers, String key) {
    return !answers.getOrDefault(key, "").isEmpty();
  }

  private static boolean some(Map<String, String> answers, String key) {
    return given(answers, key) && !answers.get(key).equals("0");
  }

  private String usual(String row) {
    Assumption value = tables.parameter("default." + row);
    return Texts.get(
        "start.usual",
        plain(value.range().likely()),
        plain(value.range().low()),
        plain(value.range().high()),
        value.evidence().label());
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
