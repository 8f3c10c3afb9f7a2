package swardcase.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.PaddockSide;
import swardcase.report.ComparisonReport.Side;
import swardcase.report.ComparisonReport.Step;

/** A comparison for a terminal: the numbers side by side, the paddocks, the difference by steps. */
public final class ComparisonTerminalView {

  private final ComparisonReport report;
  private final String currency;
  private final List<String> lines = new ArrayList<>();

  private ComparisonTerminalView(ComparisonReport report) {
    this.report = report;
    currency = report.first().farm().currency();
  }

  /** The comparison as lines. */
  public static List<String> of(ComparisonReport report) {
    return new ComparisonTerminalView(report).all();
  }

  private List<String> all() {
    head("First:  ", report.first());
    head("Second: ", report.second());
    lines.add("");
    lines.addAll(numbers());
    lines.add("");
    lines.addAll(paddocks());
    lines.add("");
    lines.add("What makes the difference");
    difference();
    lines.add("");
    lines.addAll(TerminalView.wrap(report.cautions().get(0) + " " + report.cautions().get(1)));
    return lines;
  }

  private void head(String place, Side side) {
    String name = side.farm().name() + " (" + side.folder() + ")";
    lines.add(place + name + ", " + side.farm().date());
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
    return table.lines();
  }

  private void row(TextTable table, String what, Function<Side, String> number) {
    table.row(what, number.apply(report.first()), number.apply(report.second()));
  }

  private List<String> paddocks() {
    TextTable table =
        TextTable.of(
            "Paddock",
            "First: what to do",
            ">Gain " + currency + " (range)",
            "Second: what to do",
            ">Gain " + currency + " (range)");
    for (PaddockPair pair : report.paddocks()) {
      table.row(
          pair.name(),
          verdict(pair.first()),
          gain(pair.first()),
          verdict(pair.second()),
          gain(pair.second()));
    }
    return table.lines();
  }

  private static String verdict(Optional<PaddockSide> paddock) {
    return paddock.map(PaddockSide::verdict).orElse("not on this farm");
  }

  private static String gain(Optional<PaddockSide> paddock) {
    return paddock
        .filter(side -> side.npv().low() != 0 || side.npv().high() != 0)
        .map(side -> Words.range(side.npv()))
        .orElse("");
  }

  private void difference() {
    if (report.steps().isEmpty()) {
      lines.add("Nothing: the two farms are alike in all that is calculated with.");
      return;
    }
    double step = roundTo();
    TextTable table =
        TextTable.of(
            "Taken from the second farm", ">Change " + currency, ">Plan gains " + currency);
    double first = rounded(report.first().likelyNpv(), step);
    table.row("nothing yet: the first farm", "", Words.rounded(first, step));
    List<String> silent = new ArrayList<>();
    double before = first;
    for (Step one : report.steps()) {
      double after = rounded(one.npv(), step);
      if (after == before) {
        silent.add(one.what());
      } else {
        table.row(one.what(), Words.rounded(after - before, step), Words.rounded(after, step));
      }
      before = after;
    }
    table.row(
        "all: the second farm", Words.rounded(before - first, step), Words.rounded(before, step));
    lines.addAll(table.lines());
    if (!silent.isEmpty()) {
      lines.addAll(
          TerminalView.wrap(
              "These differ too, but make no change that shows: "
                  + String.join("; ", silent)
                  + "."));
    }
    lines.addAll(
        TerminalView.wrap(
            "Every step keeps what was taken before and searches the plan anew. The gain is the net"
                + " present value with every number at its likely value, so it may differ from the"
                + " middle of the range above; another order would share the change out"
                + " differently."));
  }

  /** Two significant figures of the largest change, or whole units of money. */
  private double roundTo() {
    double most = report.steps().stream().mapToDouble(s -> Math.abs(s.change())).max().orElse(0);
    return Math.max(1, Words.step(-most, most));
  }

  /** Rounded sums have rounded differences, so that what is printed adds up. */
  private static double rounded(double value, double step) {
    return Math.rint(value / step) * step;
  }
}
