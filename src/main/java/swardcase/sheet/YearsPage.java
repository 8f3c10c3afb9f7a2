package swardcase.sheet;

import java.util.List;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
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
    flow.section(Texts.get("years.heading"));
    flow.paragraph(Texts.get("years.intro", report.farm().currency()), Style.BODY);
    MoneyFaces faces = new MoneyFaces(report);
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.year"), 34),
                Column.words(Texts.get("column.work"), 111),
                Column.numbers(Texts.get("column.cost"), 48),
                Column.numbers(Texts.get("column.supplement"), 52),
                Column.numbers(Texts.get("column.lambs"), 42),
                Column.numbers(Texts.get("column.other"), 42),
                Column.numbers(Texts.get("column.net"), 44),
                Column.numbers(Texts.get("column.cumulative"), 50),
                Column.numbers(Texts.get("column.now"), 46),
                Column.numbers(Texts.get("column.oldShare"), 38)));
    table.head();
    for (int t = 0; t < years.size(); t++) {
      PlanYear year = years.get(t);
      double[] flows = faces.flows(t);
      table.row(
          List.of(
              Cell.of(Integer.toString(year.year()), Style.CELL_BOLD),
              Cell.of(year.work().isEmpty() ? Texts.get("none") : PlanWords.work(year.work())),
              Cell.of(faces.number(flows[0])),
              Cell.of(faces.number(flows[1])),
              Cell.of(faces.number(flows[2])),
              Cell.of(faces.number(flows[3])),
              Cell.of(faces.number(flows[4])),
              Cell.of(faces.number(faces.cumulative(t)), Style.CELL_BOLD),
              Cell.of(faces.number(faces.year(t))),
              Cell.of(Words.percent(year.oldShare()))));
    }
    flow.gap(4);
    flow.paragraph(
        Texts.get("years.note", Words.exact(faces.unit()), faces.money(faces.gain())), Style.NOTE);
    chart(flow, report, faces, CashChart.HEIGHT);
  }

  /** The running balance, so many points high, under its heading. */
  static void chart(Flow flow, Report report, MoneyFaces faces, double height) {
    flow.need(height + 40);
    flow.part(Texts.get("years.chart", report.farm().currency()));
    List<PlanYear> years = report.plan().years();
    CashChart chart = new CashChart(report.plan(), faces.unit(), height, flow.lettering());
    PlanYear lowest = years.get(report.plan().lowestYear() - years.get(0).year());
    PlanYear last = years.get(years.size() - 1);
    flow.figure(
        height,
        Texts.get(
            "years.chart.alt",
            faces.money(lowest.cumulative()),
            Integer.toString(lowest.year()),
            faces.money(last.cumulative()),
            Integer.toString(last.year())),
        chart::paint);
  }
}
