package swardcase.sheet;

import java.util.List;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The plan year by year: work, money out, money in and what is in hand. */
final class YearsPage {

  private final Flow flow;
  private final Report report;

  YearsPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void draw() {
    List<PlanYear> years = report.plan().years();
    if (report.plan().keepsAll()) {
      return; // a plan that keeps everything has no years to tell of
    }
    flow.newPage();
    flow.section(Texts.get("years.heading"));
    flow.paragraph(Texts.get("years.intro", report.farm().currency()), Style.BODY);
    double step = step(years);
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.year"), 34),
                Column.words(Texts.get("column.work"), 137),
                Column.numbers(Texts.get("column.cost"), 48),
                Column.numbers(Texts.get("column.supplement"), 56),
                Column.numbers(Texts.get("column.lambs"), 46),
                Column.numbers(Texts.get("column.other"), 44),
                Column.numbers(Texts.get("column.net"), 48),
                Column.numbers(Texts.get("column.cumulative"), 52),
                Column.numbers(Texts.get("column.oldShare"), 42)));
    table.head();
    for (PlanYear year : years) {
      table.row(
          List.of(
              Cell.of(Integer.toString(year.year()), Style.CELL_BOLD),
              Cell.of(year.work().isEmpty() ? Texts.get("none") : PlanWords.work(year.work())),
              Cell.of(Words.rounded(year.cost(), step)),
              Cell.of(Words.rounded(year.supplementSaved(), step)),
              Cell.of(Words.rounded(year.lambsSaved(), step)),
              Cell.of(Words.rounded(year.other(), step)),
              Cell.of(Words.rounded(year.net(), step)),
              Cell.of(Words.rounded(year.cumulative(), step), Style.CELL_BOLD),
              Cell.of(Words.percent(year.oldShare()))));
    }
    flow.gap(4);
    flow.paragraph(Texts.get("years.note", Words.exact(step)), Style.NOTE);
    chart(years, step);
  }

  /** One step for the whole table: three significant figures of its largest yearly sum. */
  private static double step(List<PlanYear> years) {
    double most =
        years.stream()
            .mapToDouble(year -> Math.max(year.cost(), Math.abs(year.net())))
            .max()
            .orElse(1);
    return Math.max(1, Words.step(0, most) / 10);
  }

  private void chart(List<PlanYear> years, double step) {
    flow.need(CashChart.HEIGHT + 40);
    flow.part(Texts.get("years.chart", report.farm().currency()));
    CashChart chart = new CashChart(report.plan(), step, flow.lettering());
    PlanYear lowest = years.get(report.plan().lowestYear() - years.get(0).year());
    PlanYear last = years.get(years.size() - 1);
    String currency = report.farm().currency();
    flow.figure(
        CashChart.HEIGHT,
        Texts.get(
            "years.chart.alt",
            currency + " " + Words.rounded(lowest.cumulative(), step),
            Integer.toString(lowest.year()),
            currency + " " + Words.rounded(last.cumulative(), step),
            Integer.toString(last.year())),
        chart::paint);
  }
}
