package swardcase.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.decision.ExplainTopic;
import swardcase.report.FarmMap;
import swardcase.report.KnownClover;
import swardcase.report.KnownClover.NamedShare;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;
import swardcase.wording.CardFacts;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanSum;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The answer: what to do in a sentence, the figures behind it, and every paddock with its card. */
public final class AnswerView {

  /** Facts that can be taken apart, by the key of their name. */
  private static final Map<String, ExplainTopic> TOPICS =
      Map.of(
          "fact.old", ExplainTopic.OLD_SHARE,
          "fact.rating", ExplainTopic.OESTROGEN,
          "fact.formononetin", ExplainTopic.FORMONONETIN,
          "fact.lost", ExplainTopic.GROWTH_LOST,
          "fact.lostToCultivar", ExplainTopic.GROWTH_LOST,
          "fact.nitrogen", ExplainTopic.NITROGEN,
          "fact.supplement", ExplainTopic.SUPPLEMENT,
          "fact.credit", ExplainTopic.CREDIT);

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
    html.open("dl class=figures");
    figure("page.feed", "winter-feed", (of, any) -> tonnes(of));
    figure(
        "page.feedCost",
        "winter-feed-cost",
        (of, any) -> money(of, of.winterFeed().supplementCost()));
    figure("page.lambs", "lambs", (of, any) -> Words.count(of.reproduction().lambsLostPerYear()));
    figure("page.lambCost", "lamb-cost", (of, any) -> money(of, of.reproduction().costPerYear()));
    figure(
        "page.planCost", "plan-cost", (of, its) -> its.moneyWithEnds(its.cost(), of.plan().cost()));
    figure(
        "page.planGain",
        "plan-gain",
        (of, its) -> its.moneyWithEnds(its.gain(), of.plan().gain().drawn()));
    html.close();
    if (report.plan().calls().unsure() > 0) {
      Drawn sure = report.plan().sureGain().drawn();
      String gains = faces.moneyWithEnds(faces.rounded(sure.mean()), sure);
      html.element("p", Texts.get("page.sureGain", gains));
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

  private static String money(Report of, Drawn sum) {
    return Words.money(of.farm().currency(), sum);
  }

  private void paddocks() {
    html.element("h2", Texts.get("cards.heading"));
    html.element("p class=note", Texts.get("page.paddocks", report.farm().currency()));
    Figures scale =
        new Figures(report.paddocks().stream().map(paddock -> paddock.gain().drawn()).toList());
    report.plan().order().forEach(number -> paddock(number - 1, scale));
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
    card(place, paddock);
    html.close();
  }

  private static String verdict(PaddockResult paddock) {
    String year = PaddockWords.year(paddock.start(), "");
    String verdict = PaddockWords.verdict(paddock);
    return year.isEmpty() ? verdict : Texts.get("page.from", verdict, year);
  }

  /** What grows in a paddock, what follows from it, every action looked at. */
  private void card(int place, PaddockResult paddock) {
    html.open("div class=card").element("p", words.fullReason(place));
    html.open("dl class=facts");
    if (paddock.isInPlan()) {
      fact(
          place,
          Texts.get("page.card.cost"),
          ExplainTopic.COST,
          (of, its) -> its.moneyWithEnds(its.cost(place), of.paddocks().get(place).cost()));
      fact(
          place,
          Texts.get("page.card.gain"),
          ExplainTopic.GAIN,
          (of, its) -> its.moneyWithEnds(its.gain(place), of.paddocks().get(place).gain().drawn()));
    }
    for (CardFacts.Fact fact : facts(report, faces, place)) {
      fact(
          place,
          fact.name(),
          TOPICS.get(fact.key()),
          (of, its) ->
              facts(of, its, place).stream()
                  .filter(one -> one.key().equals(fact.key()))
                  .map(CardFacts.Fact::value)
                  .findFirst()
                  .orElse(""));
    }
    html.close();
    composition(paddock.clover());
    options(place, paddock);
    html.each("p", List.of(words.tooLong(paddock))).close();
  }

  private static List<CardFacts.Fact> facts(Report of, MoneyFaces faces, int place) {
    return CardFacts.of(of, of.paddocks().get(place), new PaddockWords(of, faces).credit(place));
  }

  private void fact(int place, String name, ExplainTopic topic, Change.Figure figure) {
    html.open("div").element("dt", name).open("dd");
    if (topic == null) {
      html.text(figure.of(report, faces));
      change.was(html, figure);
    } else {
      change.figure(html, figure, topic.key(), place);
    }
    html.close().close();
  }

  private void composition(KnownClover clover) {
    List<NamedShare> clovers = clover.found();
    if (clovers.isEmpty()) {
      html.element("p", Texts.get("clover.none"));
      return;
    }
    Figures scale = new Figures(List.of(Drawn.exactly(1)));
    html.table(
        clover.isLookedAt()
            ? Texts.get("clover.heading", Words.exact(clover.plantsLookedAt()))
            : Texts.get("clover.heading.none"),
        Html.words("page.clover", "page.share", "page.bar"),
        clovers.stream()
            .map(named -> List.of(named.name(), Words.percent(named.share()), bar(scale, named)))
            .toList());
  }

  private static Html bar(Figures scale, NamedShare named) {
    Range share = named.share();
    return scale.bar(Drawn.of(share.likely(), share.low(), share.high()));
  }

  private void options(int place, PaddockResult paddock) {
    if (paddock.options().isEmpty()) {
      return;
    }
    html.table(
        Texts.get("page.options", report.farm().currency()),
        Html.words(
            "column.option", "column.when", "column.costPerHa", "column.npv", "column.whyNot"),
        paddock.options().stream().map(option -> option(place, option)).toList());
  }

  private List<String> option(int place, OptionResult option) {
    return List.of(
        option.chosen() ? Texts.get("cards.chosen", option.name()) : option.name(),
        PaddockWords.year(option.start(), Texts.get("none")),
        Words.range(option.costPerHa()),
        faces.withEnds(faces.option(place, option), option.gain()),
        String.join(
            " ",
            words.whyNot(place, option),
            PaddockWords.landUse(option),
            PaddockWords.oldClover(option)));
  }

  private void sums() {
    if (report.plan().keepsAll()) {
      return;
    }
    String currency = report.farm().currency();
    List<List<String>> rows = new ArrayList<>();
    for (int number : report.plan().order()) {
      PaddockResult paddock = report.paddocks().get(number - 1);
      if (paddock.isInPlan()) {
        String cost = faces.number(faces.cost(number - 1));
        rows.add(List.of(paddock.name(), cost, faces.number(faces.gain(number - 1))));
      }
    }
    PlanSum.of(report, faces).forEach(sum -> rows.add(List.of(sum.what(), sum.cost(), sum.gain())));
    html.table(
        Texts.get("page.sums"),
        List.of(
            Texts.get("page.sums.what"),
            Texts.get("page.sums.cost", currency),
            Texts.get("page.sums.gain", currency)),
        rows);
  }

  private void rest() {
    html.element("h2", Texts.get("sure.notes")).list(PlanWords.notes(report, faces));
    if (!report.notices().isEmpty()) {
      html.element("h2", Texts.get("sure.notices")).list(report.notices());
    }
    html.element("h2", Texts.get("cautions.heading")).list(report.cautions());
  }
}
