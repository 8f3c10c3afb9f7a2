package swardcase.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import swardcase.evaluation.PublishedCheck.Part;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Every published check, recomputed and laid out as docs/published-checks.md. */
public final class PublishedChecks {

  /**
   * The checks of a file.
   *
   * @param title of its tables
   * @param note what the rows are
   * @param file the file of check values
   * @param checks its rows
   */
  public record Section(String title, String note, String file, List<PublishedCheck> checks) {

    /** The same with the rows of one part alone. */
    Section of(Part part) {
      List<PublishedCheck> rows = checks.stream().filter(check -> check.part() == part).toList();
      return new Section(title, note, file, rows);
    }
  }

  /** How many rows agree, and how many miss. */
  public record Count(long agree, long miss) {

    /** Of these checks. */
    static Count of(List<PublishedCheck> checks) {
      long agree = checks.stream().filter(PublishedCheck::agrees).count();
      return new Count(agree, checks.size() - agree);
    }

    /** Of one part in all sections. */
    static Count of(Part part, List<Section> sections) {
      return of(sections.stream().flatMap(section -> section.of(part).checks().stream()).toList());
    }

    private String row(String title) {
      return "| %s | %s | %s | %s |\n".formatted(title, agree + miss, agree, miss);
    }
  }

  private static final String HEAD =
      """
      # Published checks

      **%s**

      Every check value that stands in a file, recomputed. Written by `mvn -q test -Dtest=PublishedChecksTest -Drewrite=true` and held to
      the program by the same test. Sources are keys of `tables/sources.csv` unless written out. *Worked* rows take the flows or the
      equation of a source, but their value was worked separately from this program; all others are printed in the source.

      Tolerances are half of the last printed digit, or the source's own error; where they are neither, the row says what they are. So a miss is a difference one
      could see in print and need not be large: read the difference. A row that **differs** is a fact about the program and stays here: see [evaluation](evaluation.md) for what it means.
      *A miss would change* names a lever of the last section, a change of the tables that would do away with the miss, and the paddocks of each demonstration farm for which something else is then planned.
      Ours and the difference have one digit more than the source, six decimals at most; of a range the difference is that to its nearer end.

      """;

  private static final String MOVES =
      """

      ## What a miss would change

      A lever sets rows of the tables to what would do away with a miss, as far as one or two rows can, or with the mean of the misses of a table (`src/test/resources/levers.csv`); a value outside its range takes the end of the range with it. Each farm
      is decided again: paddocks for which something else is planned, and the mean gain of the plan (A$, on northern-farm €). Made by `mvn -q test -Dtest=MovesTest -Dmoves=true`. Farms that give a number of their own are not
      moved by a default, and current-farm has nothing to resow. On risky-farm two paddocks go back and forth between plans of nearly equal value, so that two there mean little; read the gain.

      """;

  private PublishedChecks() {}

  /** The sections in the order of the document, worked once. */
  public static List<Section> sections() {
    return Worked.SECTIONS;
  }

  private static final class Worked {
    static final List<Section> SECTIONS = List.copyOf(work());
  }

