package swardcase.sheet;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Contents;
import swardcase.paper.Flow;
import swardcase.paper.RangeBar;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.OestrogenWords;
import swardcase.wording.PaddockWords;
import swardcase.wording.PlanWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Page 1: the answer, the numbers behind it and what to do with each paddock. */
final class DecisionPage {

  private static final double BOX_GAP = 9;
  private static final double BOX_HEIGHT = 72;
  private static final double MORE_HEIGHT = 20;
  private static final double SUMS_HEIGHT = 40;

  private final Flow flow;
  private final Report report;
  private final Contents contents;
  private final String currency;
  private final MoneyFaces faces;
  private final PaddockWords words;

  DecisionPage(Flow flow, Report report, Contents contents) {
    this.flow = flow;
    this.report = report;
    this.contents = contents;
    this.currency = report.farm().currency();
    faces = new MoneyFaces(report);
    this.words = new PaddockWords(report, faces);
  }

  void draw() {
    flow.newPage();
    List<String> title =
        flow.lettering().wrap(Texts.get("title", report.farm().name()), Style.TITLE, Flow.WIDTH, 2);
    flow.title(String.join(" ", title), Texts.get("decision.heading"));
    flow.paragraph(PlanWords.headline(report), Style.LEAD);
    flow.paragraph(PlanWords.facts(report.farm()), Style.NOTE);
    flow.gap(2);
    boxes();
    paddocks();
    cautions();
  }

  private void boxes() {
    var feed = report.winterFeed();
    var flock = report.reproduction();
    var plan = report.plan();
    double width = (Flow.WIDTH - 2 * BOX_GAP) / 3;
    double top = flow.y();
    box(
        0,
        width,
        Texts.get("decision.feed.label"),
        Texts.get("decision.feed.figure", Words.mean(feed.supplementTonnes())),
        Texts.get(
            "decision.feed.range",
            ends(feed.supplementTonnes(), " t"),
            report.farm().supplement(),
            Words.money(currency, feed.supplementCost())));
    flow.moveTo(top);
    box(
        1,
        width,
        Texts.get("decision.lambs.label"),
        Texts.get("decision.lambs.figure", Words.meanCount(flock.lambsLostPerYear())),
        Texts.get(
            "decision.lambs.range",
            flock.lambsLostPerYear().high() < 1 ? "" : ends(flock.lambsLostPerYear(), ""),
            Words.money(currency, flock.costPerYear())));
    flow.moveTo(top);
    box(
        2,
        width,
        Texts.get("decision.money.label", report.farm().horizonYears()),
        faces.money(faces.gain()),
        plan.keepsAll() ? Texts.get("decision.money.nothing") : returned(plan));
    flow.moveTo(top + BOX_HEIGHT + 8);
  }

  /** The ends of what the plan returns, and what it costs. */
  private String returned(PlanResult plan) {
    return Texts.get(
        plan.calls().unsure() > 0 ? "decision.money.unsure" : "decision.money.range",
        plan.gain().drawn().isExact()
            ? ""
            : "(" + Words.ends(plan.gain().drawn(), faces.unit()) + ") ",
        currency + " " + faces.withEnds(faces.cost(), plan.cost()),
        Words.exact(plan.hectaresSown()),
        faces.money(faces.rounded(plan.sureGain().mean())));
  }

  /** The ends in brackets, or nothing for a number without a range. */
  private static String ends(Drawn drawn, String unit) {
    return drawn.isExact() ? "" : "(" + Words.ends(drawn) + unit + ") ";
  }

  private void box(int place, double width, String label, String figure, String range) {
    double x = Flow.LEFT + place * (width + BOX_GAP);
    double top = flow.y();
    flow.canvas()
        .artifact(
            () -> {
              flow.canvas().box(x, top, width, BOX_HEIGHT, Tint.PALE);
              flow.canvas().box(x, top, width, 2, Tint.DEEP);
            });
    flow.moveTo(top + 6);
    inBox(label, Style.CELL_BOLD, x, width, 1);
    inBox(figure, Style.FIGURE, x, width, 1);
    inBox(range, Style.FINE, x, width, 3);
  }

  private void inBox(String text, Style style, double x, double width, int most) {
    Style fitting = flow.lettering().fitting(text, style, width - 16, most);
    flow.paragraph(flow.lettering().wrap(text, fitting, width - 16, most), fitting, x + 8);
  }

  /** A paddock with its place in the user's file, which its card carries too. */
  private record Numbered(int number, PaddockResult paddock) {

    boolean starts() {
      return paddock.start().isPresent();
    }
  }

