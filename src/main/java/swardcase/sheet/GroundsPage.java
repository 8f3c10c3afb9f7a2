package swardcase.sheet;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.paper.Cell;
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

  private final Flow flow;
  private final Report report;

  GroundsPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void draw() {
    flow.section(Texts.get("grounds.heading"));
    flow.paragraph(Texts.get("grounds.intro"), Style.BODY);
    assumptions();
    heldFixed();
    if (!report.sources().isEmpty()) {
      flow.part(Texts.get("grounds.sources"));
      sources();
    }
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
                Column.words(Texts.get("column.assumption"), 196),
                Column.numbers(Texts.get("column.low"), 38),
                Column.numbers(Texts.get("column.likely"), 38),
                Column.numbers(Texts.get("column.high"), 38),
                Column.words(Texts.get("column.unit"), 62),
                Column.words(Texts.get("column.evidence"), 48),
                Column.words(Texts.get("column.source"), 42),
                Column.words(Texts.get("column.setBy"), 45)),
            Flow.LEFT,
            3);
    table.head();
    report.assumptions().forEach(assumption -> table.row(row(assumption)));
    flow.gap(4);
  }

  private List<Cell> row(Assumption assumption) {
    Range range = assumption.range();
    String none = Texts.get("none");
    return row(
        List.of(
            assumption.name(),
            range.isExact() ? none : Words.figures(range.low()),
            Words.figures(range.likely()),
            range.isExact() ? none : Words.figures(range.high())),
        assumption.unit(),
        assumption.evidence(),
        assumption.source(),
        assumption.setBy());
  }

  /** A number and, behind it, its unit and its marks; bold where the user set it. */
  private List<Cell> row(
      List<String> number, String unit, Evidence evidence, String source, SetBy setBy) {
    Style style = setBy == SetBy.DEFAULT ? Style.FINE : Style.FINE.inBold();
    Stream<String> marks =
        Stream.of(
            unit.equals("-") ? Texts.get("none") : unit,
            evidence.label(),
            numbers(source),
            setBy.label());
    return Stream.concat(number.stream(), marks).map(text -> Cell.of(text, style)).toList();
  }

  private void heldFixed() {
    if (report.heldFixed().isEmpty()) {
      return;
    }
    flow.need(90);
    flow.part(Texts.get("grounds.fixed"));
    flow.paragraph(Texts.get("grounds.fixed.note"), Style.NOTE);
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.assumption"), 240),
                Column.numbers(Texts.get("column.value"), 66),
                Column.words(Texts.get("column.unit"), 62),
                Column.words(Texts.get("column.evidence"), 52),
                Column.words(Texts.get("column.source"), 42),
                Column.words(Texts.get("column.setBy"), 45)),
            Flow.LEFT,
            3);
    table.head();
    Map<String, List<HeldFixed>> byDoubt = grouped(report.heldFixed(), GroundsPage::doubt);
    for (HeldFixed number : byDoubt.getOrDefault("", List.of())) {
      table.row(
          row(
              List.of(number.name(), Words.figures(number.least(), number.most())),
              number.unit(),
              number.evidence(),
              number.source(),
              number.setBy()));
    }
    flow.gap(4);
    byDoubt.remove("");
    byDoubt.forEach(
        (doubt, numbers) ->
            flow.paragraph(Texts.get("grounds.fixed.one", doubt, byMark(numbers)), Style.NOTE));
  }

  /** What is drawn in place of a number; a number that the user set stands by itself. */
  private static String doubt(HeldFixed number) {
    return number.setBy() == SetBy.DEFAULT ? number.doubt() : "";
  }

  private static String byMark(List<HeldFixed> numbers) {
    return grouped(numbers, number -> number.evidence().label()).entrySet().stream()
        .map(of -> Texts.get("grounds.fixed.mark", of.getKey(), figures(of.getValue())))
        .collect(Collectors.joining("; "));
  }

  private static String figures(List<HeldFixed> numbers) {
    return numbers.stream()
        .map(number -> Texts.get("grounds.fixed.of", number.name(), figures(number)))
        .collect(Collectors.joining(", "));
  }

  private static Map<String, List<HeldFixed>> grouped(
      List<HeldFixed> numbers, Function<HeldFixed, String> by) {
    return numbers.stream()
        .collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.toList()));
  }

  private static String figures(HeldFixed number) {
    String figures = Words.figures(number.least(), number.most());
    return number.unit().equals("-") ? figures : figures + " " + number.unit();
  }

  /** The sources of a row by their numbers in the list below the table. */
  private String numbers(String keys) {
    List<String> known = report.sources().stream().map(Source::key).toList();
    String numbers =
        Arrays.stream(keys.split(";"))
            .map(key -> known.indexOf(key.strip()) + 1)
            .filter(number -> number > 0)
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    return numbers.isEmpty() ? Texts.get("none") : numbers;
  }

  private void sources() {
    Table table =
        new Table(
            flow, List.of(Column.numbers("", 18), Column.words("", Flow.WIDTH - 18)), Flow.LEFT, 3);
    table.start();
    for (int i = 0; i < report.sources().size(); i++) {
      table.row(
          List.of(
              Cell.of(Integer.toString(i + 1), Style.FINE),
              Cell.of(source(report.sources().get(i)), Style.FINE)));
    }
  }

  private static String source(Source source) {
    String read = source.read().isBlank() ? "" : " " + Texts.get("grounds.read", source.read());
    String url = source.url().isBlank() ? "" : " " + source.url();
    return source.citation() + url + read;
  }
}
