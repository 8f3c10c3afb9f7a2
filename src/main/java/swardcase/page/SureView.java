package swardcase.page;

import java.util.List;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.report.FindOut;
import swardcase.report.HowSureReport;
import swardcase.report.PlanResult;
import swardcase.report.RecordsReport;
import swardcase.report.Report;
import swardcase.report.Swing;
import swardcase.wording.FindOutWords;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.RecordsWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** How sure the answer is, what to find out before money is spent, and what moves it most. */
public final class SureView {

  private final Report report;
  private final MoneyFaces faces;
  private final Html html = new Html();

  private SureView(Report report) {
    this.report = report;
    faces = new MoneyFaces(report);
  }

  /** The view as HTML. */
  public static String of(Change change) {
    SureView view = new SureView(change.now());
    view.html.open("section").element("h1 tabindex=-1", Texts.get("page.view.SURE"));
    change.now().howSure().ifPresent(view::drawn);
    view.totals();
    view.swings();
    change.now().records().ifPresent(view::records);
    return view.html.close().toString();
  }

  private void drawn(HowSureReport sure) {
    HowSureWords words = new HowSureWords(report, sure, faces);
    html.element("h2", Texts.get("sure.question")).list(words.howSure());
    html.element("h2", Texts.get("sure.before")).list(new FindOutWords(report).before());
    List<FindOut> worth = report.worthFindingOut();
    if (worth.isEmpty()) {
      return;
    }
    Figures scale = new Figures(worth.stream().map(row -> Drawn.exactly(row.worth())).toList());
    html.table(
        Texts.get("page.findOut", report.farm().currency()),
        Stream.of("column.what", "column.worth", "column.price", "column.advice", "page.bar")
            .map(Texts::get)
            .toList());
    for (FindOut row : worth) {
      html.open("tr").element("th scope=row", FindOutWords.what(row));
      html.element("td", Words.about(row.worth()));
      html.element(
          "td",
          row.price().isPresent() ? Words.about(row.price().getAsDouble()) : Texts.get("none"));
      html.element("td", FindOutWords.advice(row));
      html.open("td").add(scale.bar(Drawn.of(row.worth(), 0, row.worth()))).close().close();
    }
    html.tableEnd();
  }

  private void totals() {
    PlanResult plan = report.plan();
    if (plan.keepsAll()) {
      return;
    }
    String currency = report.farm().currency();
    ReturnsWords returns = ReturnsWords.of(plan.returns(), report.farm().horizonYears());
    html.table(
        Texts.get("sure.totals"),
        Stream.of("column.total", "column.value", "column.means").map(Texts::get).toList());
    total("npv", currency + " " + faces.withEnds(faces.gain(), plan.gain()));
    total("annuity", Words.money(currency, plan.annuity()));
    total("cost", currency + " " + faces.withEnds(faces.cost(), plan.cost()));
    total(
        "peakDebt",
        currency + " " + faces.withEnds(faces.rounded(plan.peakDebt().mean()), plan.peakDebt()));
    total("irr", returns.irr());
    total("mirr", returns.mirr());
    total("payback", returns.payback());
    total("benefitCost", returns.benefitCost());
    html.tableEnd();
  }

  private void total(String key, String value) {
    html.row(List.of(Texts.get("total." + key), value, Texts.get("total." + key + ".means")));
  }

  private void swings() {
    html.element("h2", Texts.get("sure.swings"));
    if (report.swings().isEmpty()) {
      html.element("p", Texts.get("sure.noSwings"));
      return;
    }
    List<Drawn> all = report.swings().stream().map(SureView::ends).toList();
    Figures scale = new Figures(all);
    html.table(
        Texts.get("page.swings", report.farm().currency()),
        Stream.of("column.input", "column.low", "column.high", "page.bar")
            .map(Texts::get)
            .toList());
    for (Swing swing : report.swings()) {
      html.open("tr").element("th scope=row", swing.input());
      html.element("td", faces.number(faces.rounded(swing.gainAtLow())));
      html.element("td", faces.number(faces.rounded(swing.gainAtHigh())));
      html.open("td").add(scale.bar(ends(swing))).close().close();
    }
    html.tableEnd();
  }

  private static Drawn ends(Swing swing) {
    double low = Math.min(swing.gainAtLow(), swing.gainAtHigh());
    double high = Math.max(swing.gainAtLow(), swing.gainAtHigh());
    return Drawn.of(swing.gainAtHigh(), low, high);
  }

  private void records(RecordsReport records) {
    RecordsWords words = new RecordsWords(records, faces);
    html.element("h2", Texts.get("records.heading")).list(words.sentences());
    html.element("p class=note", words.note());
  }
}
