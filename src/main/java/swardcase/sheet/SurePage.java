package swardcase.sheet;

import java.util.List;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.HowSureReport;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Page 2: how sure the answer is, the picture of it, and the money year by year. */
final class SurePage {

  private static final double HEADING = 46;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;

  SurePage(Flow flow, Report report, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
  }

  void draw() {
    flow.newPage();
    flow.section(Texts.get("sure.heading"));
    flow.paragraph(PlanWords.facts(report.farm()), Style.BODY);
    report.howSure().ifPresent(this::drawn);
    if (!report.plan().keepsAll()) {
      years();
    }
  }

  private void drawn(HowSureReport sure) {
    flow.paragraph(Texts.get("sure.cases", Words.exact(sure.draws())), Style.BODY);
    flow.bullets(new HowSureWords(report, sure, faces).howSure(), Style.BODY);
    String currency = report.farm().currency();
    if (sure.npv().low() < sure.npv().high()) {
      SpreadChart.draw(flow, report, sure, faces);
    } else if (report.plan().keepsAll() && !sure.paddocks().isEmpty()) {
      WeighedChart chart = new WeighedChart(report, sure, flow.lettering());
      flow.part(Texts.get("weighed.heading", currency));
      flow.figure(chart.height(), chart.finding(), chart::paint);
    }
  }

  private void years() {
    List<PlanYear> years = report.plan().years();
    flow.section(Texts.get("money.heading"));
    flow.paragraph(Texts.get("money.intro", report.farm().currency()), Style.BODY);
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.year"), 34),
                Column.words(Texts.get("column.work"), 225),
                Column.numbers(Texts.get("column.out"), 62),
                Column.numbers(Texts.get("column.in"), 62),
                Column.numbers(Texts.get("column.net"), 62),
                Column.numbers(Texts.get("column.cumulative"), 62)));
    table.head();
    for (int t = 0; t < years.size(); t++) {
      double[] sums = faces.outAndIn(t);
      table.row(
          List.of(
              Cell.of(Integer.toString(years.get(t).year()), Style.CELL_BOLD),
              Cell.of(PlanWords.workInShort(report, years.get(t).work())),
              Cell.of(faces.number(sums[0])),
              Cell.of(faces.number(sums[1])),
              Cell.of(faces.number(sums[2])),
              Cell.of(faces.number(faces.cumulative(t)), Style.CELL_BOLD)));
    }
    flow.gap(8);
    double room = Flow.BOTTOM - flow.y() - HEADING;
    if (room >= CashChart.LEAST) {
      YearsPage.chart(flow, report, faces, Math.min(CashChart.HEIGHT, room));
    }
  }
}
