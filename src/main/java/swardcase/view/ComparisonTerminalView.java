package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import swardcase.report.ComparisonReport;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.PaddockSide;
import swardcase.report.ComparisonReport.Side;
import swardcase.wording.PaddockWords;
import swardcase.wording.Words;

/**
 * A comparison for a terminal. One other farm stands beside the first with all numbers and
 * paddocks; several stand below each other in {@link ScenariosTerminalView}.
 */
public final class ComparisonTerminalView {

  private final ComparisonReport report;
  private final Other other;
  private final String currency;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private ComparisonTerminalView(ComparisonReport report, int width) {
    this.report = report;
    this.width = width;
    other = report.others().get(0);
    currency = report.first().farm().currency();
  }

  /** The comparison as lines for a terminal of so many columns. */
  public static List<String> of(ComparisonReport report, int width) {
    List<String> lines =
        report.others().size() == 1
            ? new ComparisonTerminalView(report, width).all()
            : ScenariosTerminalView.of(report, width);
    lines.add("");
    lines.addAll(
        TerminalView.wrap(report.cautions().get(0) + " " + report.cautions().get(1), width));
    return lines;
  }

  private List<String> all() {
    lines.add("First:  " + head(report.first()));
    lines.add("Second: " + head(other.side()));
    lines.add("");
    lines.addAll(numbers());
    lines.add("");
    lines.addAll(paddocks());
    lines.add("");
    lines.add("What makes the difference");
    lines.addAll(DifferenceTable.of(report.first(), other, width));
    lines.addAll(TerminalView.wrap(DifferenceTable.NOTE, width));
    return lines;
  }

  /** Which farm it is, and the date. */
  static String head(Side side) {
    return side.farm().name()
        + side.scenario().map(scenario -> ", " + scenario).orElse("")
        + " ("
        + side.folder()
        + "), "
        + side.farm().date();
  }

  private List<String> numbers() {
    TextTable table = TextTable.of("Number", "First", "Second");
    row(table, "Paddocks, ha", side -> Words.exact(side.farm().areaHa()));
    row(table, "Ewes joined", side -> Words.exact(side.farm().ewesJoined()));
    row(
        table,
        "Winter feed short, a year",
        side -> Words.range(side.winterFeedTonnes()) + " t " + side.farm().supplement());
    row(table, "  in money", side -> currency + " " + Words.count(side.winterFeedCost()));
    row(table, "Lambs not marked, a year", side -> Words.count(side.lambsLost()));
    row(table, "  in money", side -> currency + " " + Words.count(side.lambCost()));
    row(table, "Paddocks to resow", side -> Words.exact(side.verdicts().act()));
    row(table, "  to hold joining ewes off", side -> Words.exact(side.verdicts().holdOff()));
    row(table, "  to keep", side -> Words.exact(side.verdicts().keep()));
    row(table, "  too close to call", side -> Words.exact(side.verdicts().tooClose()));
    row(table, "The plan sows, ha", side -> Words.exact(side.hectaresSown()));
    row(table, "  costs", side -> Words.money(currency, side.planCost()));
    row(table, "  gains", side -> Words.money(currency, side.planNpv()));
    row(table, "  over years", side -> Words.exact(side.farm().horizonYears()));
    return table.lines(width);
  }

  private void row(TextTable table, String what, Function<Side, String> number) {
    table.row(what, number.apply(report.first()), number.apply(other.side()));
  }

  private List<String> paddocks() {
    TextTable table =
        TextTable.of(
            "Paddock",
            "First: what to do",
            ">Gain " + currency + " (range)",
            "Second: what to do",
            ">Gain " + currency + " (range)");
    for (PaddockPair pair : other.paddocks()) {
      table.row(
          pair.name(),
          verdict(pair.first()),
          gain(pair.first()),
          verdict(pair.second()),
          gain(pair.second()));
    }
    return table.lines(width);
  }

  /** What to do, where the paddock is on that farm. */
  static String verdict(Optional<PaddockSide> paddock) {
    return paddock
        .map(side -> PaddockWords.verdict(side.call(), side.actionName()))
        .orElse("not on this farm");
  }

  private static String gain(Optional<PaddockSide> paddock) {
    return paddock
        .filter(side -> side.npv().low() != 0 || side.npv().high() != 0)
        .map(side -> Words.range(side.npv()))
        .orElse("");
  }
}
