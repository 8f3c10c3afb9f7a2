package swardcase.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swardcase.check.NearestName;
import swardcase.cli.Question.Kind;
import swardcase.evidence.Assumption;
import swardcase.tables.Cultivar;
import swardcase.tables.District;
import swardcase.tables.SupplementRow;
import swardcase.tables.Tables;

/** What a new farm folder is made of, in the order of a talk over the fence. */
final class Questions {

  /** Most mobs that are asked about; more can be added to the file. */
  private static final int MOST_MOBS = 6;

  private static final Predicate<Map<String, String>> ALWAYS = answers -> true;
  private static final Predicate<Map<String, String>> NEVER = answers -> false;
  private static final Predicate<Map<String, String>> EWES = answers -> some(answers, "ewes");

  private Questions() {}

  /**
   * A mob of ewes among the answers.
   *
   * @param prefix begins the keys of its answers
   * @param ewes key of its number of ewes
   * @param name key of its name; blank where it has one already
   */
  record AskedMob(String prefix, String ewes, String name) {

    /** Whether there is such a mob, after the answers so far. */
    Predicate<Map<String, String>> isThere() {
      return answers ->
          EWES.test(answers) && (name.isEmpty() || given(answers, name)) && some(answers, ewes);
    }
  }

  /** The ewes, the maidens if they are joined apart, and mobs with names of their own. */
  static List<AskedMob> mobs() {
    List<AskedMob> mobs = new ArrayList<>();
    mobs.add(new AskedMob("", "ewes", ""));
    mobs.add(new AskedMob("maidens-", "maidens", ""));
    for (int mob = mobs.size() + 1; mob <= MOST_MOBS; mob++) {
      mobs.add(new AskedMob("mob-" + mob + "-", "mob-" + mob + "-ewes", "mob-" + mob));
    }
    return mobs;
  }