  private static List<Section> work() {
    Tables tables = TablesLoader.standard().load();
    FeedChecks feed = new FeedChecks(tables);
    ReproductionChecks reproduction = new ReproductionChecks(tables);
    SwardChecks sward = new SwardChecks(tables);
    List<Section> sections = new ArrayList<>();
    sections.add(new Section("Money", "", "money.csv", MoneyChecks.all()));
    sections.add(
        new Section(
            "Supplement",
            "Worked examples of the pages. The last two rows are one published comparison that contradicts itself.",
            "supplement-cost.csv",
            FeedChecks.supplements()));
    sections.add(
        new Section(
            "Need of ewes, MJ ME a day",
            "No set of equations meets every table, and the tables differ among themselves by a quarter. Litters are ours. Industry material rests on the same standards as the equations; the Victorian and New South Wales pages do not say what they rest on. The spread of all set the range of `feed.demand-multiplier`, no likely value.",
            "ewe-energy-rows.csv",
            feed.eweRows()));
    sections.add(new Section("Single values of feed, MJ", "", "feed-values.csv", feed.values()));
    sections.add(
        new Section(
            "Dry sheep equivalents",
            "Our energy of ewes over that of a dry sheep equivalent in the program; of stock told in equivalents, what they need in the program beside the energy that `vic-drought-feeding` gives them. The table of 2008 is a reprint; whether it rests on the same standards is not known.",
            "dry-sheep-equivalents.csv",
            feed.dryEquivalents()));
    sections.add(
        new Section(
            "Grain on dry pasture, kg a day",
            "Need of the default method less what the intake equation gives of a diet better than the pasture by `feed.dry-selection`, which was fitted to these rows ([how](decisions/dry-intake.md)). What is left: too little grain at 1,000 kg DM/ha, too much on the best feed at 1,500. The page is advice, a reckoning and no trial.",
            "grain-on-dry-pasture.csv",
            feed.grain()));
    sections.add(
        new Section(
            "Hard seed",
            "The value is the middle of a range; a difference within the range agrees. The rows were set with these sources in view.",
            "seed-decay.csv",
            sward.hardSeed()));
    sections.add(
        new Section(
            "Seed banks, kg/ha, and seed left, %",
            "Every stand begins with the bank that balances its seed set at likely values. Rows of the part fit are data of the one fit, whose leftovers stand in method/seed-fit.md; spring samples, taken before the year's seed, are there only.",
            "seed-banks.csv",
            sward.seedBanks()));
    sections.add(
        new Section(
            "Formononetin on wet ground", "", "formononetin-wet.csv", sward.formononetin()));
    sections.add(
        new Section(
            "Ewes in lamb on oestrogenic clover",
            "The likely curve. Doses of the farmlets of 1993 are inferred, and how long joining lasted is not known: one reading counts, [the others](decisions/pawera-reading.md) stand among the other readings.",
            "reproduction-trials.csv",
            reproduction.trials()));
    sections.add(
        new Section(
            "Ewes barren for good",
            "Outcome in per cent with the likely share made barren, doses assumed. The fit is off by 17 % of the control (root mean square). 17 of 27 eggs alone has a 95 % interval of 44 to 78 %.",
            "sterility.csv",
            reproduction.barrenEwes()));
    sections.add(
        new Section(
            "The dose-response curve, worked",
            "Arithmetic, no evidence about ewes.",
            "dose-response.csv",
            ReproductionChecks.workedCurve()));
    TrialChecks trials = new TrialChecks(tables);
    sections.add(
        trials(
            trials,
            "feed",
            "Feed bought, of trials and cases",
            "The feed budget of a farm like the trial's, at likely numbers. A season type stands for a year of its kind that repeats itself."));
    sections.add(
        trials(
            trials,
            "growth",
            "Growth of a year, and how it varies",
            "Growth as the budget grows it, under its own grazing. No row of the tables is for these places: the row is the one a farm there could take."));
    sections.add(
        trials(
            trials,
            "ewes",
            "Lambing on oestrogenic clover, of farms and trials",
            "Ewes in lamb of a flock whose farm is built as described; losses at birth are in what was seen and not in ours."));
    sections.add(
        trials(
            trials,
            "base",
            "Ewes in lamb of a flock without a figure of its own",
            "What the program takes where a farm gives nothing: the median of one survey, which other surveys put to the test."));
    sections.add(trials(trials, "seed", "Stands after a resowing", ""));
    sections.add(
        trials(
            trials,
            "winter",
            "Growth of cultivars beside each other",
            "The program knows winter growth alone; where a source gives another part of the year the row says so."));
    sections.add(trials(trials, "leaf", "Formononetin of strong cultivars", ""));
    sections.add(
        trials(
            trials,
            "money",
            "What resowing brings",
            "Three are rules or cases of other pastures: no trial of resowing sub clover with its money was found."));
    return sections;
  }

  private static Section trials(TrialChecks trials, String group, String title, String note) {
    return new Section(title, note, "trial-results.csv", trials.of(group));
  }

  /** The sentence that stands first: outside evidence alone. */
  public static String headline() {
    Count outside = Count.of(Part.OUTSIDE, sections());
    return "Outside evidence: %s rows, of which %s agree and %s miss."
        .formatted(outside.agree() + outside.miss(), outside.agree(), outside.miss());
  }

  /** Rows of each part. */
  public static String counts() {
    StringBuilder text = new StringBuilder("| part | rows | agree | differ |\n|---|---|---|---|\n");
    for (Part part : Part.values()) {
      text.append(Count.of(part, sections()).row(title(part)));
    }
    return text.toString();
  }

  private static String title(Part part) {
    return switch (part) {
      case EQUATION -> "equations against their own paper";
      case FIT -> "a fit against its data";
      case OUTSIDE -> "outside evidence";
      case READING -> "other readings";
    };
  }

  private static String meaning(Part part) {
    return switch (part) {
      case EQUATION ->
          "Agreement says that an equation is calculated as written. Worked values, material that rests on the same standards, and equations that no run uses by themselves stand here too.";
      case FIT ->
          "Agreement says that a value of the tables follows what it was set with, or was judged with in view. It is no evidence that the value is right elsewhere.";
      case OUTSIDE ->
          "Published results on something the program runs, that set no row of the tables and no equation. Farms of trials are built as the source describes them (`trial-farms.csv`); what it does not say is ours, and the row says what.";
      case READING ->
          "Results that stand in another part, read in another way. They are shown and not counted as evidence.";
    };
  }

  /** The document. */
  public static String markdown() {
    StringBuilder text = new StringBuilder(HEAD.formatted(headline())).append(counts());
    for (Part part : List.of(Part.OUTSIDE, Part.READING, Part.FIT, Part.EQUATION)) {
      List<Section> sections =
          sections().stream().map(s -> s.of(part)).filter(s -> !s.checks().isEmpty()).toList();
      String title = title(part);
      text.append("\n## ").append(title.substring(0, 1).toUpperCase(Locale.ROOT));
      text.append(title.substring(1)).append("\n\n").append(meaning(part)).append("\n\n");
      text.append("| table | rows | agree | differ |\n|---|---|---|---|\n");
      sections.forEach(s -> text.append(Count.of(s.checks()).row(s.title())));
      sections.forEach(s -> table(text, s));
    }
    return text.append(MOVES).append(Lever.table()).toString();
  }

  private static void table(StringBuilder text, Section section) {
    text.append("\n### ").append(section.title()).append("\n\n");
    text.append(section.note()).append(section.note().isEmpty() ? "" : " ");
    text.append("From `").append(section.file()).append("`.\n\n");
    text.append("| what | source | printed | ours | difference | tolerance and why | |");
    text.append(" a miss would change |\n|---|---|---|---|---|---|---|---|\n");
    section.checks().forEach(check -> text.append(check.markdown()).append('\n'));
  }
}
