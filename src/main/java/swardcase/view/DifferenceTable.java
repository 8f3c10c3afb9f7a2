package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.Side;
import swardcase.report.ComparisonReport.Step;
import swardcase.wording.ComparisonWords;
import swardcase.wording.Words;

/** The way from one farm to another by steps, printed so that it adds up. */
final class DifferenceTable {

  /** What has to be known to read it. */
  static final String NOTE =
      "Every step keeps what was taken before and searches the plan anew. The gain is the net present"
          + " value with every number at its likely value, so it may differ from the middle of the"
          + " range above; another order would share the change out differently.";

  private DifferenceTable() {}

  /** The table as lines for a terminal of so many columns. */
  static List<String> of(Side first, Other other, int width) {
    if (other.steps().isEmpty()) {
      return List.of("Nothing: the two are alike in all that is calculated with.");
    }
    boolean scenario = other.side().scenario().isPresent();
    String currency = first.farm().currency();
    TextTable table =
        TextTable.of(
            scenario ? "Taken from the scenario" : "Taken from the second farm",
            ">Change " + currency,
            ">Plan gains " + currency);
    double step = roundTo(first, other.steps());
    double start = rounded(first.likelyNpv(), step);
    table.row(
        scenario ? "nothing yet: the farm as it is" : "nothing yet: the first farm",
        "",
        Words.rounded(start, step));
    List<String> silent = new ArrayList<>();
    double before = start;
    for (Step one : other.steps()) {
      double after = rounded(one.npv(), step);
      if (after == before) {
        silent.add(ComparisonWords.parts(one));
      } else {
        table.row(
            ComparisonWords.parts(one),
            Words.rounded(after - before, step),
            Words.rounded(after, step));
      }
      before = after;
    }
    table.row(
        scenario ? "all: the scenario" : "all: the second farm",
        Words.rounded(before - start, step),
        Words.rounded(before, step));
    List<String> lines = new ArrayList<>(table.lines(width));
    if (!silent.isEmpty()) {
      String names = String.join("; ", silent);
      lines.addAll(
          TerminalView.wrap(
              "These differ too, but make no change that shows: " + names + ".", width));
    }
    return lines;
  }

  /** Two significant figures of the largest change, or of the gain where nothing changes. */
  private static double roundTo(Side first, List<Step> steps) {
    double change = steps.stream().mapToDouble(s -> Math.abs(s.change())).max().orElse(0);
    double most = change > 0 ? change : Math.abs(first.likelyNpv());
    return Math.max(1, Words.step(-most, most));
  }

  /** Rounded sums have rounded differences, so that what is printed adds up. */
  private static double rounded(double value, double step) {
    return Math.rint(value / step) * step;
  }
}
