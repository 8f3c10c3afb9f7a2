package swardcase.sheet;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.report.Swing;
import swardcase.wording.FindOutWords;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PlanWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** How sure the answer is, with the picture of it; for the case also its figures and movers. */
final class SurePage {

  /** Paddocks in the picture of what was weighed where everything is kept. */
  private static final int MOST_WEIGHED = 14;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;

  SurePage(Flow flow, Report report, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
  }

  /** What the sheet says. */
  void draw() {
    flow.section(Texts.get("sure.heading"));
    flow.paragraph(PlanWords.facts(report.farm()), Style.BODY);
    report.howSure().ifPresent(this::drawn);
  }

  /** What the case says beside it. */
  void drawFigures() {
    flow.part(Texts.get("sure.before"));
    flow.bullets(new FindOutWords(report).before(), Style.BODY);
    if (!report.plan().keepsAll()) {
      totals();
      flow.together(this::swings);
    }
    flow.part(Texts.get("sure.notes"));
    flow.bullets(PlanWords.notes(report, faces), Style.BODY);
  }

  private void drawn(HowSureReport sure) {
    flow.paragraph(Texts.get("sure.cases", Words.exact(sure.draws())), Style.BODY);
    flow.bullets(new HowSureWords(report, sure, faces).howSure(), Style.BODY);
    if (sure.npv().low() < sure.npv().high()) {
      SpreadChart.draw(flow, report, sure, faces);
    } else if (report.plan().keepsAll()) {
      weighed(sure.paddocks().stream().filter(each -> each.option().isPresent()).toList());
    }
  }

  /** Where everything is kept: what the best change of each paddock would bring. */
  private void weighed(List<PaddockSure> all) {
    if (all.isEmpty()) {
      return;
    }
    List<PaddockSure> shown = all.stream().limit(MOST_WEIGHED).toList();
    flow.part(Texts.get("weighed.heading", report.farm().currency()));
    RowChart chart =
        new RowChart(
            flow.lettering(),
            shown.stream()
                .map(of -> new RowChart.Row(of.name(), Words.range(of.gain()), of.gain()))
                .toList(),
            Scale.over(shown.stream().map(PaddockSure::gain), Flow.LEFT, Flow.RIGHT));
    long losing = all.stream().filter(paddock -> paddock.gain().mean() < 0).count();
    flow.figure(chart.height(), Texts.get("weighed.alt", losing, all.size()), chart::paint);
  }

  private void totals() {
    PlanResult plan = report.plan();
    flow.part(Texts.get("sure.totals"));
    ReturnsWords returns = ReturnsWords.of(plan.returns(), report.farm().horizonYears());
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.total"), 140),
            Column.numbers(Texts.get("column.value"), 124),
            Column.words(Texts.get("column.means"), 243).in(Style.NOTE));
    total(table, "npv", faces.moneyWithEnds(faces.gain(), plan.gain().drawn()));
    if (plan.calls().unsure() > 0) {
      Drawn sure = plan.sureGain().drawn();
      total(table, "sureGain", faces.moneyWithEnds(faces.rounded(sure.mean()), sure));
    }
    Drawn debt = plan.peakDebt();
    total(table, "annuity", Words.money(report.farm().currency(), plan.annuity()));
    total(table, "cost", faces.moneyWithEnds(faces.cost(), plan.cost()));
    total(table, "peakDebt", faces.moneyWithEnds(faces.rounded(debt.mean()), debt));
    total(table, "irr", returns.irr());
    total(table, "mirr", returns.mirr());
    total(table, "payback", returns.payback());
    total(table, "benefitCost", returns.benefitCost());
    flow.gap(6);
  }

  private static void total(Table table, String key, String value) {
    table.row(Texts.get("total." + key), value, Texts.get("total." + key + ".means"));
  }

  /** The inputs that move the answer most. */
  private void swings() {
    List<Swing> most = report.swings();
    if (most.isEmpty()) {
      return;
    }
    flow.part(Texts.get("sure.swings"));
    flow.paragraph(Texts.get("sure.swings.how", report.farm().currency()), Style.NOTE);
    List<RowChart.Row> rows = most.stream().map(this::row).toList();
    double low = rows.stream().mapToDouble(row -> row.drawn().low()).min().orElseThrow();
    double high = rows.stream().mapToDouble(row -> row.drawn().high()).max().orElseThrow();
    Scale scale = new Scale(low, high, Flow.LEFT, Flow.RIGHT);
    RowChart chart = new RowChart(flow.lettering(), rows, scale);
    Swing first = most.get(0);
    flow.figure(
        chart.height(),
        Texts.get(
            "sure.swings.alt", first.input(), money(first.gainAtLow()), money(first.gainAtHigh())),
        chart::paint);
  }

  private RowChart.Row row(Swing swing) {
    String unit = swing.unit().equals("-") ? "" : " " + swing.unit();
    return new RowChart.Row(
        Texts.get(
            "sure.swing", swing.input(), Words.exact(swing.low()), Words.exact(swing.high()), unit),
        Texts.get(
            "sure.swing.ends",
            faces.number(faces.rounded(swing.gainAtLow())),
            faces.number(faces.rounded(swing.gainAtHigh()))),
        Drawn.of(
            faces.gain(),
            Math.min(swing.gainAtLow(), swing.gainAtHigh()),
            Math.max(swing.gainAtLow(), swing.gainAtHigh())));
  }

  private String money(double value) {
    return faces.money(faces.rounded(value));
  }
}
