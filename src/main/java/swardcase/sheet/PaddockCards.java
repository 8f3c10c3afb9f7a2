package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;
import swardcase.wording.CardFacts;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.ReturnsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** One card a paddock: what grows there, what follows from it and every action looked at. */
final class PaddockCards {

  /** Room for the heading of the options and the first of them. */
  private static final double HEAD_OF_OPTIONS = 90;

  private static final int MOST_CLOVERS = 10;
  private static final double FIGURE_WIDTH = 190;
  private static final double FACTS_LEFT = Flow.LEFT + FIGURE_WIDTH + 22;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final PaddockWords words;

  PaddockCards(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
    faces = new MoneyFaces(report);
    this.words = new PaddockWords(report, faces);
  }

  /** Draws the cards and gives the page of the first. */
  int draw() {
    flow.section(Texts.get("cards.heading"));
    int first = flow.page();
    flow.paragraph(Texts.get("cards.intro", report.farm().currency()), Style.NOTE);
    for (int i = 0; i < report.paddocks().size(); i++) {
      card(i + 1, report.paddocks().get(i));
    }
    return first;
  }

  private void card(int number, PaddockResult paddock) {
    List<List<Cell>> facts =
        CardFacts.of(report, paddock, words.credit(number - 1)).stream()
            .map(fact -> List.of(Cell.of(fact.name(), Style.NOTE), Cell.of(fact.value())))
            .toList();
    List<List<Cell>> options = options(number - 1);
    Table factTable =
        new Table(
            flow,
            List.of(Column.words("", 128), Column.words("", Flow.RIGHT - FACTS_LEFT - 128)),
            FACTS_LEFT,
            3);
    Table optionTable = new Table(flow, optionColumns());
    CloverFigure figure = new CloverFigure(paddock, MOST_CLOVERS, FIGURE_WIDTH, flow.lettering());
    double middle = Math.max(height(factTable, facts), figure.height());
    double upper = wordsHeight(number, paddock) + middle + HEAD_OF_OPTIONS;
    flow.need(Math.min(upper, Flow.BOTTOM - Flow.TOP));
    flow.gap(6);
    flow.canvas()
        .artifact(() -> flow.canvas().box(Flow.LEFT, flow.y(), Flow.WIDTH, 1.6, Tint.DEEP));
    flow.gap(7);
    flow.markedPart(heading(number, paddock));
    flow.paragraph(words.fullReason(number - 1), Style.BODY);
    double top = flow.y();
    flow.figureAt(Flow.LEFT, FIGURE_WIDTH, figure.height(), figure.alternative(), figure::paint);
    factTable.start();
    facts.forEach(factTable::row);
    flow.moveTo(Math.max(flow.y(), top + figure.height()) + 8);
    if (!options.isEmpty()) {
      optionTable.head();
      options.forEach(optionTable::row);
    }
    String tooLong = words.tooLong(paddock);
    if (!tooLong.isEmpty()) {
      flow.paragraph(tooLong, Style.NOTE);
    }
    flow.gap(4);
  }

  private double wordsHeight(int number, PaddockResult paddock) {
    int heading = flow.lettering().wrap(heading(number, paddock), Flow.CARD, Flow.WIDTH).size();
    int reason = flow.lettering().wrap(words.fullReason(number - 1), Style.BODY, Flow.WIDTH).size();
    int tooLong = flow.lettering().wrap(words.tooLong(paddock), Style.NOTE, Flow.WIDTH).size();
    return 20
        + heading * Flow.CARD.leading()
        + reason * Style.BODY.leading()
        + tooLong * Style.NOTE.leading();
  }

  static String heading(int number, PaddockResult paddock) {
    String from =
        paddock.start().isPresent()
            ? Texts.get(
                paddock.start().equals(paddock.lastChangeYear()) ? "cards.from" : "cards.settled",
                PaddockWords.year(paddock.start(), ""),
                PaddockWords.year(paddock.lastChangeYear(), ""))
            : "";
    return Texts.get(
        "cards.name",
        number,
        paddock.name(),
        Words.exact(paddock.areaHa()),
        PaddockWords.verdict(paddock) + from);
  }

  private static double height(Table table, List<List<Cell>> rows) {
    return rows.stream().mapToDouble(table::height).sum();
  }

  private static List<Column> optionColumns() {
    return List.of(
        Column.words(Texts.get("column.option"), 124),
        Column.numbers(Texts.get("column.when"), 26),
        Column.numbers(Texts.get("column.costPerHa"), 64),
        Column.numbers(Texts.get("column.npv"), 112),
        Column.numbers(Texts.get("column.annuityPerHa"), 40),
        Column.numbers(Texts.get("column.irr"), 34),
        Column.numbers(Texts.get("column.mirr"), 34),
        Column.numbers(Texts.get("column.payback"), 40),
        Column.numbers(Texts.get("column.benefitCost"), 33),
        Column.below(Texts.get("column.whyNot")));
  }

  private List<List<Cell>> options(int place) {
    List<List<Cell>> rows = new ArrayList<>();
    for (OptionResult option : report.paddocks().get(place).options()) {
      ReturnsWords returns = ReturnsWords.of(option.returns(), report.farm().horizonYears());
      String name = option.chosen() ? Texts.get("cards.chosen", option.name()) : option.name();
      rows.add(
          List.of(
              Cell.of(name, option.chosen() ? Style.FINE.inBold() : Style.FINE),
              Cell.of(PaddockWords.year(option.start(), Texts.get("none")), Style.FINE),
              Cell.inLine(option.costPerHa()),
              Cell.of(faces.withEnds(faces.option(place, option), option.gain()), Style.FINE),
              Cell.of(Words.mean(option.annuityPerHa()), Style.FINE),
              Cell.of(returns.irr(), Style.FINE),
              Cell.of(returns.mirr(), Style.FINE),
              Cell.of(returns.payback(), Style.FINE),
              Cell.of(returns.benefitCost(), Style.FINE),
              Cell.of(below(place, option), Style.NOTE)));
    }
    return rows;
  }

  private String below(int place, OptionResult option) {
    return String.join(
            " ",
            words.whyNot(place, option),
            PaddockWords.landUse(option),
            PaddockWords.oldClover(option))
        .replace("  ", " ")
        .strip();
  }
}
