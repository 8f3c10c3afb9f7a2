package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import swardcase.report.ComparisonReport;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.Side;
import swardcase.wording.Words;

/** A farm and several others for a terminal: one row each, then the paddocks that change. */
final class ScenariosTerminalView {

  private static final String AS_IT_IS = "the farm as it is";

  private final ComparisonReport report;
  private final String currency;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private ScenariosTerminalView(ComparisonReport report, int width) {
    this.report = report;
    this.width = width;
    currency = report.first().farm().currency();
  }

  /** The comparison as lines. */
  static List<String> of(ComparisonReport report, int width) {
    ScenariosTerminalView view = new ScenariosTerminalView(report, width);
    view.lines.add(ComparisonTerminalView.head(report.first()));
    view.lines.add("");
    view.summary();
    view.losses();
    view.paddocks();
    view.differences();
    return view.lines;
  }

  private void summary() {
    TextTable table =
        TextTable.of(
            "The plan", ">Sows ha", ">Costs " + currency, ">Gains " + currency + " (range)");
    sides()
        .forEach(
            side ->
                table.row(
                    called(side),
                    Words.exact(side.hectaresSown()),
                    Words.range(side.planCost()),
                    Words.range(side.planNpv())));
    lines.addAll(table.lines(width));
    lines.add("");
  }

  private void losses() {
    TextTable table =
        TextTable.of(
            "Lost in a year",
            ">Winter feed t",
            ">in money " + currency,
            ">Lambs not marked",
            ">in money " + currency);
    sides()
        .forEach(
            side ->
                table.row(
                    called(side),
                    Words.range(side.winterFeedTonnes()),
                    Words.count(side.winterFeedCost()),
                    Words.count(side.lambsLost()),
                    Words.count(side.lambCost())));
    lines.addAll(table.lines(width));
    lines.add("");
  }

  private Stream<Side> sides() {
    return Stream.concat(Stream.of(report.first()), report.others().stream().map(Other::side));
  }

  private String called(Side side) {
    return side == report.first() ? AS_IT_IS : side.called();
  }

  private void paddocks() {
    TextTable table =
        TextTable.of("Paddock", "Compared with", "What to do there", "On " + AS_IT_IS);
    boolean any = false;
    for (Other other : report.others()) {
      for (PaddockPair pair : other.paddocks()) {
        if (pair.answerChanges()) {
          table.row(
              pair.name(),
              other.side().called(),
              ComparisonTerminalView.verdict(pair.second()),
              ComparisonTerminalView.verdict(pair.first()));
          any = true;
        }
      }
    }
    if (any) {
      lines.add("Paddocks where the answer changes");
      lines.addAll(table.lines(width));
    } else {
      lines.add("The answer is the same for every paddock.");
    }
    lines.add("");
  }

  private void differences() {
    lines.add("What makes the difference");
    for (Other other : report.others()) {
      lines.add("");
      lines.add(other.side().called());
      lines.addAll(DifferenceTable.of(report.first(), other, width));
    }
    lines.add("");
    lines.addAll(TerminalView.wrap(DifferenceTable.NOTE, width));
  }
}
