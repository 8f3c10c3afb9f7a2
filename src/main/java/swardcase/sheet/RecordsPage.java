package swardcase.sheet;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import swardcase.paper.Canvas;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.RecordsReport;
import swardcase.report.RecordsReport.MovedLine;
import swardcase.report.RecordsReport.RecordedYear;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.RecordsWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** What the farm's own records say, and a picture of them against what was to be expected. */
final class RecordsPage {

  private static final double HEIGHT = 150;
  private static final double AXIS = 30;
  private static final double LOWEST = 40;
  private static final int MOST_YEARS = 14;

  private final Flow flow;
  private final RecordsReport records;
  private final RecordsWords words;
  private final String currency;

  RecordsPage(Flow flow, Report report, RecordsReport records) {
    this.flow = flow;
    this.records = records;
    currency = report.farm().currency();
    words = new RecordsWords(records, new MoneyFaces(report));
  }

  void draw() {
    flow.section(Texts.get("records.heading"));
    flow.bullets(words.sentences(), Style.BODY);
    flow.part(Texts.get("records.moved.heading"));
    flow.paragraph(words.note(), Style.NOTE);
    moved();
    flow.part(Texts.get("records.years.heading"));
    flow.paragraph(Texts.get("records.years.note"), Style.NOTE);
    if (records.years().stream().anyMatch(year -> year.markedPercent().isPresent())) {
      flow.paragraph(Texts.get("records.years.marked"), Style.NOTE);
    }
    List<RecordedYear> told =
        records.years().stream().filter(year -> recorded(year).isPresent()).toList();
    told.stream().map(RecordedYear::mob).distinct().forEach(mob -> pictures(mob, told));
  }

  private void moved() {
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("records.column.number"), 255),
                Column.numbers(Texts.get("records.column.before"), 84),
                Column.numbers(Texts.get("records.column.after"), 84),
                Column.numbers(Texts.get("records.column.gain", currency), 84)));
    table.head();
    for (MovedLine line : records.moved()) {
      table.row(
          List.of(
              Cell.of(RecordsWords.name(line)),
              Cell.of(line.before()),
              Cell.of(line.after()),
              Cell.of(words.gainPart(line.gainPart()))));
    }
    sum(table, "records.number.rest", words.gainPart(records.gainPartsRest()), Style.CELL);
    sum(table, "records.number.gain", words.gainChange(), Style.CELL_BOLD);
    flow.gap(4);
  }

  private static void sum(Table table, String key, String gain, Style style) {
    table.row(
        List.of(Cell.of(Texts.get(key), style), Cell.of(""), Cell.of(""), Cell.of(gain, style)));
  }

  /** A mob's years, as many pictures as they need. */
  private void pictures(String mob, List<RecordedYear> told) {
    List<RecordedYear> years = told.stream().filter(year -> year.mob().equals(mob)).toList();
    for (int from = 0; from < years.size(); from += MOST_YEARS) {
      List<RecordedYear> part = years.subList(from, Math.min(years.size(), from + MOST_YEARS));
      flow.need(HEIGHT + 34);
      flow.paragraph(mob, Style.BODY_BOLD);
      flow.figure(HEIGHT, words(mob, part), (canvas, top) -> paint(canvas, top, part));
    }
  }

  private static OptionalDouble recorded(RecordedYear year) {
    return year.inLambPercent().isPresent() ? year.inLambPercent() : year.markedPercent();
  }

  private static String words(String mob, List<RecordedYear> years) {
    var recorded =
        years.stream().collect(Collectors.summarizingDouble(year -> recorded(year).getAsDouble()));
    return Texts.get(
        "records.years.alt",
        mob,
        Words.whole(recorded.getMin()),
        Words.whole(recorded.getMax()),
        mean(years, false),
        mean(years, true));
  }

  private static String mean(List<RecordedYear> years, boolean after) {
    return Words.whole(
        years.stream()
            .mapToDouble(year -> (after ? year.expectedAfter() : year.expectedBefore()).mean())
            .average()
            .orElse(0));
  }

  private void paint(Canvas canvas, double top, List<RecordedYear> years) {
    double low = LOWEST;
    double high = 100;
    for (RecordedYear year : years) {
      double recorded = recorded(year).getAsDouble();
      low = Math.min(low, Math.min(recorded, year.expectedBefore().low()));
      high = Math.max(high, Math.max(recorded, year.expectedBefore().high()));
    }
    double bottom = top + HEIGHT - 18;
    Scale scale = new Scale(low, high, bottom, top + 8);
    for (double tick : scale.ticks(6)) {
      double y = scale.at(tick);
      canvas.line(Flow.LEFT + AXIS, y, Flow.RIGHT, y, 0.4, Tint.RULE);
      canvas.textTo(Words.exact(tick), Flow.LEFT + AXIS - 5, y + 2.6, Style.NOTE);
    }
    double column = (Flow.WIDTH - AXIS) / years.size();
    double half = Math.min(11, column * 0.3);
    for (int i = 0; i < years.size(); i++) {
      RecordedYear year = years.get(i);
      double middle = Flow.LEFT + AXIS + (i + 0.5) * column;
      bar(canvas, scale, middle, half, year, false);
      bar(canvas, scale, middle, half * 0.5, year, true);
      double value = recorded(year).getAsDouble();
      boolean outside = value < year.expectedAfter().low() || value > year.expectedAfter().high();
      canvas.diamond(middle, scale.at(value), 4, outside);
      String label = year.year() + (year.markedPercent().isPresent() ? "*" : "");
      canvas.textAround(label, middle, bottom + 11, Style.CELL);
    }
  }

  private static void bar(
      Canvas canvas, Scale scale, double middle, double half, RecordedYear year, boolean after) {
    var expected = after ? year.expectedAfter() : year.expectedBefore();
    double high = scale.at(expected.high());
    double height = Math.max(0.6, scale.at(expected.low()) - high);
    canvas.box(middle - half, high, 2 * half, height, after ? Tint.DEEP : Tint.OCHRE);
    canvas.frame(middle - half, high, 2 * half, height, 0.5, Tint.INK);
  }
}
