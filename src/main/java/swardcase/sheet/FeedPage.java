package swardcase.sheet;

import java.util.List;
import java.util.function.ToDoubleFunction;
import swardcase.paper.Cell;
import swardcase.paper.Column;
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

  private final Flow flow;
  private final Report report;

  FeedPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void draw() {
    flow.section(Texts.get("feed.heading"));
    flow.paragraph(Texts.of("winter", report.winterFeed().statement()), Style.BODY_BOLD);
    totals();
    List<FeedMonth> months = report.feedYear();
    if (months.isEmpty()) {
      flow.paragraph(Texts.get("feed.noMonths"), Style.BODY);
      return;
    }
    charts(months);
    flow.part(Texts.get("feed.table"));
    table(months);
  }

  private void charts(List<FeedMonth> months) {
    double width = (Flow.WIDTH - 20) / 2;
    double second = Flow.RIGHT - width;
    flow.need(FeedChart.HEIGHT + 60);
    flow.part(Texts.get("feed.charts"));
    FeedMonth worst = months.get(report.winterFeed().mostBoughtIn().ordinal());
    String worstName = Words.shortName(worst.month());
    flow.figureAt(
        Flow.LEFT,
        width,
        FeedChart.HEIGHT,
        Texts.get(
            "feed.budget.alt",
            worstName,
            Words.about(worst.demandMjPerHa()),
            Words.about(worst.eatenMjPerHa()),
            Words.about(worst.boughtMjPerHa())),
        new FeedChart(months, Flow.LEFT, width, flow.lettering())::paintBudget);
    flow.figureAt(
        second,
        width,
        FeedChart.HEIGHT,
        Texts.get(
            "feed.bought.alt",
            worstName,
            Words.about(worst.boughtMjPerHa()),
            Words.about(worst.boughtWithCurrentMjPerHa())),
        new FeedChart(months, second, width, flow.lettering())::paintBought);
    flow.gap(FeedChart.HEIGHT + 6);
    flow.paragraph(Texts.get("feed.budget.note"), Style.NOTE);
  }

  private void totals() {
    WinterFeed feed = report.winterFeed();
    String currency = report.farm().currency();
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.perYear"), 357),
                Column.numbers(Texts.get("column.value"), 150)));
    table.head();
    total(table, "feed.lost", Words.range(feed.dryMatterLostKg(), "kg DM"));
    total(table, "feed.short", Words.range(feed.shortfallMj(), "MJ"));
    total(table, "feed.tonnes", Words.range(feed.supplementTonnes(), "t"));
    total(table, "feed.cost", Words.money(currency, feed.supplementCost()));
    total(table, "feed.wholeYear", Words.money(currency, feed.wholeYearSupplementCost()));
    total(table, "feed.now", Words.range(feed.supplementTonnesNow(), "t"));
    total(table, "feed.nowPerEwe", Words.range(feed.supplementKgPerEweNow(), "kg"));
    total(table, "feed.moreEwes", Words.money(currency, feed.runMoreEwesGain()));
    total(table, "feed.extraEwes", Words.range(feed.extraEwes()));
    flow.gap(4);
  }

  private static void total(Table table, String key, String value) {
    table.row(List.of(Cell.of(Texts.get(key)), Cell.of(value)));
  }

  private void table(List<FeedMonth> months) {
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.month"), 45),
                Column.numbers(Texts.get("column.demand"), 46),
                Column.numbers(Texts.get("column.eaten"), 46),
                Column.numbers(Texts.get("column.boughtNow"), 56),
                Column.numbers(Texts.get("column.boughtCurrent"), 58),
                Column.numbers(Texts.get("column.boughtSecond"), 60),
                Column.numbers(Texts.get("column.growth"), 50),
                Column.numbers(Texts.get("column.growthCurrent"), 54),
                Column.numbers(Texts.get("column.green"), 46),
                Column.numbers(Texts.get("column.dry"), 46)));
    table.head();
    for (FeedMonth month : months) {
      Style style = month.winter() ? Style.CELL_BOLD : Style.CELL;
      table.row(
          List.of(
              Cell.of(Words.shortName(month.month()), Style.CELL_BOLD),
              cell(month, FeedMonth::demandMjPerHa, style),
              cell(month, FeedMonth::eatenMjPerHa, style),
              cell(month, FeedMonth::boughtMjPerHa, style),
              cell(month, FeedMonth::boughtWithCurrentMjPerHa, style),
              cell(month, FeedMonth::boughtAfrcMjPerHa, style),
              cell(month, FeedMonth::growthKgDmPerHaPerDay, style),
              cell(month, FeedMonth::growthWithCurrentKgDmPerHaPerDay, style),
              cell(month, FeedMonth::greenKgDmPerHa, style),
              cell(month, FeedMonth::dryKgDmPerHa, style)));
    }
    flow.gap(4);
    flow.paragraph(Texts.get("feed.table.note"), Style.NOTE);
  }

  private Cell cell(FeedMonth month, ToDoubleFunction<FeedMonth> value, Style style) {
    double most =
        report.feedYear().stream()
            .mapToDouble(m -> Math.abs(value.applyAsDouble(m)))
            .max()
            .orElse(1);
    return Cell.of(Words.rounded(value.applyAsDouble(month), Words.step(0, most)), style);
  }
}
