package swardcase.sheet;

import java.util.List;
import java.util.Optional;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.BudgetCase;
import swardcase.report.BudgetCase.CostItem;
import swardcase.report.BudgetCase.PriceTable;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The head of a case: whose it is, the answer, cash flow with and without, costs and prices. */
final class CasePage {

  private final Flow flow;
  private final Report report;
  private final BudgetCase budget;
  private final CaseHead head;
  private final MoneyFaces faces;

  CasePage(Flow flow, Report report, BudgetCase budget, CaseHead head, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.budget = budget;
    this.head = head;
    this.faces = faces;
  }

  void draw() {
    flow.newPage();
    String title = Texts.get("case.title", report.farm().name());
    List<String> lines = flow.lettering().wrap(title, Style.TITLE, Flow.WIDTH, 2);
    flow.title(String.join(" ", lines), Texts.get("case.heading"));
    told("case.by", head.preparedBy());
    told("case.for", head.preparedFor());
    told("case.notes", head.notes());
    flow.paragraph(PlanWords.headline(report), Style.LEAD);
    flow.paragraph(PlanWords.facts(report.farm()), Style.BODY);
    flow.paragraph(Texts.get("case.rests", budget.fingerprint()), Style.BODY);
    withAndWithout();
    prices(budget.prices());
    costs();
  }

  private void told(String key, Optional<String> text) {
    text.ifPresent(words -> flow.paragraph(Texts.get(key, words), Style.LARGE));
  }

  private void withAndWithout() {
    flow.heading(Texts.get("case.flow"));
    flow.paragraph(Texts.get("case.flow.note", report.farm().currency()), Style.NOTE);
    Table table =
        table(
            Column.words(Texts.get("column.year"), 87),
            Column.numbers(Texts.get("column.without"), 140),
            Column.numbers(Texts.get("column.difference"), 140),
            Column.numbers(Texts.get("column.with"), 140));
    for (int t = 0; t < report.plan().years().size(); t++) {
      PlanYear year = report.plan().years().get(t);
      double net = faces.rounded(year.net());
      double without = faces.rounded(year.without());
      table.row(
          List.of(
              Cell.of(Integer.toString(year.year()), Style.CELL_BOLD),
              Cell.of(faces.number(without)),
              Cell.of(faces.number(net)),
              Cell.of(faces.number(faces.with(t)), Style.CELL_BOLD)));
    }
    flow.gap(6);
  }

  /** The gain of the plan in hand at other prices. */
  private void prices(PriceTable prices) {
    if (report.plan().keepsAll()) {
      return;
    }
    flow.need(130);
    flow.heading(Texts.get("case.prices"));
    flow.paragraph(
        Texts.get("case.prices.note", report.farm().currency(), report.farm().supplement()),
        Style.NOTE);
    Table table =
        table(
            Column.words(Texts.get("column.lambPrice"), 177),
            Column.numbers(supplement(prices, 0), 110),
            Column.numbers(supplement(prices, 1), 110),
            Column.numbers(supplement(prices, 2), 110));
    for (int k = 0; k < prices.gains().size(); k++) {
      List<Double> row = prices.gains().get(k);
      table.row(
          List.of(
              Cell.of(Words.exact(prices.lambPrices().get(k)), Style.CELL_BOLD),
              Cell.of(faces.number(faces.rounded(row.get(0)))),
              Cell.of(faces.number(faces.rounded(row.get(1)))),
              Cell.of(faces.number(faces.rounded(row.get(2))))));
    }
    flow.gap(6);
  }

  private static String supplement(PriceTable prices, int k) {
    return Texts.get("column.supplementPrice", Words.exact(prices.supplementPrices().get(k)));
  }

  private void costs() {
    if (budget.costs().isEmpty()) {
      return;
    }
    flow.heading(Texts.get("case.costs"));
    flow.paragraph(Texts.get("case.costs.note", report.farm().currency()), Style.NOTE);
    Table table =
        table(
            Column.words(Texts.get("column.paddock"), 104),
            Column.words(Texts.get("column.costItem"), 173),
            Column.numbers(Texts.get("column.times"), 40),
            Column.numbers(Texts.get("column.costPerHa"), 60),
            Column.numbers(Texts.get("column.cost"), 70),
            Column.words(Texts.get("column.setBy"), 60));
    for (CostItem item : budget.costs()) {
      String none = Texts.get("none");
      table.row(
          List.of(
              Cell.of(item.paddock(), Style.CELL_BOLD),
              Cell.of(item.line().orElseGet(() -> Texts.of("costItem", item.kind()))),
              Cell.of(item.times() > 0 ? Integer.toString(item.times()) : none),
              Cell.of(item.times() > 0 ? Words.figures(item.perHa()) : none),
              Cell.of(Words.whole(item.total())),
              Cell.of(item.setBy().map(by -> by.label()).orElse(none))));
    }
    report
        .plan()
        .farmWide()
        .forEach(
            rule -> sum(table, PlanWords.shortRule(rule.what()), Words.whole(rule.cost().mean())));
    sum(table, Texts.get("decision.plan"), Words.whole(report.plan().cost().mean()));
    flow.gap(6);
  }

  private static void sum(Table table, String what, String cost) {
    table.row(
        List.of(
            Cell.of(what, Style.CELL_BOLD),
            Cell.of(""),
            Cell.of(""),
            Cell.of(""),
            Cell.of(cost, Style.CELL_BOLD),
            Cell.of("")));
  }

  private Table table(Column... columns) {
    Table table = new Table(flow, List.of(columns));
    table.head();
    return table;
  }
}