  private void paddocks() {
    List<Numbered> sorted =
        report.plan().order().stream()
            .map(number -> new Numbered(number, report.paddocks().get(number - 1)))
            .toList();
    if (sorted.isEmpty()) {
      flow.paragraph(Texts.get("decision.noPaddocks"), Style.BODY);
      return;
    }
    Scale scale =
        Scale.over(report.paddocks().stream().map(paddock -> paddock.gain().drawn()), 0, 1);
    Table table = new Table(flow, columns(), Flow.LEFT, 2);
    table.head();
    double last = Flow.BOTTOM - cautionsHeight() - 6;
    int changes = report.plan().calls().changes();
    int shown = 0;
    for (Numbered one : sorted) {
      List<Cell> row = row(one, scale);
      boolean isLastOfPlan = shown == changes - 1;
      double reserve =
          (shown == sorted.size() - 1 ? 0 : MORE_HEIGHT) + (isLastOfPlan ? SUMS_HEIGHT : 0);
      if (flow.y() + table.height(row) + reserve > last) {
        break;
      }
      table.row(row);
      shown++;
      if (isLastOfPlan) {
        sums(table);
      }
    }
    if (shown < sorted.size()) {
      flow.gap(4);
      flow.paragraph(more(sorted.subList(shown, sorted.size())), Style.CELL_BOLD);
    }
  }

  /** What the plan's paddocks, which stand first, add up to. */
  private void sums(Table table) {
    List<PlanResult.FarmRule> rules = report.plan().farmWide();
    for (int k = 0; k < rules.size(); k++) {
      sum(
          table,
          PlanWords.shortRule(rules.get(k).what()),
          faces.number(faces.farmWideCost(k)),
          faces.number(faces.farmWide(k)));
    }
    sum(table, PlanWords.shared(faces.shared()), "", faces.number(faces.shared()));
    sum(table, Texts.get("decision.plan"), faces.number(faces.cost()), faces.number(faces.gain()));
  }

  private static void sum(Table table, String what, String cost, String gain) {
    table.row(
        List.of(
            Cell.of(what, Style.CELL_BOLD),
            Cell.of(""),
            Cell.of(""),
            Cell.of(""),
            Cell.of(cost, Style.CELL_BOLD),
            Cell.of(gain, Style.CELL_BOLD),
            Cell.of(""),
            Cell.of(""),
            Cell.of(""),
            Cell.of("")));
  }

  private String more(List<Numbered> rest) {
    long toStart = rest.stream().filter(Numbered::starts).count();
    return Texts.get(
        toStart == 0 ? "decision.more.keep" : "decision.more",
        rest.size(),
        toStart,
        contents.firstCardPage());
  }

  private static List<Column> columns() {
    return List.of(
        Column.words(Texts.get("column.paddock"), 74),
        Column.numbers(Texts.get("column.ha"), 27),
        Column.words(Texts.get("column.do"), 80),
        Column.numbers(Texts.get("column.when"), 27),
        Column.numbers(Texts.get("column.cost"), 76),
        Column.numbers(Texts.get("column.gain"), 80),
        Column.words(Texts.get("column.scale"), 40),
        Column.numbers(Texts.get("column.feedLost"), 46),
        Column.words(Texts.get("column.oestrogen"), 57),
        Column.below(Texts.get("column.why")));
  }

  private List<Cell> row(Numbered one, Scale scale) {
    PaddockResult paddock = one.paddock();
    boolean starts = one.starts();
    int place = one.number() - 1;
    return List.of(
        Cell.of(Texts.get("decision.name", one.number(), paddock.name()), Style.CELL_BOLD),
        Cell.of(Words.exact(paddock.areaHa())),
        Cell.of(PaddockWords.verdict(paddock), starts ? Style.CELL_BOLD : Style.CELL),
        Cell.of(PaddockWords.year(paddock.start(), Texts.get("none"))),
        starts ? money(faces.cost(place), paddock.cost()) : Cell.of(Texts.get("none")),
        starts ? money(faces.gain(place), paddock.gain().drawn()) : Cell.of(Texts.get("none")),
        Cell.ofMark(
            (canvas, x, top, width, height) -> {
              Scale here = new Scale(scale.low(), scale.high(), x + 1, x + width - 1);
              canvas.line(here.at(0), top + 1, here.at(0), top + height - 1, 0.6, Tint.QUIET);
              if (starts) {
                RangeBar.draw(canvas, paddock.gain().drawn(), here, top + height / 2, 7);
              }
            }),
        Cell.of(paddock.dryMatterLostKgPerHa()),
        Cell.of(OestrogenWords.rating(paddock.oestrogenRating())),
        Cell.of(words.reason(place), Style.NOTE));
  }

  private Cell money(double rounded, Drawn of) {
    return of.isExact()
        ? Cell.of(faces.number(rounded))
        : Cell.of(faces.number(rounded), "(" + Words.ends(of, faces.unit()) + ")");
  }

  private List<String> cautionLines() {
    return flow.lettering()
        .wrap(Texts.get("decision.cautions", contents.cautionsPage()), Style.CELL, Flow.WIDTH - 20);
  }

  private double cautionsHeight() {
    return 14 + Style.BODY_BOLD.leading() + cautionLines().size() * Style.CELL.leading();
  }

  private void cautions() {
    double height = cautionsHeight();
    double top = Flow.BOTTOM - height;
    flow.canvas()
        .artifact(() -> flow.canvas().frame(Flow.LEFT, top, Flow.WIDTH, height, 1.1, Tint.INK));
    flow.moveTo(top + 7);
    flow.paragraph(
        List.of(flow.lettering().clean(Texts.get("decision.cautions.label"))),
        Style.BODY_BOLD,
        Flow.LEFT + 10);
    flow.paragraph(cautionLines(), Style.CELL, Flow.LEFT + 10);
  }
}
