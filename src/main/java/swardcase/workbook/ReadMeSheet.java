package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import swardcase.report.Report;
import swardcase.wording.PlanWords;

/** What the workbook is, what it cannot do, and the cautions in full. */
final class ReadMeSheet {

  private static final List<String> USE =
      List.of(
          "The sheet 'Budget' holds the mean flows of the plan by year and line, against keeping every"
              + " paddock as it is: means over the same draws as the decision sheet. Money is real"
              + " (inflation left out) and before tax; the first year is not discounted.",
          "With no cell changed, its net present value is the mean gain of the plan. The sheet 'Plan'"
              + " shows how paddocks and what they share, and how kinds of money, add up to it. Cells"
              + " hold unrounded numbers; the decision sheet rounds them so that its sums are true.",
          "Shaded cells may be changed: the price of a lamb, the price of supplement, the discount"
              + " rate. The rate discounts anew. A price scales its whole line by new over likely"
              + " price. That is approximate: lambs saved hold the further cost of dry ewes too, and"
              + " what is fed changes with prices.",
          "What does not follow: the choice of actions and years, which another price might change;"
              + " the costs of the actions; crop margins, spare feed and end value; and the low and"
              + " high ends. For those put the new prices into farm.yaml and run the program again.",
          "A range says more than one value: try the low and the high end of each price, which stand"
              + " beside it.");

  private ReadMeSheet() {}

  static void fill(Worksheet sheet, Report report) {
    Grid grid = new Grid(sheet, 95);
    int row = 0;
    grid.bold(row++, 0, report.farm().name() + ", " + report.farm().date());
    grid.text(row++, 0, report.program() + ". Money in " + report.farm().currency() + ".");
    row = part(grid, row + 1, "The answer", List.of(PlanWords.headline(report)));
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
