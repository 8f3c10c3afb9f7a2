package swardcase.page;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.decision.ExplainTopic;
import swardcase.report.KnownClover;
import swardcase.report.KnownClover.NamedShare;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;
import swardcase.wording.CardFacts;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The card of a paddock: what grows there, what follows from it, every action looked at. */
final class CardView {

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
  private final int place;

  CardView(Change change, int place) {
    this.change = change;
    this.place = place;
  }

  void add(Html html) {
    Report report = change.now();
    MoneyFaces faces = new MoneyFaces(report);
    PaddockWords words = new PaddockWords(report, faces);
    PaddockResult paddock = report.paddocks().get(place);
    html.open("div class=card").element("p", words.fullReason(place));
    html.open("dl class=facts");
    if (paddock.isInPlan()) {
      fact(html, Texts.get("page.card.cost"), ExplainTopic.COST, this::cost);
      fact(html, Texts.get("page.card.gain"), ExplainTopic.GAIN, this::gain);
    }
    for (CardFacts.Fact fact : facts(report, faces)) {
      fact(
          html,
          fact.name(),
          TOPICS.get(fact.key()),
          (of, itsFaces) ->
              facts(of, itsFaces).stream()
                  .filter(one -> one.key().equals(fact.key()))
                  .map(CardFacts.Fact::value)
                  .findFirst()
                  .orElse(""));
    }
    html.close();
    composition(html, paddock.clover());
    options(html, report, faces, words);
    html.each("p", List.of(words.tooLong(paddock))).close();
  }

  private List<CardFacts.Fact> facts(Report of, MoneyFaces faces) {
    return CardFacts.of(of, of.paddocks().get(place), new PaddockWords(of, faces).credit(place));
  }

  private String cost(Report of, MoneyFaces faces) {
    return of.farm().currency()
        + " "
        + faces.withEnds(faces.cost(place), of.paddocks().get(place).cost());
  }

  private String gain(Report of, MoneyFaces faces) {
    return of.farm().currency()
        + " "
        + faces.withEnds(faces.gain(place), of.paddocks().get(place).gain());
  }

  private void fact(Html html, String name, ExplainTopic topic, Change.Figure figure) {
    html.open("div").element("dt", name).open("dd");
    if (topic == null) {
      html.text(figure.of(change.now(), new MoneyFaces(change.now())));
      change.was(html, figure);
    } else {
      change.figure(html, figure, topic.key(), place);
    }
    html.close().close();
  }

  private static void composition(Html html, KnownClover clover) {
    List<NamedShare> clovers = clover.found();
    String heading =
        clover.isLookedAt()
            ? Texts.get("clover.heading", Words.exact(clover.plantsLookedAt()))
            : Texts.get("clover.heading.none");
    if (clovers.isEmpty()) {
      html.element("p", Texts.get("clover.none"));
      return;
    }
    Figures scale = new Figures(List.of(Drawn.exactly(1)));
    html.table(
        heading, List.of(Texts.get("page.clover"), Texts.get("page.share"), Texts.get("page.bar")));
    for (NamedShare named : clovers) {
      Range share = named.share();
      html.open("tr").element("th scope=row", named.name());
      html.element("td", Words.percent(share)).open("td");
      html.add(scale.bar(Drawn.of(share.likely(), share.low(), share.high()))).close().close();
    }
    html.tableEnd();
  }

  private void options(Html html, Report report, MoneyFaces faces, PaddockWords words) {
    List<OptionResult> options = report.paddocks().get(place).options();
    if (options.isEmpty()) {
      return;
    }
    html.table(
        Texts.get("page.options", report.farm().currency()),
        Stream.of(
                "option",
                "when",
                "costPerHa",
                "npv",
                "irr",
                "mirr",
                "payback",
                "benefitCost",
                "whyNot")
            .map(key -> Texts.get("column." + key))
            .toList());
    for (OptionResult option : options) {
      ReturnsWords returns = ReturnsWords.of(option.returns(), report.farm().horizonYears());
      html.row(
          List.of(
              option.chosen() ? Texts.get("cards.chosen", option.name()) : option.name(),
              PaddockWords.year(option.start(), Texts.get("none")),
              Words.range(option.costPerHa()),
              faces.withEnds(faces.option(place, option), option.gain()),
              returns.irr(),
              returns.mirr(),
              returns.payback(),
              returns.benefitCost(),
              String.join(
                  " ",
                  words.whyNot(place, option),
                  PaddockWords.landUse(option),
                  PaddockWords.oldClover(option))));
    }
    html.tableEnd();
  }
}
