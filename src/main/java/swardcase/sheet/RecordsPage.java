package swardcase.sheet;

import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import swardcase.chance.Drawn;
import swardcase.paper.Canvas;
import swardcase.paper.Column;
import swardcase.paper.Fill;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
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
            Column.words(Texts.get("records.column.number"), 255),
            Column.numbers(Texts.get("records.column.before"), 84),
            Column.numbers(Texts.get("records.column.after"), 84),
            Column.numbers(Texts.get("records.column.gain", currency), 84));
    for (MovedLine line : records.moved()) {
      table.row(
          RecordsWords.name(line),
          Words.inTwoLines(line.before()),
          Words.inTwoLines(line.after()),
          words.gainPart(line.gainPart()));
    }
    table.row(Texts.get("records.number.rest"), "", "", words.gainPart(records.gainPartsRest()));
    table.rowInBold(Texts.get("records.number.gain"), "", "", words.gainChange());
    flow.gap(4);
  }

  /** A mob's years, as many pictures as they need. */
  private void pictures(String mob, List<RecordedYear> told) {
    List<RecordedYear> years = told.stream().filter(year -> year.mob().equals(mob)).toList();
    for (int from = 0; from < years.size(); from += MOST_YEARS) {
      List<RecordedYear> part = years.subList(from, Math.min(years.size(), from + MOST_YEARS));
      flow.together(
          () -> {
            flow.paragraph(mob, Style.BODY_BOLD);
            flow.figure(HEIGHT, words(mob, part), (canvas, top) -> paint(canvas, top, part));
          });
    }
  }

  private static OptionalDouble recorded(RecordedYear year) {
    return year.inLambPercent().isPresent() ? year.inLambPercent() : year.markedPercent();
  }

  private static String words(String mob, List<RecordedYear> years) {
    DoubleSummaryStatistics recorded =
        years.stream().mapToDouble(year -> recorded(year).getAsDouble()).summaryStatistics();
    return Texts.get(
        "records.years.alt",
        mob,
        Words.whole(recorded.getMin()),
        Words.whole(recorded.getMax()),
        mean(years, RecordedYear::expectedBefore),
        mean(years, RecordedYear::expectedAfter));
  }

  private static String mean(List<RecordedYear> years, Function<RecordedYear, Drawn> of) {
    return Words.whole(
        years.stream().mapToDouble(year -> of.apply(year).mean()).average().orElse(0));
  }

  private void paint(Canvas canvas, double top, List<RecordedYear> years) {
    ColumnChart chart =
        new ColumnChart(
            canvas,
            flow.lettering(),
            new Rectangle2D.Double(Flow.LEFT, top, Flow.WIDTH, HEIGHT),
            years.stream()
                .map(year -> year.year() + (year.markedPercent().isPresent() ? "*" : ""))
                .toList(),
            years.stream()
                .flatMapToDouble(
                    year ->
                        DoubleStream.of(
                            LOWEST,
                            100,
                            recorded(year).getAsDouble(),
                            year.expectedBefore().low(),
                            year.expectedBefore().high())));
    for (int i = 0; i < years.size(); i++) {
      RecordedYear year = years.get(i);
      Drawn after = year.expectedAfter();
      double value = recorded(year).getAsDouble();
      chart.range(i, year.expectedBefore(), 0.4, Fill.OCHRE);
      chart.range(i, after, 0.2, Fill.DEEP);
      boolean isOutside = value < after.low() || value > after.high();
      canvas.diamond(chart.middle(i), chart.at(value), 4, isOutside);
    }
  }
}
