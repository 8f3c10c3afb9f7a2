package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.PaddockResult;
import swardcase.report.PaddockResult.NamedShare;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;
import swardcase.report.Words;

/** One card a paddock: what grows there, what follows from it and every action looked at. */
final class PaddockCards {

  private static final double FIGURE_WIDTH = 232;
  private static final double FACTS_LEFT = Flow.LEFT + FIGURE_WIDTH + 22;

  private final Flow flow;
  private final Report report;

  PaddockCards(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  /** Draws the cards and gives the page of the first. */
  int draw() {
    flow.newPage();
    int first = flow.page();
    flow.section(Texts.get("cards.heading"));
    flow.paragraph(Texts.get("cards.intro", report.farm().currency()), Style.NOTE);
    for (int i = 0; i < report.paddocks().size(); i++) {
      card(i + 1, report.paddocks().get(i));
    }
    return first;
  }

  private void card(int number, PaddockResult paddock) {
    List<List<Cell>> facts = new CardFacts(report.farm().currency(), paddock).rows();
    List<List<Cell>> options = options(paddock);
    Table factTable =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.fact"), 138),
                Column.words(Texts.get("column.value"), Flow.RIGHT - FACTS_LEFT - 138)),
            FACTS_LEFT,
            3);
    Table optionTable = new Table(flow, optionColumns());
    List<NamedShare> clovers = paddock.composition();
    double middle = Math.max(height(factTable, facts) + 20, CloverFigure.height(clovers));
    double whole = 110 + middle + height(optionTable, options) + 26;
    flow.need(Math.min(whole, Flow.BOTTOM - Flow.TOP));
    flow.gap(6);
    flow.canvas()
        .artifact(() -> flow.canvas().box(Flow.LEFT, flow.y(), Flow.WIDTH, 1.6, Tint.DEEP));
    flow.gap(7);
    flow.markedPart(Texts.get("cards.name", number, paddock.name(), Words.exact(paddock.areaHa())));
    flow.paragraph(paddock.verdict() + startWords(paddock), Style.LEAD);
    flow.paragraph(paddock.reason(), Style.BODY);
    double top = flow.y();
    CloverFigure figure = new CloverFigure(clovers, FIGURE_WIDTH, flow.lettering());
    flow.figureAt(
        Flow.LEFT, FIGURE_WIDTH, CloverFigure.height(clovers), figure.alternative(), figure::paint);
    factTable.head();
    facts.forEach(factTable::row);
    flow.moveTo(Math.max(flow.y(), top + CloverFigure.height(clovers)) + 8);
    if (!options.isEmpty()) {
      optionTable.head();
      options.forEach(optionTable::row);
    }
    flow.gap(10);
  }

  private static double height(Table table, List<List<Cell>> rows) {
    return rows.stream().mapToDouble(table::height).sum();
  }

  private static String startWords(PaddockResult paddock) {
    return paddock.startYear().isPresent()
        ? Texts.get("cards.from", DecisionPage.when(paddock))
        : "";
  }

  private static List<Column> optionColumns() {
    return List.of(
        Column.words(Texts.get("column.option"), 101),
        Column.numbers(Texts.get("column.when"), 32),
        Column.numbers(Texts.get("column.costPerHa"), 62),
        Column.numbers(Texts.get("column.npv"), 88),
        Column.numbers(Texts.get("column.annuityPerHa"), 66),
        Column.numbers(Texts.get("column.irr"), 38),
        Column.numbers(Texts.get("column.mirr"), 38),
        Column.numbers(Texts.get("column.payback"), 50),
        Column.numbers(Texts.get("column.benefitCost"), 32),
        Column.below(""));
  }

  private static List<List<Cell>> options(PaddockResult paddock) {
    List<List<Cell>> rows = new ArrayList<>();
    for (OptionResult option : paddock.options()) {
      String name = option.chosen() ? Texts.get("cards.chosen", option.name()) : option.name();
      rows.add(
          List.of(
              Cell.of(name, option.chosen() ? Style.CELL_BOLD : Style.CELL),
              Cell.of(
                  option.startYear().isPresent()
                      ? Integer.toString(option.startYear().getAsInt())
                      : Texts.get("none")),
              Cell.of(option.costPerHa()),
              Cell.of(option.npv()),
              Cell.of(option.annuityPerHa()),
              Cell.of(option.irrPercent()),
              Cell.of(option.mirrPercent()),
              Cell.of(option.paybackYears()),
              Cell.of(option.benefitCost()),
              Cell.of(below(option), Style.NOTE)));
    }
    return rows;
  }

  private static String below(OptionResult option) {
    List<Double> old = option.oldShareByYear();
    if (old.size() < 2) {
      return option.whyNot();
    }
    int later = Math.min(5, old.size() - 1);
    String path =
        Texts.get(
            "cards.oldShare",
            Words.percent(old.get(0)),
            Words.percent(old.get(later)),
            later,
            Words.percent(old.get(old.size() - 1)),
            old.size() - 1);
    return option.whyNot().isBlank() ? path : option.whyNot() + " " + path;
  }
}
