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
import swardcase.wording.ComparisonWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Words;

/**
 * A comparison for a terminal. One other farm stands beside the first with all numbers and
 * paddocks; several stand below each other in {@link ScenariosTerminalView}.
 */
public final class ComparisonTerminalView {

  private final ComparisonReport report;
  private final List<MoneyFaces> faces;
  private final Other other;
  private final String currency;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private ComparisonTerminalView(ComparisonReport report, List<MoneyFaces> faces, int width) {
    this.report = report;
    this.faces = faces;
    this.width = width;
    other = report.others().get(0);
    currency = report.first().farm().currency();
  }

  /**
   * The comparison as lines for a terminal of so many columns.
   *
   * @param faces how the money of each farm is printed, the first farm's first
   */
  public static List<String> of(ComparisonReport report, List<MoneyFaces> faces, int width) {
    List<String> lines =
        report.others().size() == 1
            ? new ComparisonTerminalView(report, faces, width).all()
            : ScenariosTerminalView.of(report, faces, width);
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
    lines.addAll(DifferenceTable.of("The second brings more", currency, other.difference(), width));
    lines.addAll(DifferenceTable.notes(report.first(), "the first", report.others(), width));
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
    Side first = report.first();
    Side second = other.side();
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
    row(
        table,
        "Lambs less supplement, a year",
        side -> currency + " " + Words.range(side.standingResult()));
    row(table, "Paddocks to change", side -> Words.exact(side.calls().act()));
    row(table, "  to keep joining ewes off", side -> Words.exact(side.calls().keepOff()));
    row(table, "  changes not sure", side -> Words.exact(side.calls().unsure()));
    row(table, "  to keep", side -> Words.exact(side.calls().keep()));
    row(table, "  too close to call", side -> Words.exact(side.calls().undecided()));
    row(table, "The plan sows, ha", side -> Words.exact(side.hectaresSown()));
    table.row("  costs", cost(faces.get(0), first), cost(faces.get(1), second));
    table.row("  gains", gain(faces.get(0), first), gain(faces.get(1), second));
    table.row("  its sure changes alone", sure(faces.get(0), first), sure(faces.get(1), second));
    row(table, "  over years", side -> Words.exact(side.farm().horizonYears()));
    return table.lines(width);
  }

  private void row(TextTable table, String what, Function<Side, String> number) {
    table.row(what, number.apply(report.first()), number.apply(other.side()));
  }

  private String cost(MoneyFaces of, Side side) {
    return currency + " " + of.withEnds(of.cost(), side.planCost());
  }

  private String gain(MoneyFaces of, Side side) {
    return currency + " " + of.withEnds(of.gain(), side.gain());
  }

  private String sure(MoneyFaces of, Side side) {
    return currency + " " + of.withEnds(of.rounded(side.sureGain().mean()), side.sureGain());
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
          gain(faces.get(0), pair.first()),
          verdict(pair.second()),
          gain(faces.get(1), pair.second()));
    }
    return table.lines(width);
  }

  /** What to do, where the paddock is on that farm. */
  static String verdict(Optional<PaddockSide> paddock) {
    return paddock.map(ComparisonWords::verdict).orElse("not on this farm");
  }

  private static String gain(MoneyFaces of, Optional<PaddockSide> paddock) {
    return paddock
        .filter(side -> side.sure().isPresent())
        .map(side -> of.withEnds(of.gain(side.number() - 1), side.gain()))
        .orElse("");
  }
}
