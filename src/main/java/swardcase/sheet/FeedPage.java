package swardcase.sheet;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import swardcase.paper.Canvas;
import swardcase.paper.Column;
import swardcase.paper.Fill;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.FeedMonth;
import swardcase.report.Report;
import swardcase.report.WinterFeed;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Winter feed: what the farm is short of month by month, and how much of it outdated clover
 * explains.
 */
final class FeedPage {

  private static final double HEIGHT = 186;
  private static final double KEY = 14;

  private final Flow flow;
  private final Report report;
  private final List<FeedMonth> months;

  FeedPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
    months = report.feedYear();
  }

  void draw() {
    flow.section(Texts.get("feed.heading"));
    flow.paragraph(Texts.of("winter", report.winterFeed().statement()), Style.BODY_BOLD);
    totals();
    if (months.isEmpty()) {
      flow.paragraph(Texts.get("feed.noMonths"), Style.BODY);
      return;
    }
    flow.together(this::picture);
    table();
  }

  private void totals() {
    WinterFeed feed = report.winterFeed();
    String currency = report.farm().currency();
    Table table =
        new Table(
            flow,
            Column.words(Texts.get("column.perYear"), 357),
            Column.numbers(Texts.get("column.value"), 150));
    table.row(Texts.get("feed.lost"), Words.range(feed.dryMatterLostKg(), "kg DM"));
    table.row(Texts.get("feed.short"), Words.range(feed.shortfallMj(), "MJ"));
    table.row(Texts.get("feed.tonnes"), Words.range(feed.supplementTonnes(), "t"));
    table.row(Texts.get("feed.cost"), Words.money(currency, feed.supplementCost()));
    table.row(Texts.get("feed.wholeYear"), Words.money(currency, feed.wholeYearSupplementCost()));
    table.row(Texts.get("feed.now"), Words.range(feed.supplementTonnesNow(), "t"));
    table.row(Texts.get("feed.nowPerEwe"), Words.range(feed.supplementKgPerEweNow(), "kg"));
    table.row(Texts.get("feed.moreEwes"), Words.money(currency, feed.runMoreEwesGain()));
    table.row(Texts.get("feed.extraEwes"), Words.range(feed.extraEwes()));
    flow.gap(4);
  }

  /** What is needed, eaten and bought, and what would be bought with current cultivars. */
  private void picture() {
    flow.part(Texts.get("feed.charts"));
    FeedMonth worst = months.get(report.winterFeed().mostBoughtIn().ordinal());
    flow.figure(
        HEIGHT,
        Texts.get(
            "feed.budget.alt",
            Words.shortName(worst.month()),
            Words.about(worst.demandMjPerHa()),
            Words.about(worst.eatenMjPerHa()),
            Words.about(worst.boughtMjPerHa()),
            Words.about(worst.boughtWithCurrentMjPerHa())),
        this::paint);
    flow.paragraph(Texts.get("feed.budget.note"), Style.NOTE);
  }

  private void paint(Canvas canvas, double top) {
    key(canvas, 0, top, Fill.INK, "feed.key.demand");
    key(canvas, 1, top, Fill.DEEP, "feed.key.eaten");
    key(canvas, 2, top, Fill.HATCHED, "feed.key.boughtNow");
    key(canvas, 3, top, Fill.OPEN, "feed.key.boughtCurrent");
    ColumnChart chart =
        new ColumnChart(
            canvas,
            flow.lettering(),
            new Rectangle2D.Double(Flow.LEFT, top + KEY, Flow.WIDTH, HEIGHT - KEY),
            months.stream().map(month -> Words.shortName(month.month())).toList(),
            months.stream()
                .flatMapToDouble(
                    of ->
                        DoubleStream.of(
                            0, of.demandMjPerHa(), of.eatenMjPerHa() + of.boughtMjPerHa())));
    for (int i = 0; i < months.size(); i++) {
      FeedMonth month = months.get(i);
      double eaten = month.eatenMjPerHa();
      chart.bar(i, 0.1, 0.5, 0, eaten, Fill.DEEP);
      if (month.boughtMjPerHa() > 0) {
        chart.bar(i, 0.1, 0.5, eaten, eaten + month.boughtMjPerHa(), Fill.HATCHED);
      }
      chart.bar(i, 0.65, 0.2, 0, month.boughtWithCurrentMjPerHa(), Fill.OPEN);
      chart.stroke(i, month.demandMjPerHa(), 0.92);
    }
  }

  private void key(Canvas canvas, int place, double top, Fill fill, String words) {
    double x = Flow.LEFT + place * Flow.WIDTH / 4;
    canvas.bar(x, top + 2, 14, 8, fill);
    canvas.text(flow.lettering().clean(Texts.get(words)), x + 18, top + 9, Style.CELL);
  }

  private void table() {
    flow.part(Texts.get("feed.table"));
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.month"), 45),
            Column.numbers(Texts.get("column.demand"), 46),
            Column.numbers(Texts.get("column.eaten"), 46),
            Column.numbers(Texts.get("column.boughtNow"), 56),
            Column.numbers(Texts.get("column.boughtCurrent"), 58),
            Column.numbers(Texts.get("column.boughtSecond"), 60),
            Column.numbers(Texts.get("column.growth"), 50),
            Column.numbers(Texts.get("column.growthCurrent"), 54),
            Column.numbers(Texts.get("column.green"), 46),
            Column.numbers(Texts.get("column.dry"), 46));
    for (FeedMonth month : months) {
      String[] cells = {
        Words.shortName(month.month()),
        number(month, FeedMonth::demandMjPerHa),
        number(month, FeedMonth::eatenMjPerHa),
        number(month, FeedMonth::boughtMjPerHa),
        number(month, FeedMonth::boughtWithCurrentMjPerHa),
        number(month, FeedMonth::boughtAfrcMjPerHa),
        number(month, FeedMonth::growthKgDmPerHaPerDay),
        number(month, FeedMonth::growthWithCurrentKgDmPerHaPerDay),
        number(month, FeedMonth::greenKgDmPerHa),
        number(month, FeedMonth::dryKgDmPerHa)
      };
      if (month.winter()) {
        table.rowInBold(cells);
      } else {
        table.row(cells);
      }
    }
    flow.gap(4);
    flow.paragraph(Texts.get("feed.table.note"), Style.NOTE);
  }

  /** A number with the digits that the largest of its kind deserves. */
  private String number(FeedMonth month, ToDoubleFunction<FeedMonth> value) {
    double most =
        months.stream().mapToDouble(of -> Math.abs(value.applyAsDouble(of))).max().orElse(1);
    return Words.rounded(value.applyAsDouble(month), Words.step(0, most));
  }
}