  static List<Question> of(Tables tables) {
    List<Question> all = new ArrayList<>();
    all.add(needed("name", "Name of the farm", "Printed at the head of the sheet."));
    all.add(
        name(
            "currency",
            "Sign before money",
            "A$",
            "Printed before every sum; nothing is converted. Costs that you do not give yourself are"
                + " in A$."));
    all.add(
        needed(
            "growth",
            "District whose pasture growth is most like yours",
            "One of: "
                + tables.districts().values().stream()
                    .map(Questions::told)
                    .collect(Collectors.joining(", "))
                + ". Your own twelve numbers can be put into farm.yaml later."));
    for (AskedMob mob : mobs()) {
      all.addAll(ofMob(tables, mob));
    }
    all.add(
        number(
            "other-dse",
            "Other stock all year",
            "dry sheep equivalents, 0 for none",
            "0",
            ALWAYS,
            "Wethers, rams, cattle. 'swardcase tables dry-stock' has dry sheep equivalents a head."));
    all.addAll(ofFeed(tables));
    all.add(
        numbers(
            "lamb-value",
            "A lamb at marking, after the costs it would still cause",
            "money",
            "",
            ALWAYS,
            "One number, or low, likely and high. Left out: "
                + range(tables, "net-value-per-lamb")));
    all.add(
        number(
            "budget",
            "Most money for resowing in one year",
            "money",
            "",
            ALWAYS,
            "Left out, there is no limit."));
    all.add(name("sow", "Cultivar you would sow", "current cultivar", current(tables)));
    all.add(
        new Question(
            "paddocks",
            Kind.PADDOCKS,
            "Paddocks with their hectares, commas between",
            "",
            "",
            ALWAYS,
            "Such as: House 28, Bottom Flat 46. More can be added to paddocks.csv later, where the"
                + " clover per cent goes too.",
            ALWAYS));
    return List.copyOf(all);
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

  private static List<Question> ofMob(Tables tables, AskedMob mob) {
    List<Question> all = new ArrayList<>();
    boolean named = !mob.name().isEmpty();
    boolean first = mob.prefix().isEmpty();
    String of = first ? "" : named ? ", this mob" : ", maidens";
    if (first) {
      all.add(
          number(
              mob.ewes(),
              "Ewes joined",
              "head, 0 for none",
              "0",
              ALWAYS,
              "Those that run together before and at joining. Maidens and other mobs follow."));
    } else if (named) {
      all.add(
          new Question(
              mob.name(),
              Kind.TEXT,
              "Another mob of ewes, its name",
              "",
              "",
              NEVER,
              "Ewes joined apart from the others, such as: late joined. Left out, there are no more.",
              mobBefore(mob)));
      all.add(
          new Question(
              mob.ewes(),
              Kind.ONE_NUMBER,
              "Ewes joined" + of,
              "head",
              "",
              ALWAYS,
              "How many there are.",
              answers -> EWES.test(answers) && given(answers, mob.name())));
    } else {
      all.add(
          number(
              mob.ewes(),
              "Maidens joined apart from them",
              "head, 0 if there are none or they run together",
              "0",
              EWES,
              "Ewes joined for the first time lose more to oestrogen, and their figures are lower."));
    }
    Predicate<Map<String, String>> there = mob.isThere();
    Predicate<Map<String, String>> figures =
        answers ->
            there.test(answers)
                && List.of("in-lamb", "scanned", "marked").stream()
                    .anyMatch(key -> given(answers, mob.prefix() + key));
    all.add(
        new Question(
            mob.prefix() + "joining-start",
            Kind.TEXT,
            "Day the rams go in" + of,
            "",
            "",
            ALWAYS,
            "Such as 30 January. What ewes graze in the weeks before decides what oestrogen does.",
            there));
    all.add(
        numbers(
            mob.prefix() + "joining-weeks",
            "How long the rams stay" + of,
            "weeks",
            usual(tables, "joining-weeks"),
            there,
            "One number, or low, likely and high."));
    all.add(figure(tables, mob, "in-lamb", "Ewes in lamb" + of, "pregnant"));
    all.add(figure(tables, mob, "scanned", "Lambs scanned" + of, "scanning"));
    all.add(figure(tables, mob, "marked", "Lambs marked" + of, "marking"));
    all.add(
        new Question(
            mob.prefix() + "figures",
            Kind.YES_NO,
            "Were these figures counted on the paddocks of this farm" + of,
            "yes or no",
            "yes",
            ALWAYS,
            "Yes if any effect of the clover is already in them (observed on these paddocks), no if"
                + " they are what the ewes would do without it (unaffected).",
            figures));
    return all;
  }

  private static Question figure(Tables tables, AskedMob mob, String key, String text, String row) {
    return numbers(
        mob.prefix() + key, text, "per 100 joined", "", mob.isThere(), percent(tables, row));
  }

  /** Mobs are asked for one after the other, until one is left out. */
  private static Predicate<Map<String, String>> mobBefore(AskedMob mob) {
    List<AskedMob> mobs = mobs();
    AskedMob before = mobs.get(mobs.indexOf(mob) - 1);
    return before.name().isEmpty() ? EWES : before.isThere();
  }

  private static List<Question> ofFeed(Tables tables) {
    Predicate<Map<String, String>> own = answers -> feed(tables, answers).isEmpty();
    Predicate<Map<String, String>> unpriced =
        answers -> feed(tables, answers).flatMap(SupplementRow::pricePerTonne).isEmpty();
    return List.of(
        name(
            "supplement",
            "What you feed when pasture is short",
            "barley",
            "Any feed. The tables know: " + String.join(", ", tables.supplements().keySet()) + "."),
        new Question(
            "supplement-energy",
            Kind.NUMBERS,
            "Its energy",
            "MJ per kg dry matter",
            "",
            ALWAYS,
            "The tables do not know this feed. Grain has about 13, good hay 9; a feed test tells it.",
            own),
        new Question(
            "supplement-price",
            Kind.NUMBERS,
            "Its price, delivered and fed out",
            "money per tonne",
            "",
            answers -> given(answers, "supplement") && unpriced.test(answers),
            "One number, or low, likely and high. Left out, the table's price is taken, if it has"
                + " one.",
            ALWAYS));
  }

  private static Optional<SupplementRow> feed(Tables tables, Map<String, String> answers) {
    String name = answers.getOrDefault("supplement", "barley").strip();
    return tables.supplements().values().stream()
        .filter(row -> row.name().equalsIgnoreCase(name))
        .findFirst();
  }

  /** What to say of an answer that is taken but may be a slip; blank if there is nothing. */
  static String remark(String key, Map<String, String> answers, Tables tables) {
    String answer = answers.getOrDefault(key, "");
    if (key.equals("supplement") && feed(tables, answers).isEmpty()) {
      return "The tables do not know '"
          + answer
          + "', so its energy and price are asked for."
          + NearestName.find(answer, tables.supplements().keySet())
              .map(near -> " If '" + near + "' is meant, write back.")
              .orElse("");
    }
    boolean old =
        key.equals("sow")
            && tables.cultivars().values().stream()
                .anyMatch(c -> c.name().equalsIgnoreCase(answer) && !c.isCurrent());
    return old ? "'" + answer + "' is not a current cultivar of the tables." : "";
  }

  /** Takes away answers to questions that are not asked after the others. */
  static void dropUnasked(List<Question> questions, Map<String, String> answers) {
    for (Question question : questions) {
      if (!question.asked().test(answers)) {
        answers.remove(question.key());
      }
    }
  }

  static boolean given(Map<String, String> answers, String key) {
    return !answers.getOrDefault(key, "").isEmpty();
  }

  private static boolean some(Map<String, String> answers, String key) {
    return given(answers, key) && !answers.get(key).equals("0");
  }

  private static Question needed(String key, String text, String help) {
    return new Question(key, Kind.TEXT, text, "", "", ALWAYS, help, ALWAYS);
  }

  private static Question name(String key, String text, String usual, String help) {
    return new Question(key, Kind.TEXT, text, "", usual, NEVER, help, ALWAYS);
  }

  private static Question number(
      String key,
      String text,
      String unit,
      String usual,
      Predicate<Map<String, String>> asked,
      String help) {
    return new Question(key, Kind.ONE_NUMBER, text, unit, usual, NEVER, help, asked);
  }

  private static Question numbers(
      String key,
      String text,
      String unit,
      String usual,
      Predicate<Map<String, String>> asked,
      String help) {
    return new Question(key, Kind.NUMBERS, text, unit, usual, NEVER, help, asked);
  }

  private static String percent(Tables tables, String figure) {
    return "Your mean over some years, or low, likely and high. Left out: "
        + range(tables, figure + "-percent");
  }

  private static String range(Tables tables, String row) {
    Assumption value = tables.parameter("default." + row);
    return String.format(
        Locale.ROOT,
        "%s (%s to %s) is taken, a table default marked '%s'.",
        plain(value.range().likely()),
        plain(value.range().low()),
        plain(value.range().high()),
        value.evidence().label());
  }

  private static String usual(Tables tables, String row) {
    return plain(tables.parameter("default." + row).likely());
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static String current(Tables tables) {
    return "Current cultivars in the tables: "
        + tables.cultivars().values().stream()
            .filter(Cultivar::isCurrent)
            .map(Cultivar::name)
            .filter(name -> !name.equals("current cultivar"))
            .collect(Collectors.joining(", "))
        + ". Ask an agronomist which of them suits soil and rain.";
  }
}
