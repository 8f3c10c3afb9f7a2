package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import swardcase.report.Report;
import swardcase.wording.PlanWords;

/** What the workbook is, what it cannot do, and the cautions in full. */
final class ReadMeSheet {

  private static final List<String> USE =
      List.of(
          "The sheet 'Budget' holds the plan of the decision sheet, at likely values, against keeping"
              + " every paddock as it is. Money is real (inflation left out) and before tax; the"
              + " first year is not discounted.",
          "Shaded cells may be changed: the price of a lamb, the further cost of a dry ewe, the price"
              + " of supplement, the discount rate, the end value. Supplement saved is tonnes times"
              + " price, lambs saved are lambs times value; so all results follow.",
          "What does not follow: the choice of actions and years, which another price might change;"
              + " the costs of the actions; other gains (crop margins, spare feed, more ewes); and the"
              + " low and high ends. For those put the new prices into farm.yaml and run the program"
              + " again.",
          "Rates of return, benefit : cost and the cumulative sum leave the end value out; the decision"
              + " sheet counts it in the last year.",
          "A range says more than the likely value: try the low and the high end of each price, which"
              + " stand beside it.");

  private ReadMeSheet() {}

  static void fill(Worksheet sheet, Report report) {
    Grid grid = new Grid(sheet, 95);
    int row = 0;
    grid.bold(row++, 0, report.farm().name() + ", " + report.farm().date());
    grid.text(row++, 0, report.program() + ". Money in " + report.farm().currency() + ".");
    row = part(grid, row + 1, "The answer", List.of(PlanWords.headline(report.plan())));
    row = part(grid, row + 1, "How to use this workbook", USE);
    row = part(grid, row + 1, "Before you act", report.cautions());
    if (!report.notices().isEmpty()) {
      part(grid, row + 1, "What is odd or missing in the farm folder", report.notices());
    }
  }

  private static int part(Grid grid, int from, String heading, List<String> sentences) {
    int row = from;
    grid.bold(row++, 0, heading);
    for (String sentence : sentences) {
      grid.wrapped(row++, 0, sentence);
    }
    return row;
  }
}
