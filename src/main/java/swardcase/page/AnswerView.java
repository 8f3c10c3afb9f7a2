package swardcase.page;

import java.util.List;
import java.util.Optional;
import swardcase.report.FarmMap;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanSum;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The answer: what to do in a sentence, the figures behind it, and every paddock with its card. */
public final class AnswerView {

  private final Change change;
  private final Report report;
  private final MoneyFaces faces;
  private final PaddockWords words;
  private final Html html = new Html();

  private AnswerView(Change change) {
    this.change = change;
    report = change.now();
    faces = new MoneyFaces(report);
    words = new PaddockWords(report, faces);
  }

  /** The view as HTML, with a drawing of the farm where there is a map of it. */
  public static String of(Change change, Optional<FarmMap> map) {
    AnswerView view = new AnswerView(change);
    view.html.open("section data-id=?", change.id());
    view.html.element("h1 tabindex=-1", Texts.get("page.view.ANSWER"));
    view.summary();
    map.ifPresent(drawn -> view.html.add(MapView.of(drawn, change.now())));
    view.paddocks();
    view.rest();
    return view.html.close().toString();
  }

  /** The answer alone, without what is said below it, for a view in which things are changed. */
  static Html part(Change change) {
    AnswerView view = new AnswerView(change);
    view.summary();
    view.paddocks();
    return view.html;
  }

  private void summary() {
    if (change.rough()) {
      html.element("p class=rough", Texts.get("page.rough"));
    }
    html.element("p class=lead", PlanWords.headline(report));
    change.was(html.open("p"), (of, any) -> PlanWords.headline(of));
    html.close();
    html.element("p class=note", PlanWords.facts(report.farm()));
    figures();
  }

  private void figures() {
    html.open("dl class=figures");
    figure("page.feed", "winter-feed", (of, any) -> tonnes(of));
    figure("page.feedCost", "winter-feed-cost", (of, any) -> feedCost(of));
    figure("page.lambs", "lambs", (of, any) -> Words.count(of.reproduction().lambsLostPerYear()));
    figure("page.lambCost", "lamb-cost", (of, any) -> lambCost(of));
    figure("page.planCost", "plan-cost", AnswerView::cost);
    figure("page.planGain", "plan-gain", AnswerView::gain);
    html.close();
    if (report.plan().calls().unsure() > 0) {
      PlanResult plan = report.plan();
      String sure = faces.withEnds(faces.rounded(plan.sureGain().mean()), plan.sureGain());
      html.element("p", Texts.get("page.sureGain", report.farm().currency() + " " + sure));
    }
  }

  private void figure(String key, String what, Change.Figure figure) {
    html.open("div").element("dt", Texts.get(key, report.farm().horizonYears()));
    change.figure(html.open("dd"), figure, what, -1);
    html.close().close();
  }

  private static String tonnes(Report of) {
    return Texts.get(
        "page.tonnes", Words.range(of.winterFeed().supplementTonnes()), of.farm().supplement());
  }

  private static String feedCost(Report of) {
    return Words.money(of.farm().currency(), of.winterFeed().supplementCost());
  }

  private static String lambCost(Report of) {
    return Words.money(of.farm().currency(), of.reproduction().costPerYear());
  }

  private static String cost(Report of, MoneyFaces faces) {
    return of.farm().currency() + " " + faces.withEnds(faces.cost(), of.plan().cost());
  }

  private static String gain(Report of, MoneyFaces faces) {
    return of.farm().currency() + " " + faces.withEnds(faces.gain(), of.plan().gain());
  }

  private void paddocks() {
    html.element("h2", Texts.get("cards.heading"));
    html.element("p class=note", Texts.get("page.paddocks", report.farm().currency()));
    Figures scale =
        new Figures(report.paddocks().stream().map(paddock -> paddock.gain().drawn()).toList());
    for (int number : report.plan().order()) {
      paddock(number - 1, scale);
    }
    sums();
  }

  private void paddock(int place, Figures scale) {
    PaddockResult paddock = report.paddocks().get(place);
    boolean starts = paddock.start().isPresent();
    html.open("details class=paddock").open("summary");
    html.element("span class=name", PaddockWords.numbered(place, paddock.name()));
    html.element("span class=ha", Texts.get("page.ha", Words.exact(paddock.areaHa())));
    html.element("span class=?", verdict(paddock), starts ? "do acts" : "do");
    html.open("span class=gain");
    if (starts) {
      html.text(Texts.get("page.gain", faces.withEnds(faces.gain(place), paddock.gain())));
      html.add(scale.bar(paddock.gain().drawn()));
    }
    html.close();
    html.element(
        "span class=ewes",
        Texts.get("page.oestrogen", OestrogenWords.rating(paddock.oestrogenRating())));
    html.element("span class=why", words.reason(place));
    html.open("span class=then");
    change.was(html, (of, any) -> verdict(of.paddocks().get(place)));
    html.close().close();
    new CardView(change, place).add(html);
    html.close();
  }

  private static String verdict(PaddockResult paddock) {
    String year = PaddockWords.year(paddock.start(), "");
    String verdict = PaddockWords.verdict(paddock);
    return year.isEmpty() ? verdict : Texts.get("page.from", verdict, year);
  }

  private void sums() {
    PlanResult plan = report.plan();
    if (plan.keepsAll()) {
      return;
    }
    String currency = report.farm().currency();
    html.table(
        Texts.get("page.sums"),
        List.of(
            Texts.get("page.sums.what"),
            Texts.get("page.sums.cost", currency),
            Texts.get("page.sums.gain", currency)));
    for (int number : plan.order()) {
      PaddockResult paddock = report.paddocks().get(number - 1);
      if (paddock.isInPlan()) {
        html.row(
            List.of(
                paddock.name(),
                faces.number(faces.cost(number - 1)),
                faces.number(faces.gain(number - 1))));
      }
    }
    PlanSum.of(report, faces).forEach(sum -> html.row(List.of(sum.what(), sum.cost(), sum.gain())));
    html.tableEnd();
  }

  private void rest() {
    html.element("h2", Texts.get("sure.notes")).list(PlanWords.notes(report, faces));
    if (!report.notices().isEmpty()) {
      html.element("h2", Texts.get("sure.notices")).list(report.notices());
    }
    html.element("h2", Texts.get("cautions.heading")).list(report.cautions());
  }
}
