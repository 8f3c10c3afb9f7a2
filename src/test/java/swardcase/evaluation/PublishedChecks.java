package swardcase.evaluation;

import java.util.ArrayList;
import java.util.List;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Every published check, recomputed and laid out as docs/published-checks.md. */
public final class PublishedChecks {

  /**
   * A table of the document.
   *
   * @param title its heading
   * @param note what the rows are and what agreement means
   * @param file the file of check values
   * @param checks its rows
   */
  public record Section(String title, String note, String file, List<PublishedCheck> checks) {

    /** How many rows agree. */
    public long agreeing() {
      return checks.stream().filter(PublishedCheck::agrees).count();
    }
  }

  private static final String HEAD =
      """
      # Published checks

      Every check value that stands in a file, recomputed. Written by `mvn -q test -Dtest=PublishedChecksTest -Drewrite=true` and held to
      the program by the same test. Sources are keys of `tables/sources.csv` unless written out. *Worked* rows take the flows or the
      equation of a source, but their value was worked separately from this program; all others are printed in the source, or are sums of what it prints.

      A row that **differs** is a fact about the program and stays here: see [evaluation](evaluation.md) for what it means. Ours and the
      difference have one digit more than the source, six decimals at most.

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
            "A published budget",
            "Costs per hectare.",
            "cost-lines-1986.csv",
            SwardChecks.budget()));
    sections.add(
        new Section(
            "Supplement",
            "The last two rows are one published comparison that contradicts itself.",
            "supplement-cost.csv",
            FeedChecks.supplements()));
    sections.add(
        new Section(
            "Need of ewes, MJ ME a day",
            "No set of equations meets every table, and the tables differ among themselves by a quarter.",
            "ewe-energy-rows.csv",
            feed.eweRows()));
    sections.add(new Section("Single values of feed, MJ", "", "feed-values.csv", feed.values()));
    sections.add(
        new Section(
            "Dry sheep equivalents",
            "Energy over 8.2 MJ. The first table carries its own energy, so those rows test 8.2 alone.",
            "dry-sheep-equivalents.csv",
            feed.dryEquivalents()));
    sections.add(
        new Section(
            "Grain on dry pasture, kg a day",
            "Need of the default method less what the intake equation gives. It buys too much on feed of middling quality.",
            "grain-on-dry-pasture.csv",
            feed.grain()));
    sections.add(
        new Section(
            "Growth of districts",
            "Our sums of published monthly rows, so they test the copying of the rows.",
            "district-growth-sums.csv",
            sward.growth()));
    sections.add(
        new Section(
            "Hard seed",
            "The value is the middle of the range the source gives. The rows were set with these sources in view.",
            "seed-decay.csv",
            sward.hardSeed()));
    sections.add(
        new Section(
            "Formononetin on wet ground", "", "formononetin-wet.csv", sward.formononetin()));
    sections.add(
        new Section(
            "Ewes in lamb on oestrogenic clover",
            "The likely curve. The first three rows are the trial it was fitted to.",
            "reproduction-trials.csv",
            reproduction.trials()));
    sections.add(
        new Section(
            "Ewes barren for good",
            "Outcome in per cent with the likely share made barren, doses assumed. The outbreaks of the 1940s were not used and are missed.",
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

  /** The document. */
  public static String markdown() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append("| table | rows | agree | differ |\n|---|---|---|---|\n");
    List<Section> sections = sections();
    long rows = 0;
    long agree = 0;
    for (Section section : sections) {
      summary(text, section.title(), section.checks().size(), section.agreeing());
      rows += section.checks().size();
      agree += section.agreeing();
    }
    summary(text, "all", rows, agree);
    for (Section section : sections) {
      text.append("\n## ").append(section.title()).append("\n\n");
      text.append(section.note()).append(section.note().isEmpty() ? "" : " ");
      text.append("From `").append(section.file()).append("`.\n\n");
      text.append("| what | source | printed | ours | difference | tolerance and why | |\n");
      text.append("|---|---|---|---|---|---|---|\n");
      section.checks().forEach(check -> text.append(check.markdown()).append('\n'));
    }
    return text.toString();
  }

  private static void summary(StringBuilder text, String title, long rows, long agree) {
    text.append("| %s | %s | %s | %s |\n".formatted(title, rows, agree, rows - agree));
  }
}
