package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.ComparisonReport;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockPair;
import swardcase.report.ComparisonReport.Side;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Words;

/** A farm and several others for a terminal: one row each, then the paddocks that change. */
final class ScenariosTerminalView {

  private static final String AS_IT_IS = "the farm as it is";

  private final ComparisonReport report;
  private final List<MoneyFaces> faces;
  private final String currency;
  private final int width;
  private final List<Side> sides;
  private final List<String> lines = new ArrayList<>();

  private ScenariosTerminalView(ComparisonReport report, List<MoneyFaces> faces, int width) {
    this.report = report;
    this.faces = faces;
    this.width = width;
    currency = report.first().farm().currency();
    sides = new ArrayList<>(List.of(report.first()));
    report.others().forEach(other -> sides.add(other.side()));
  }

  /** The comparison as lines; {@code faces} as in {@link ComparisonTerminalView#of}. */
  static List<String> of(ComparisonReport report, List<MoneyFaces> faces, int width) {
    ScenariosTerminalView view = new ScenariosTerminalView(report, faces, width);
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
            "The plan",
            ">Sows ha",
            ">Costs " + currency,
            ">Gains " + currency + " (range)",
            ">Sure alone");
    for (int k = 0; k < sides.size(); k++) {
      Side side = sides.get(k);
      MoneyFaces of = faces.get(k);
      table.row(
          called(side),
          Words.exact(side.hectaresSown()),
          of.withEnds(of.cost(), side.planCost()),
          of.withEnds(of.gain(), side.gain()),
          of.number(of.rounded(side.sureGain().mean())));
    }
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
    sides.forEach(
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
    lines.add("What each brings more than " + AS_IT_IS);
    for (Other other : report.others()) {
      lines.addAll(DifferenceTable.of(other.side().called(), currency, other.difference(), width));
      lines.add("");
    }
    lines.addAll(DifferenceTable.notes(report.first(), AS_IT_IS, report.others(), width));
  }
}
