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
      *A miss would change* is read off [deciding values](deciding-values.md), which was made at likely values. Ours and the difference have one digit more than the source, six decimals at most.

      """;

  private PublishedChecks() {}

  /** The sections in the order of the document. */
  public static List<Section> sections() {
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
            "Energy over that of a dry sheep equivalent in the program. `vic-drought-feeding` prints energies and equivalents: those rows are its energies over ours, and test 8.6 alone. The table of 2008 is a reprint; whether it rests on the same standards is not known.",
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
            "600 kg/ha of seed a year was chosen with the two weighings in view. The bank at the start is the same under every stand, whatever its seed.",
            "seed-banks.csv",
            sward.seedBanks()));
    sections.add(
        new Section(
            "Formononetin on wet ground", "", "formononetin-wet.csv", sward.formononetin()));
    sections.add(
        new Section(
            "Ewes in lamb on oestrogenic clover",
            "The likely curve. Doses of the trial of 1993 are inferred, and how long joining lasted is not known: its first two rows are two readings of one result. Doses on Yarloop were solved from the result, so those rows cannot fail.",
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
    return sections;
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
    };
  }

  private static String meaning(Part part) {
    return switch (part) {
      case EQUATION ->
          "Agreement says that an equation is calculated as written. Worked values, material that rests on the same standards, and equations that no run uses by themselves stand here too.";
      case FIT ->
          "Agreement says that a value of the tables follows what it was set with, or was judged with in view. It is no evidence that the value is right elsewhere.";
      case OUTSIDE ->
          "Published results on something the program runs, that set no row of the tables and no equation.";
    };
  }

  /** The document. */
  public static String markdown() {
    StringBuilder text = new StringBuilder(HEAD.formatted(headline())).append(counts());
    for (Part part : List.of(Part.OUTSIDE, Part.FIT, Part.EQUATION)) {
      List<Section> sections =
          sections().stream().map(s -> s.of(part)).filter(s -> !s.checks().isEmpty()).toList();
      String title = title(part);
      text.append("\n## ").append(title.substring(0, 1).toUpperCase(Locale.ROOT));
      text.append(title.substring(1)).append("\n\n").append(meaning(part)).append("\n\n");
      text.append("| table | rows | agree | differ |\n|---|---|---|---|\n");
      sections.forEach(s -> text.append(Count.of(s.checks()).row(s.title())));
      sections.forEach(s -> table(text, s));
    }
    return text.toString();
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
