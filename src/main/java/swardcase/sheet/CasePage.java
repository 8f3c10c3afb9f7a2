package swardcase.sheet;

import java.util.List;
import java.util.Optional;
import swardcase.evidence.SetBy;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.BudgetCase;
import swardcase.report.BudgetCase.CostItem;
import swardcase.report.BudgetCase.PriceTable;
import swardcase.report.PlanResult.FarmRule;
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
    flow.title(Texts.get("case.title", report.farm().name()), Texts.get("case.heading"));
    told("case.by", head.preparedBy());
    told("case.for", head.preparedFor());
    told("case.notes", head.notes());
    flow.paragraph(PlanWords.headline(report), Style.LEAD);
    flow.paragraph(Texts.get("case.rests", budget.fingerprint()), Style.BODY);
    new MoneyPages(flow, report, faces).inFull();
    prices(budget.prices());
    costs();
  }

  private void told(String key, Optional<String> text) {
    text.ifPresent(words -> flow.paragraph(Texts.get(key, words), Style.LARGE));
  }

  /** The gain of the plan in hand at other prices. */
  private void prices(PriceTable prices) {
    if (report.plan().keepsAll()) {
      return;
    }
    flow.heading(Texts.get("case.prices"));
    flow.paragraph(
        Texts.get("case.prices.note", report.farm().currency(), report.farm().supplement()),
        Style.NOTE);
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.lambPrice"), 177),
            Column.numbers(supplement(prices, 0), 110),
            Column.numbers(supplement(prices, 1), 110),
            Column.numbers(supplement(prices, 2), 110));
    for (int k = 0; k < prices.gains().size(); k++) {
      List<Double> row = prices.gains().get(k);
      table.row(
          Words.exact(prices.lambPrices().get(k)),
          faces.number(faces.rounded(row.get(0))),
          faces.number(faces.rounded(row.get(1))),
          faces.number(faces.rounded(row.get(2))));
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
        new Table(
            flow,
            Column.names(Texts.get("column.paddock"), 104),
            Column.words(Texts.get("column.costItem"), 173),
            Column.numbers(Texts.get("column.times"), 40),
            Column.numbers(Texts.get("column.costPerHa"), 60),
            Column.numbers(Texts.get("column.cost"), 70),
            Column.words(Texts.get("column.setBy"), 60));
    String none = Texts.get("none");
    for (CostItem item : budget.costs()) {
      table.row(
          item.paddock(),
          item.line().orElseGet(() -> Texts.of("costItem", item.kind())),
          item.times() > 0 ? Integer.toString(item.times()) : none,
          item.times() > 0 ? Words.figures(item.perHa()) : none,
          Words.whole(item.total()),
          item.setBy().map(SetBy::label).orElse(none));
    }
    for (FarmRule rule : report.plan().farmWide()) {
      String cost = Words.whole(rule.cost().mean());
      table.rowInBold(PlanWords.shortRule(rule.what()), "", "", "", cost, "");
    }
    String cost = Words.whole(report.plan().cost().mean());
    table.rowInBold(Texts.get("decision.plan"), "", "", "", cost, "");
    flow.gap(6);
  }
}
