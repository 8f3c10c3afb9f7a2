package swardcase.sheet;

import java.util.List;
import java.util.function.IntPredicate;
import swardcase.chance.Drawn;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.RangeBar;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanSum;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Every paddock in a row, those the plan changes first, with what they add up to. Numbers are their
 * places in the user's file, which cards carry too.
 */
final class PaddockTable {

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final PaddockWords words;

  PaddockTable(Flow flow, Report report, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.faces = faces;
    words = new PaddockWords(report, faces);
  }

  /**
   * Draws what the plan changes, with its sums, and below it what stays as it is.
   *
   * @param reasons whether the reason of a paddock, by its place, stands below it
   */
  void draw(IntPredicate reasons) {
    if (report.paddocks().isEmpty()) {
      flow.paragraph(Texts.get("decision.noPaddocks"), Style.BODY);
      return;
    }
    if (!report.plan().keepsAll()) {
      changed(reasons);
    }
    List<Integer> kept = places(false);
    if (!kept.isEmpty()) {
      flow.section(Texts.get("paddocks.kept"));
      Table table = new Table(flow, keptColumns(), Flow.LEFT, 2);
      table.head();
      kept.forEach(place -> table.row(keptRow(place, reasons)));
      flow.gap(6);
    }
  }

  private void changed(IntPredicate reasons) {
    flow.section(Texts.get("paddocks.changed"));
    flow.paragraph(Texts.get("paddocks.note", report.farm().currency()), Style.NOTE);
    Scale scale =
        Scale.over(report.paddocks().stream().map(paddock -> paddock.gain().drawn()), 0, 1);
    Table table = new Table(flow, columns(), Flow.LEFT, 2);
    table.head();
    places(true).forEach(place -> table.row(row(place, scale, reasons)));
    PlanSum.of(report, faces).forEach(sum -> table.row(row(sum)));
    flow.gap(6);
  }

  private List<Integer> places(boolean inPlan) {
    return report.plan().order().stream()
        .map(number -> number - 1)
        .filter(place -> report.paddocks().get(place).isInPlan() == inPlan)
        .toList();
  }

  private static List<Cell> row(PlanSum sum) {
    return List.of(
        Cell.of(sum.what(), Style.CELL_BOLD),
        Cell.of(""),
        Cell.of(""),
        Cell.of(""),
        Cell.of(sum.cost(), Style.CELL_BOLD),
        Cell.of(sum.gain(), Style.CELL_BOLD),
        Cell.of(""),
        Cell.of(""),
        Cell.of(""));
  }

  private static List<Column> keptColumns() {
    return List.of(
        Column.words(Texts.get("column.paddock"), 120),
        Column.numbers(Texts.get("column.ha"), 37),
        Column.words(Texts.get("column.do"), 100),
        Column.numbers(Texts.get("column.feedLost"), 130),
        Column.words(Texts.get("column.oestrogen"), 120),
        Column.below(Texts.get("column.why")));
  }

  private List<Cell> keptRow(int place, IntPredicate reasons) {
    PaddockResult paddock = report.paddocks().get(place);
    return List.of(
        Cell.of(name(place), Style.CELL_BOLD),
        Cell.of(Words.exact(paddock.areaHa())),
        Cell.of(PaddockWords.verdict(paddock)),
        Cell.inLine(paddock.dryMatterLostKgPerHa()),
        Cell.of(OestrogenWords.rating(paddock.oestrogenRating())),
        Cell.of(reasons.test(place) ? words.reason(place) : "", Style.NOTE));
  }

  private static List<Column> columns() {
    return List.of(
        Column.words(Texts.get("column.paddock"), 74),
        Column.numbers(Texts.get("column.ha"), 29),
        Column.words(Texts.get("column.do"), 113),
        Column.numbers(Texts.get("column.when"), 27),
        Column.numbers(Texts.get("column.cost"), 72),
        Column.numbers(Texts.get("column.gain"), 79),
        Column.words(Texts.get("column.scale"), 36),
        Column.words(Texts.get("column.oestrogen"), 77),
        Column.below(Texts.get("column.why")));
  }

  private List<Cell> row(int place, Scale scale, IntPredicate reasons) {
    PaddockResult paddock = report.paddocks().get(place);
    return List.of(
        Cell.of(name(place), Style.CELL_BOLD),
        Cell.of(Words.exact(paddock.areaHa())),
        Cell.of(PaddockWords.verdict(paddock), Style.CELL_BOLD),
        Cell.of(PaddockWords.year(paddock.start(), Texts.get("none"))),
        money(faces.cost(place), paddock.cost()),
        money(faces.gain(place), paddock.gain().drawn()),
        Cell.ofMark(
            (canvas, x, top, width, height) -> {
              Scale here = new Scale(scale.low(), scale.high(), x + 1, x + width - 1);
              canvas.line(here.at(0), top + 1, here.at(0), top + height - 1, 0.6, Tint.QUIET);
              RangeBar.draw(canvas, paddock.gain().drawn(), here, top + height / 2, 7);
            }),
        Cell.of(OestrogenWords.rating(paddock.oestrogenRating())),
        Cell.of(reasons.test(place) ? words.reason(place) : "", Style.NOTE));
  }

  private String name(int place) {
    return PaddockWords.numbered(place, report.paddocks().get(place).name());
  }

  private Cell money(double rounded, Drawn of) {
    return of.isExact()
        ? Cell.of(faces.number(rounded))
        : Cell.of(faces.number(rounded), "(" + Words.ends(of, faces.unit()) + ")");
  }

  /** Height of the table in short, in the type of page 1. */
  double shortHeight() {
    Table table = shortTable();
    return 4
        + report.plan().order().stream()
            .mapToDouble(number -> table.height(shortRow(number - 1)))
            .sum();
  }

  /** Draws it: what to do with each paddock, and from when. */
  void drawShort() {
    Table table = shortTable();
    table.start();
    report.plan().order().forEach(number -> table.row(shortRow(number - 1)));
  }

  private Table shortTable() {
    return new Table(
        flow,
        List.of(
            Column.words("", 145),
            Column.numbers("", 55),
            Column.words("", 185),
            Column.words("", 122)),
        Flow.LEFT,
        2);
  }

  private List<Cell> shortRow(int place) {
    PaddockResult paddock = report.paddocks().get(place);
    return List.of(
        Cell.of(name(place), Style.LARGE_BOLD),
        Cell.of(Texts.get("paddocks.ha", Words.exact(paddock.areaHa())), Style.LARGE),
        Cell.of(PaddockWords.verdict(paddock), Style.LARGE),
        Cell.of(
            Texts.get("paddocks.oestrogen", OestrogenWords.rating(paddock.oestrogenRating())),
            Style.LARGE));
  }
}
