package swardcase.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import swardcase.evidence.Assumption;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** What a new farm folder is made of, in the order of a talk over the fence. */
final class Questions {

  private static final Predicate<Map<String, String>> ALWAYS = answers -> true;
  private static final Predicate<Map<String, String>> EWES =
      answers -> !answers.getOrDefault("ewes", "0").equals("0");
  private static final Predicate<Map<String, String>> FIGURES =
      answers ->
          EWES.test(answers)
              && List.of("in-lamb", "scanned", "marked").stream()
                  .anyMatch(key -> !answers.getOrDefault(key, "").isEmpty());

  private Questions() {}

  static List<Question> of(Tables tables) {
    return List.of(
        name("name", "Name of the farm", "", true, "Printed at the head of the sheet."),
        name(
            "currency",
            "Sign before money",
            "A$",
            false,
            "Printed before every sum; nothing is converted. Costs that you do not give yourself are"
                + " in A$."),
        name(
            "growth",
            "District whose pasture growth is most like yours",
            "",
            true,
            "One of: "
                + String.join(", ", tables.districts().keySet())
                + ". Your own twelve numbers can be put into farm.yaml later."),
        number("ewes", "Ewes joined", "head, 0 for none", "0", ALWAYS, "All mobs together."),
        new Question(
            "joining-start",
            "Day the rams go in",
            "",
            "",
            true,
            "Such as 30 January. What ewes graze in the weeks before decides what oestrogen does.",
            EWES),
        number(
            "joining-weeks",
            "How long the rams stay",
            "weeks",
            usual(tables, "joining-weeks"),
            EWES,
            "One number, or low, likely and high."),
        number("in-lamb", "Ewes in lamb", "per 100 joined", "", EWES, percent(tables, "pregnant")),
        number("scanned", "Lambs scanned", "per 100 joined", "", EWES, percent(tables, "scanning")),
        number("marked", "Lambs marked", "per 100 joined", "", EWES, percent(tables, "marking")),
        new Question(
            "figures",
            "Were these ewes on the paddocks of this farm",
            "",
            "observed on these paddocks",
            true,
            "Write 'observed on these paddocks' if any effect of the clover is already in the"
                + " figures, 'unaffected' if they are what the ewes would do without it.",
            FIGURES),
        number(
            "other-dse",
            "Other stock all year",
            "dry sheep equivalents, 0 for none",
            "0",
            ALWAYS,
            "Wethers, rams, cattle. 'swardcase tables dry-stock' has dry sheep equivalents a head."),
        name(
            "supplement",
            "What you feed when pasture is short",
            "barley",
            false,
            "One of: " + String.join(", ", tables.supplements().keySet()) + "."),
        number(
            "supplement-price",
            "Its price, delivered and fed out",
            "money per tonne",
            "",
            ALWAYS,
            "One number, or low, likely and high. Left out, the table's price is taken."),
        number(
            "lamb-value",
            "A lamb at marking, after the costs it would still cause",
            "money",
            "",
            ALWAYS,
            "One number, or low, likely and high. Left out: "
                + range(tables, "net-value-per-lamb")),
        number(
            "budget",
            "Most money for resowing in one year",
            "money",
            "",
            ALWAYS,
            "Left out, there is no limit."),
        name("sow", "Cultivar you would sow", "current cultivar", false, current(tables)),
        name(
            "paddocks",
            "Paddocks with their hectares, commas between",
            "",
            true,
            "Such as: House 28, Bottom Flat 46. More can be added to paddocks.csv later, where the"
                + " clover per cent goes too."));
  }

  private static Question name(
      String key, String text, String usual, boolean required, String help) {
    return new Question(key, text, "", usual, required, help, ALWAYS);
  }

  private static Question number(
      String key,
      String text,
      String unit,
      String usual,
      Predicate<Map<String, String>> asked,
      String help) {
    return new Question(key, text, unit, usual, false, help, asked);
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
        + String.join(
            ", ",
            tables.cultivars().values().stream()
                .filter(cultivar -> !cultivar.isOld())
                .map(Cultivar::name)
                .filter(name -> !name.startsWith("unidentified"))
                .toList())
        + ". Ask an agronomist which of them suits soil and rain.";
  }
}
