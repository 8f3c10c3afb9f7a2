package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.ComparisonReport.Difference;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.Side;
import swardcase.wording.ComparisonWords;

/** What another farm brings more than the first: by itself, by its plan, together. */
final class DifferenceTable {

  private DifferenceTable() {}

  /** The table as lines for a terminal of so many columns. */
  static List<String> of(String heading, String currency, Difference difference, int width) {
    if (ComparisonWords.isNothing(difference)) {
      return List.of(heading, ComparisonWords.nothing());
    }
    TextTable table = TextTable.of(heading, ">" + currency + " (range)", ">Known to within");
    ComparisonWords.rows(difference).forEach(row -> table.row(row.toArray(String[]::new)));
    return table.lines(width);
  }

  /** What has to be known to read the tables. */
  static List<String> notes(Side first, String called, List<Other> others, int width) {
    List<String> lines = new ArrayList<>();
    ComparisonWords.notes(first, called, others)
        .forEach(note -> lines.addAll(TerminalView.wrap(note, width)));
    return lines;
  }
}
