package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.Spread;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Contents;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.FindOut;
import swardcase.report.HowSureReport;
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

/** How sure the answer is: its totals as ranges and the inputs that move it most. */
final class HowSurePage {

  /** Room for the heading and the words above the chart, so that the three stay together. */
  private static final double HEAD_OF_SWINGS = 70;

  private final Flow flow;
  private final Report report;
  private final Contents contents;
  private final MoneyFaces faces;

  HowSurePage(Flow flow, Report report, Contents contents) {
    this.flow = flow;
    this.report = report;
    this.contents = contents;
    faces = new MoneyFaces(report);
  }

  void draw() {
    flow.section(Texts.get("sure.heading"));
    flow.paragraph(Texts.get("sure.intro"), Style.BODY);
    report.howSure().ifPresent(this::drawn);
    totals();
    swings();
    list("sure.notes", PlanWords.notes(report, faces));
    List<String> notices = new ArrayList<>(report.notices());
    if (contents.replaced()) {
      notices.add(Texts.get("sure.replaced"));
    }
    list("sure.notices", notices);
  }

  /** Two questions, each with a few sentences and one picture. */
  private void drawn(HowSureReport sure) {
    String currency = report.farm().currency();
    flow.part(Texts.get("sure.question"));
    HowSureWords words = new HowSureWords(report, sure, faces);
    flow.bullets(words.howSure(), Style.BODY);
    if (sure.npv().low() < sure.npv().high()) {
      SpreadChart.draw(flow, report, sure, faces);
    }
    flow.part(Texts.get("sure.before"));
    flow.bullets(new FindOutWords(report).before(), Style.BODY);
    List<FindOut> worth = report.worthFindingOut();
    if (!worth.isEmpty()) {
      FindOutChart chart = new FindOutChart(worth, currency, flow.lettering());
      String finding =
          Texts.get(
              "sure.findOut.alt",
              FindOutWords.what(worth.get(0)),
              Words.aboutMoney(currency, worth.get(0).worth()));
      flow.figure(chart.height(), finding, chart::paint);
    }
  }

  private void totals() {
    PlanResult plan = report.plan();
    if (plan.keepsAll()) {
      return; // nothing is spent and nothing gained
    }
    flow.part(Texts.get("sure.totals"));
    ReturnsWords returns = ReturnsWords.of(plan.returns(), report.farm().horizonYears());
    String currency = report.farm().currency();
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.total"), 140),
                Column.numbers(Texts.get("column.value"), 124),
                Column.words(Texts.get("column.means"), 243)));
    table.head();
    total(table, "npv", currency + " " + faces.withEnds(faces.gain(), plan.gain()));
    if (plan.calls().unsure() > 0) {
      Spread sure = plan.sureGain();
      total(table, "sureGain", currency + " " + faces.withEnds(faces.rounded(sure.mean()), sure));
    }
    total(table, "annuity", Words.money(currency, plan.annuity()));
    total(table, "cost", currency + " " + faces.withEnds(faces.cost(), plan.cost()));
    total(
        table,
        "peakDebt",
        currency + " " + faces.withEnds(faces.rounded(plan.peakDebt().mean()), plan.peakDebt()));
    total(table, "irr", returns.irr());
    total(table, "mirr", returns.mirr());
    total(table, "payback", returns.payback());
    total(table, "benefitCost", returns.benefitCost());
    flow.gap(6);
  }

  private static void total(Table table, String key, String value) {
    table.row(
        List.of(
            Cell.of(Texts.get("total." + key), Style.CELL_BOLD),
            Cell.of(value),
            Cell.of(Texts.get("total." + key + ".means"), Style.NOTE)));
  }

  private void swings() {
    List<Swing> most = report.swings();
    if (most.isEmpty()) {
      flow.part(Texts.get("sure.swings"));
      flow.paragraph(Texts.get("sure.noSwings"), Style.BODY);
      return;
    }
    SwingChart chart = new SwingChart(most, faces, flow.lettering());
    flow.need(chart.height() + HEAD_OF_SWINGS);
    flow.part(Texts.get("sure.swings"));
    flow.paragraph(Texts.get("sure.swings.how", report.farm().currency()), Style.NOTE);
    Swing first = most.get(0);
    String finding =
        Texts.get(
            "sure.swings.alt",
            first.input(),
            faces.money(faces.rounded(first.gainAtLow())),
            faces.money(faces.rounded(first.gainAtHigh())));
    flow.figure(chart.height(), finding, chart::paint);
  }

  private void list(String heading, List<String> items) {
    if (!items.isEmpty()) {
      flow.part(Texts.get(heading));
      flow.bullets(items, Style.BODY);
    }
  }
}
