package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.Range;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.report.Reproduction;
import swardcase.report.WinterFeed;
import swardcase.wording.HowSureWords;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;
import swardcase.wording.Words;

/** The report as a summary for a terminal: the answer, the three numbers, a line a paddock. */
public final class TerminalView {

  /** Longer lines of prose are hard to read. */
  private static final int MOST_WIDTH = 100;

  private TerminalView() {}

  /** The summary as lines for a terminal of so many columns. */
  public static List<String> of(Report report, int width) {
    String currency = report.farm().currency();
    List<String> lines = new ArrayList<>();
    lines.add(report.farm().name() + ", " + report.farm().date());
    lines.add("");
    lines.add(PlanWords.headline(report.plan()));
    lines.add("");
    lines.addAll(threeNumbers(report, currency, width));
    lines.add("");
    lines.addAll(paddocks(report, currency, width));
    lines.add("");
    PaddockWords words = new PaddockWords(report.farm());
    for (PaddockResult paddock : report.paddocks()) {
      String find =
          paddock
              .deciding()
              .map(input -> " What would settle it soonest: " + input + ".")
              .orElse("");
      lines.addAll(wrap(paddock.name() + ": " + words.reason(paddock) + find, width));
    }
    report
        .howSure()
        .ifPresent(
            found -> {
              HowSureWords sure = new HowSureWords(report, found);
              lines.add("");
              lines.add("How sure?");
              sure.howSure().forEach(line -> lines.addAll(wrap("- " + line, width)));
              lines.add("");
              lines.add("What should you find out before you spend?");
              sure.before().forEach(line -> lines.addAll(wrap("- " + line, width)));
            });
    lines.add("");
    lines.add("The plan");
    PlanWords.notes(report).forEach(note -> lines.addAll(wrap("- " + note, width)));
    if (!report.notices().isEmpty()) {
      lines.add("");
      lines.add("Please note");
      report.notices().forEach(notice -> lines.addAll(wrap("- " + notice, width)));
    }
    lines.add("");
    lines.addAll(wrap(report.cautions().get(0) + " " + report.cautions().get(1), width));
    return lines;
  }

  private static List<String> threeNumbers(Report report, String currency, int width) {
    WinterFeed feed = report.winterFeed();
    Reproduction ewes = report.reproduction();
    PlanResult plan = report.plan();
    TextTable table = TextTable.of("A year, as things stand", "likely (range)", "in money");
    table.row(
        "Winter feed short, outdated clover",
        Words.range(feed.supplementTonnes()) + " t " + report.farm().supplement(),
        Words.money(currency, feed.supplementCost()));
    table.row(
        "Lambs not marked, oestrogen",
        Words.count(ewes.lambsLostPerYear()),
        Words.money(currency, ewes.costPerYear()));
    table.row(
        "Plan over " + report.farm().horizonYears() + " years",
        "costs " + Words.money(currency, plan.cost()),
        "gains " + Words.money(currency, plan.npv()));
    return table.lines(width);
  }

  private static List<String> paddocks(Report report, String currency, int width) {
    TextTable table =
        TextTable.of(
            "Paddock",
            ">ha",
            "What to do",
            "Start",
            ">Cost " + currency,
            ">Gain " + currency + " (range)",
            ">Winter feed lost kg/ha",
            "Oestrogen");
    for (PaddockResult paddock : report.paddocks()) {
      boolean acts = paddock.start().isPresent();
      table.row(
          paddock.name(),
          Words.exact(paddock.areaHa()),
          PaddockWords.verdict(paddock),
          PaddockWords.year(paddock.start(), ""),
          acts ? Words.likely(paddock.cost()) : "",
          acts ? Words.range(paddock.npv()) : "",
          amount(paddock.dryMatterLostKgPerHa()),
          OestrogenWords.rating(paddock.oestrogenRating()));
    }
    return table.lines(width);
  }

  private static String amount(Range range) {
    return range.high() == 0 ? "0" : Words.range(range);
  }

  /** Text broken into lines of a terminal's width, later lines set in. */
  static List<String> wrap(String text, int width) {
    return TextLines.broken(text, Math.min(width, MOST_WIDTH), "", "  ");
  }
}
