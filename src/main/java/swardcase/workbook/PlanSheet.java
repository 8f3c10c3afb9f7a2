package swardcase.workbook;

import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import swardcase.report.GainPart;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;

/** What makes up the plan's mean gain: its changes with what they share, and its kinds of money. */
final class PlanSheet {

  private static final int GAIN = 3;

  private final Grid grid;
  private int row;

  private PlanSheet(Worksheet sheet) {
    grid = new Grid(sheet, 40, 32, 8, 14);
  }

  static void fill(Worksheet sheet, Report report) {
    PlanSheet filled = new PlanSheet(sheet);
    filled.changes(report);
    filled.row++;
    filled.parts(report.plan());
  }

  private void changes(Report report) {
    PlanResult plan = report.plan();
    head("Change", "Action", ">Start", ">Gain, mean");
    int first = row;
    for (PaddockResult paddock : report.paddocks()) {
      if (paddock.isInPlan()) {
        grid.text(row, 1, paddock.actionName());
        grid.right(row, 2, PaddockWords.year(paddock.start(), ""));
        line(paddock.name(), paddock.gain().mean());
      }
    }
    plan.farmWide().forEach(rule -> line(PlanWords.rule(rule.what()), rule.gain().mean()));
    line(PlanWords.shared(plan.shared().mean()), plan.shared().mean());
    total(first);
  }

  private void parts(PlanResult plan) {
    head("Part, present value", "", "", ">Gain, mean");
    int first = row;
    for (GainPart part : plan.parts()) {
      line(Texts.of("gainPart", part.what()), part.mean());
    }
    total(first);
  }

  private void head(String... headings) {
    grid.head(row++, List.of(headings));
  }

  private void line(String what, double gain) {
    grid.text(row, 0, what);
    grid.number(row++, GAIN, gain, Grid.MONEY);
  }

  private void total(int first) {
    grid.bold(row, 0, Texts.get("plan.total"));
    grid.formula(row, GAIN, "SUM(" + Grid.column(GAIN, first, row - 1) + ")", Grid.MONEY);
    row++;
  }
}
