package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.report.Report;
import swardcase.report.Words;
import swardcase.tables.Source;

/** What the answer rests on: assumptions, sources, the words used, and the cautions in full. */
final class GroundsPage {

  private final Flow flow;
  private final Report report;

  GroundsPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  /** Draws the pages and gives the page of the cautions. */
  int draw() {
    flow.newPage();
    flow.section(Texts.get("grounds.heading"));
    flow.paragraph(Texts.get("grounds.intro"), Style.BODY);
    assumptions();
    if (!report.sources().isEmpty()) {
      flow.part(Texts.get("grounds.sources"));
      flow.bullets(report.sources().stream().map(GroundsPage::source).toList(), Style.CELL);
    }
    flow.newPage();
    glossary();
    return cautions();
  }

  private void assumptions() {
    if (report.assumptions().isEmpty()) {
      flow.paragraph(Texts.get("grounds.none"), Style.BODY);
      return;
    }
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.assumption"), 133),
                Column.numbers(Texts.get("column.low"), 48),
                Column.numbers(Texts.get("column.likely"), 48),
                Column.numbers(Texts.get("column.high"), 48),
                Column.words(Texts.get("column.unit"), 65),
                Column.words(Texts.get("column.evidence"), 51),
                Column.words(Texts.get("column.source"), 66),
                Column.words(Texts.get("column.setBy"), 48)),
            Flow.LEFT,
            3);
    table.head();
    report.assumptions().forEach(assumption -> table.row(row(assumption)));
    flow.gap(4);
  }

  private static List<Cell> row(Assumption assumption) {
    Style style = assumption.setBy() == SetBy.DEFAULT ? Style.CELL : Style.CELL_BOLD;
    boolean exact = assumption.range().isExact();
    return List.of(
        Cell.of(assumption.name(), style),
        Cell.of(exact ? Texts.get("none") : Words.exact(assumption.range().low()), style),
        Cell.of(Words.exact(assumption.likely()), style),
        Cell.of(exact ? Texts.get("none") : Words.exact(assumption.range().high()), style),
        Cell.of(assumption.unit().equals("-") ? Texts.get("none") : assumption.unit(), style),
        Cell.of(assumption.evidence().label(), style),
        Cell.of(assumption.source().isBlank() ? Texts.get("none") : assumption.source(), style),
        Cell.of(assumption.setBy().label(), style));
  }

  private static String source(Source source) {
    String read = source.read().isBlank() ? "" : " " + Texts.get("grounds.read", source.read());
    String url = source.url().isBlank() ? "" : " " + source.url();
    return source.key() + ": " + source.citation() + url + read;
  }

  private void glossary() {
    flow.section(Texts.get("glossary.heading"));
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.term"), 130),
                Column.words(Texts.get("column.meaning"), Flow.WIDTH - 130)));
    table.head();
    for (int i = 1; Texts.has("glossary." + i + ".term"); i++) {
      table.row(
          List.of(
              Cell.of(Texts.get("glossary." + i + ".term"), Style.CELL_BOLD),
              Cell.of(Texts.get("glossary." + i + ".text"))));
    }
    flow.gap(10);
  }

  private int cautions() {
    List<String> lines = new ArrayList<>();
    report
        .cautions()
        .forEach(
            caution -> lines.addAll(flow.lettering().wrap(caution, Style.BODY, Flow.WIDTH - 12)));
    double height = 60 + lines.size() * Style.BODY.leading() + report.cautions().size() * 2.5;
    flow.need(Math.min(height, Flow.BOTTOM - Flow.TOP));
    flow.section(Texts.get("cautions.heading"));
    int page = flow.page();
    flow.bullets(report.cautions(), Style.BODY);
    return page;
  }
}
