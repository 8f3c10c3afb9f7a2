package swardcase.sheet;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import swardcase.paper.Canvas;
import swardcase.paper.Column;
import swardcase.paper.Fill;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.PlanResult.PlanYear;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The money of a plan year by year, in short and line by line, and what is in hand as a picture.
 */
final class MoneyPages {

  private static final double HEIGHT = 190;

  /** Lower than this the picture shows nothing. */
  private static final double LEAST = 90;

  private static final double HEADING = 46;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final List<PlanYear> years;

  MoneyPages(Flow flow, Report report, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
    years = report.plan().years();
  }

  /** Money out and in, with the picture where the page has room for it. */
  void inShort() {
    flow.section(Texts.get("money.heading"));
    flow.paragraph(Texts.get("money.intro", report.farm().currency()), Style.BODY);
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.year"), 34),
            Column.words(Texts.get("column.work"), 225),
            Column.numbers(Texts.get("column.out"), 62),
            Column.numbers(Texts.get("column.in"), 62),
            Column.numbers(Texts.get("column.net"), 62),
            Column.numbers(Texts.get("column.cumulative"), 62).in(Style.CELL_BOLD));
    for (int t = 0; t < years.size(); t++) {
      double[] sums = faces.outAndIn(t);
      table.row(
          Integer.toString(years.get(t).year()),
          PlanWords.workInShort(report, years.get(t).work()),
          faces.number(sums[0]),
          faces.number(sums[1]),
          faces.number(sums[2]),
          faces.number(faces.cumulative(t)));
    }
    flow.gap(8);
    if (flow.room() - HEADING >= LEAST) {
      picture(Math.min(HEIGHT, flow.room() - HEADING));
    }
  }

  /** Every line of every year, without the plan and with it. */
  void inFull() {
    flow.heading(Texts.get("case.flow"));
    flow.paragraph(Texts.get("case.flow.note", report.farm().currency()), Style.NOTE);
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.year"), 29),
            Column.words(Texts.get("column.work"), 80),
            Column.numbers(Texts.get("column.cost"), 44),
            Column.numbers(Texts.get("column.supplement"), 50),
            Column.numbers(Texts.get("column.lambs"), 40),
            Column.numbers(Texts.get("column.other"), 40),
            Column.numbers(Texts.get("column.net"), 42),
            Column.numbers(Texts.get("column.cumulative"), 46),
            Column.numbers(Texts.get("column.now"), 42),
            Column.numbers(Texts.get("column.without"), 47),
            Column.numbers(Texts.get("column.with"), 47).in(Style.CELL_BOLD));
    for (int t = 0; t < years.size(); t++) {
      PlanYear year = years.get(t);
      double[] flows = faces.flows(t);
      table.row(
          Integer.toString(year.year()),
          PlanWords.workInShort(report, year.work()),
          faces.number(flows[0]),
          faces.number(flows[1]),
          faces.number(flows[2]),
          faces.number(flows[3]),
          faces.number(flows[4]),
          faces.number(faces.cumulative(t)),
          faces.number(faces.year(t)),
          faces.number(faces.rounded(year.without())),
          faces.number(faces.with(t)));
    }
    flow.gap(4);
    flow.paragraph(
        Texts.get("years.note", Words.exact(faces.unit()), faces.money(faces.gain())), Style.NOTE);
    if (!report.plan().keepsAll()) {
      flow.together(() -> picture(HEIGHT));
    }
  }

  private void picture(double height) {
    flow.part(Texts.get("years.chart", report.farm().currency()));
    PlanYear last = years.get(years.size() - 1);
    flow.figure(
        height,
        Texts.get(
            "years.chart.alt",
            faces.money(years.get(lowest()).cumulative()),
            Integer.toString(report.plan().lowestYear()),
            faces.money(last.cumulative()),
            Integer.toString(last.year())),
        (canvas, top) -> paint(canvas, top, height));
  }

  private int lowest() {
    return report.plan().lowestYear() - years.get(0).year();
  }

  private void paint(Canvas canvas, double top, double height) {
    ColumnChart chart =
        new ColumnChart(
            canvas,
            flow.lettering(),
            new Rectangle2D.Double(Flow.LEFT, top, Flow.WIDTH, height),
            years.stream().map(year -> Integer.toString(year.year())).toList(),
            DoubleStream.concat(
                DoubleStream.of(0), years.stream().mapToDouble(PlanYear::cumulative)));
    for (int i = 0; i < years.size(); i++) {
      double value = years.get(i).cumulative();
      chart.bar(i, 0.2, 0.6, 0, value, value < 0 ? Fill.HATCHED : Fill.DEEP);
    }
    for (int i : new TreeSet<>(List.of(lowest(), years.size() - 1))) {
      double value = years.get(i).cumulative();
      String words = Words.rounded(value, faces.unit());
      double half = flow.lettering().width(words, Style.CELL_BOLD) / 2;
      double middle = Math.min(chart.middle(i), Flow.RIGHT - half);
      canvas.textAround(words, middle, chart.at(Math.max(0, value)) - 4, Style.CELL_BOLD);
    }
  }
}
