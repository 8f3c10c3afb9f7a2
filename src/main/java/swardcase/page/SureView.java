package swardcase.page;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.report.FindOut;
import swardcase.report.HowSureReport;
import swardcase.report.RecordsReport;
import swardcase.report.Report;
import swardcase.report.Swing;
import swardcase.wording.FindOutWords;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.RecordsWords;
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
  public static String of(Report report) {
    SureView view = new SureView(report);
    view.html.open("section").element("h1 tabindex=-1", Texts.get("page.view.SURE"));
    report.howSure().ifPresent(view::drawn);
    view.swings();
    report.records().ifPresent(view::records);
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
        Html.words("column.what", "column.worth", "column.price", "column.advice", "page.bar"),
        worth.stream()
            .map(
                row ->
                    List.of(
                        FindOutWords.what(row),
                        Words.about(row.worth()),
                        row.price().isPresent()
                            ? Words.about(row.price().getAsDouble())
                            : Texts.get("none"),
                        FindOutWords.advice(row),
                        scale.bar(Drawn.of(row.worth(), 0, row.worth()))))
            .toList());
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
        Html.words("column.input", "column.low", "column.high", "page.bar"),
        report.swings().stream()
            .map(
                swing ->
                    List.of(
                        swing.input(),
                        faces.number(faces.rounded(swing.gainAtLow())),
                        faces.number(faces.rounded(swing.gainAtHigh())),
                        scale.bar(ends(swing))))
            .toList());
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
