package swardcase.folder;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

/** What a new farm folder is made of, in the order of a talk over the fence. */
final class Questions {

  /** Most mobs that are asked about; more can be added to the file. */
  private static final int MOST_MOBS = 6;

  private static final Predicate<Map<String, String>> ALWAYS = answers -> true;
  private static final Predicate<Map<String, String>> EWES = answers -> some(answers, "ewes");

  /** The ewes, the maidens if they are joined apart, and mobs with names of their own. */
  static final List<AskedMob> MOBS =
      Stream.concat(
              Stream.of(
                  new AskedMob("", "ewes", "", ""),
                  new AskedMob("maidens-", "maidens", "", ", maidens")),
              IntStream.rangeClosed(3, MOST_MOBS)
                  .mapToObj(mob -> "mob-" + mob)
                  .map(mob -> new AskedMob(mob + "-", mob + "-ewes", mob, ", this mob")))
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
    all.add(
        text("name", "Name of the farm", "Printed at the head of the sheet.").neededAfter(ALWAYS));
    all.add(
        text(
                "currency",
                "Sign before money",
                "Printed before every sum; nothing is converted. Costs that you do not give yourself"
                    + " are in A$.")
            .usually("A$"));
    all.add(
        text(
                "growth",
                "District whose pasture growth is most like yours",
                "One of: "
                    + tables.districts().values().stream()
                        .map(Questions::told)
                        .collect(Collectors.joining(", "))
                    + ". Your own twelve numbers can be put into farm.yaml later.")
            .neededAfter(ALWAYS));
    MOBS.forEach(this::mob);
    all.add(
        number(
                "other-dse",
                "Other stock all year",
                "dry sheep equivalents, 0 for none",
                "Wethers, rams, cattle. 'swardcase tables dry-stock' has dry sheep equivalents a"
                    + " head.")
            .usually("0"));
    feed();
    all.add(
        numbers(
            "lamb-value",
            "A lamb at marking, after the costs it would still cause",
            "money",
            "One number, or low, likely and high. Left out: " + usual("net-value-per-lamb")));
    all.add(
        number(
            "budget",
            "Most money for resowing in one year",
            "money",
            "Left out, there is no limit."));
    all.add(text("sow", "Cultivar you would sow", current()).usually("current cultivar"));
    all.add(
        new Question(
                "paddocks",
                Kind.PADDOCKS,
                "Paddocks with their hectares, commas between",
                "",
                "Such as: House 28, Bottom Flat 46. More can be added to paddocks.csv later, where"
                    + " the clover per cent goes too.")
            .neededAfter(ALWAYS));
  }

  List<Question> all() {
    return all;
  }

  private static Question text(String key, String text, String help) {
    return new Question(key, Kind.TEXT, text, "", help);
  }

  private static Question number(String key, String text, String unit, String help) {
    return new Question(key, Kind.ONE_NUMBER, text, unit, help);
  }

  private static Question numbers(String key, String text, String unit, String help) {
    return new Question(key, Kind.NUMBERS, text, unit, help);
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
      all.add(
          number(
                  mob.ewes(),
                  "Ewes joined",
                  "head, 0 for none",
                  "Those that run together before and at joining. Maidens and other mobs follow.")
              .usually("0"));
    } else if (place == 1) {
      all.add(
          number(
                  mob.ewes(),
                  "Maidens joined apart from them",
                  "head, 0 if there are none or they run together",
                  "Ewes joined for the first time lose more to oestrogen, and their figures are"
                      + " lower.")
              .usually("0")
              .askedAfter(EWES));
    } else {
      AskedMob before = MOBS.get(place - 1); // one after the other, until one is left out
      all.add(
          text(
                  mob.name(),
                  "Another mob of ewes, its name",
                  "Ewes joined apart from the others, such as: late joined. Left out, there are no"
                      + " more.")
              .askedAfter(before.name().isEmpty() ? EWES : before::isThere));
      all.add(
          number(mob.ewes(), "Ewes joined" + mob.of(), "head", "How many there are.")
              .neededAfter(ALWAYS)
              .askedAfter(answers -> EWES.test(answers) && given(answers, mob.name())));
    }
    String prefix = mob.prefix();
    all.add(
        text(
                prefix + "joining-start",
                "Day the rams go in" + mob.of(),
                "Such as 30 January. What ewes graze in the weeks before decides what oestrogen"
                    + " does.")
            .neededAfter(ALWAYS)
            .askedAfter(mob::isThere));
    all.add(
        numbers(
                prefix + "joining-weeks",
                "How long the rams stay" + mob.of(),
                "weeks",
                "One number, or low, likely and high.")
            .usually(plain(tables.parameter("default.joining-weeks").likely()))
            .askedAfter(mob::isThere));
    figure(mob, "in-lamb", "Ewes in lamb", "pregnant");
    figure(mob, "scanned", "Lambs scanned", "scanning");
    figure(mob, "marked", "Lambs marked", "marking");
    all.add(
        new Question(
                prefix + "figures",
                Kind.YES_NO,
                "Were these figures counted on the paddocks of this farm" + mob.of(),
                "yes or no",
                "Yes if any effect of the clover is already in them (observed on these paddocks), no"
                    + " if they are what the ewes would do without it (unaffected).")
            .usually("yes")
            .askedAfter(
                answers ->
                    mob.isThere(answers)
                        && Stream.of("in-lamb", "scanned", "marked")
                            .anyMatch(key -> given(answers, prefix + key))));
  }

  private void figure(AskedMob mob, String key, String text, String row) {
    String help = "Your mean over some years, or low, likely and high. Left out: ";
    all.add(
        numbers(
                mob.prefix() + key,
                text + mob.of(),
                "per 100 joined",
                help + usual(row + "-percent"))
            .askedAfter(mob::isThere));
  }

  private void feed() {
    all.add(
        text(
                "supplement",
                "What you feed when pasture is short",
                "Any feed. The tables know: "
                    + String.join(", ", tables.supplements().keySet())
                    + ".")
            .usually("barley"));
    all.add(
        numbers(
                "supplement-energy",
                "Its energy",
                "MJ per kg dry matter",
                "The tables do not know this feed. Grain has about 13, good hay 9; a feed test tells"
                    + " it.")
            .neededAfter(ALWAYS)
            .askedAfter(answers -> feed(answers).isEmpty()));
    all.add(
        numbers(
                "supplement-price",
                "Its price, delivered and fed out",
                "money per tonne",
                "One number, or low, likely and high. Left out, the table's price is taken, if it has"
                    + " one.")
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
    return String.format(
        Locale.ROOT,
        "%s (%s to %s) is taken, a table default marked '%s'.",
        plain(value.range().likely()),
        plain(value.range().low()),
        plain(value.range().high()),
        value.evidence().label());
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private String current() {
    return "Current cultivars in the tables: "
        + tables.cultivars().values().stream()
            .filter(Cultivar::isCurrent)
            .map(Cultivar::name)
            .filter(name -> !name.equals("current cultivar"))
            .collect(Collectors.joining(", "))
        + ". Ask an agronomist which of them suits soil and rain.";
  }
}
