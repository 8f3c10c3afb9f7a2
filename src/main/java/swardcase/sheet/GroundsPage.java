package swardcase.sheet;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.HeldFixed;
import swardcase.report.Report;
import swardcase.tables.Source;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** What the answer rests on: assumptions, what is held fixed, and sources. */
final class GroundsPage {

  private static final String NONE = Texts.get("none");

  private final Flow flow;
  private final Report report;

  GroundsPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void draw() {
    flow.section(Texts.get("grounds.heading"));
    flow.paragraph(Texts.get("grounds.intro"), Style.BODY);
    if (report.assumptions().isEmpty()) {
      flow.paragraph(Texts.get("grounds.none"), Style.BODY);
    } else {
      assumptions();
    }
    if (!report.heldFixed().isEmpty()) {
      heldFixed();
    }
    if (!report.sources().isEmpty()) {
      sources();
    }
  }

  private void assumptions() {
    Table table =
        table(
            Column.words(Texts.get("column.assumption"), 196),
            Column.numbers(Texts.get("column.low"), 38),
            Column.numbers(Texts.get("column.likely"), 38),
            Column.numbers(Texts.get("column.high"), 38),
            Column.words(Texts.get("column.unit"), 62),
            Column.words(Texts.get("column.evidence"), 48),
            Column.words(Texts.get("column.source"), 42),
            Column.words(Texts.get("column.setBy"), 45));
    for (Assumption number : report.assumptions()) {
      Range range = number.range();
      row(
          table,
          number.setBy(),
          number.name(),
          range.isExact() ? NONE : Words.figures(range.low()),
          Words.figures(range.likely()),
          range.isExact() ? NONE : Words.figures(range.high()),
          unit(number.unit()),
          number.evidence().label(),
          numbers(number.source()),
          number.setBy().label());
    }
    flow.gap(4);
  }

  private void heldFixed() {
    flow.part(Texts.get("grounds.fixed"));
    flow.paragraph(Texts.get("grounds.fixed.note"), Style.NOTE);
    Table table =
        table(
            Column.words(Texts.get("column.assumption"), 172),
            Column.numbers(Texts.get("column.value"), 60),
            Column.words(Texts.get("column.unit"), 60),
            Column.words(Texts.get("column.drawnInstead"), 88),
            Column.words(Texts.get("column.evidence"), 48),
            Column.words(Texts.get("column.source"), 36),
            Column.words(Texts.get("column.setBy"), 43));
    for (HeldFixed number : report.heldFixed()) {
      row(
          table,
          number.setBy(),
          number.name(),
          Words.figures(number.least(), number.most()),
          unit(number.unit()),
          number.doubt().isEmpty() ? NONE : number.doubt(),
          number.evidence().label(),
          numbers(number.source()),
          number.setBy().label());
    }
    flow.gap(4);
  }

  private Table table(Column... columns) {
    return new Table(
        flow, Stream.of(columns).map(column -> column.in(Style.FINE)).toArray(Column[]::new));
  }

  /** Bold where the user set it. */
  private static void row(Table table, SetBy setBy, String... cells) {
    if (setBy == SetBy.DEFAULT) {
      table.row(cells);
    } else {
      table.rowInBold(cells);
    }
  }

  private static String unit(String unit) {
    return unit.equals("-") ? NONE : unit;
  }

  /** The sources of a row by their numbers in the list below the table. */
  private String numbers(String keys) {
    var known = report.sources().stream().map(Source::key).toList();
    String numbers =
        Arrays.stream(keys.split(";"))
            .map(key -> known.indexOf(key.strip()) + 1)
            .filter(number -> number > 0)
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    return numbers.isEmpty() ? NONE : numbers;
  }

  private void sources() {
    flow.part(Texts.get("grounds.sources"));
    Table table = table(Column.numbers("", 18), Column.words("", Flow.WIDTH - 18));
    for (int i = 0; i < report.sources().size(); i++) {
      table.row(Integer.toString(i + 1), source(report.sources().get(i)));
    }
  }

  private static String source(Source source) {
    String read = source.read().isBlank() ? "" : " " + Texts.get("grounds.read", source.read());
    String url = source.url().isBlank() ? "" : " " + source.url();
    return source.citation() + url + read;
  }
}
