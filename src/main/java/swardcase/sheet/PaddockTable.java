package swardcase.sheet;

import java.util.List;
import java.util.function.Predicate;
import swardcase.chance.Drawn;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanSum;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Every paddock in a row, those the plan changes first, with what they add up to. Numbers are their
 * places in the user's file, which cards carry too.
 */
final class PaddockTable {

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final PaddockWords words;
  private final Predicate<PaddockResult> hasCard;

  /**
   * The table of a report.
   *
   * @param hasCard whether a paddock has a card, which says why; of others the table does
   */
  PaddockTable(Flow flow, Report report, MoneyFaces faces, Predicate<PaddockResult> hasCard) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
    this.hasCard = hasCard;
    words = new PaddockWords(report, faces);
  }

  /** Draws what the plan changes, with its sums, and below it what stays as it is. */
  void draw() {
    if (report.paddocks().isEmpty()) {
      flow.paragraph(Texts.get("decision.noPaddocks"), Style.BODY);
    }
    if (!report.plan().keepsAll()) {
      flow.section(Texts.get("paddocks.changed"));
      flow.paragraph(Texts.get("paddocks.note", report.farm().currency()), Style.NOTE);
      Table table = table(places(true));
      places(true).forEach(place -> table.row(row(place)));
      for (PlanSum sum : PlanSum.of(report, faces)) {
        table.rowInBold(sum.what(), "", "", "", sum.cost(), sum.gain(), "", "", "");
      }
      flow.gap(6);
    }
    List<Integer> kept = places(false);
    if (!kept.isEmpty()) {
      flow.section(Texts.get("paddocks.kept"));
      Table table = table(kept);
      kept.forEach(place -> table.row(row(place)));
      flow.gap(6);
    }
  }

  private List<Integer> places(boolean inPlan) {
    return report.plan().order().stream()
        .map(number -> number - 1)
        .filter(place -> report.paddocks().get(place).isInPlan() == inPlan)
        .toList();
  }

  private Table table(List<Integer> places) {
    boolean isTold = places.stream().anyMatch(i -> !hasCard.test(report.paddocks().get(i)));
    return new Table(
        flow,
        Column.names(Texts.get("column.paddock"), 70),
        Column.numbers(Texts.get("column.ha"), 27),
        Column.words(Texts.get("column.do"), 100),
        Column.numbers(Texts.get("column.when"), 26),
        Column.numbers(Texts.get("column.cost"), 62),
        Column.numbers(Texts.get("column.gain"), 76),
        Column.numbers(Texts.get("column.feedLost"), 66).in(Style.FINE),
        Column.words(Texts.get("column.oestrogen"), 80).in(Style.FINE),
        Column.below(isTold ? Texts.get("column.why") : ""));
  }

  private String[] row(int place) {
    PaddockResult paddock = report.paddocks().get(place);
    String none = Texts.get("none");
    return new String[] {
      PaddockWords.numbered(place, paddock.name()),
      Words.exact(paddock.areaHa()),
      PaddockWords.verdict(paddock),
      PaddockWords.year(paddock.start(), none),
      paddock.isInPlan() ? money(faces.cost(place), paddock.cost()) : none,
      paddock.isInPlan() ? money(faces.gain(place), paddock.gain().drawn()) : none,
      Words.range(paddock.dryMatterLostKgPerHa()),
      OestrogenWords.rating(paddock.oestrogenRating()),
      hasCard.test(paddock) ? "" : words.reason(place)
    };
  }

  private String money(double rounded, Drawn of) {
    return Words.inTwoLines(faces.withEnds(rounded, of));
  }
}
