package swardcase.intake;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.OtherStock;
import swardcase.tables.DryStock;
import swardcase.tables.Tables;

/** Reads stock other than ewes. */
final class StockReader {

  private final Tables tables;

  StockReader(Tables tables) {
    this.tables = tables;
  }

  List<OtherStock> list(Fields farm) {
    List<OtherStock> stock = new ArrayList<>();
    farm.sections("other_stock").forEach(fields -> find(fields).ifPresent(stock::add));
    return stock;
  }

  private Optional<OtherStock> find(Fields stock) {
    int before = stock.faults().count();
    String name = stock.text("name");
    OptionalInt head = stock.findWhole("head", 0, 1_000_000);
    if (!stock.has("head")) {
      stock.fault("head", "must be given", "");
    }
    Optional<DryStock> kind =
        stock
            .findName("kind", "a class of stock in the tables", tables.dryStock().keySet())
            .map(tables.dryStock()::get);
    Optional<Assumption> dse = dse(stock, name, kind);
    Optional<Assumption> riskyDays = riskyDays(stock, name, kind);
    List<Month> months = months(stock);
    boolean mayMove = stock.findYesNo("may_move").orElse(true);
    stock.finish();
    return stock
        .faults()
        .build(
            before,
            stock.place(),
            () ->
                new OtherStock(
                    name, head.orElseThrow(), dse.orElseThrow(), riskyDays, months, mayMove));
  }

  private static Optional<Assumption> dse(Fields stock, String name, Optional<DryStock> kind) {
    Optional<Assumption> own =
        stock
            .findRange("dse_per_head", 0, 40)
            .map(dse -> Assumption.ofFarm("dry sheep equivalents, " + name, dse, "DSE/head"));
    if (stock.has("kind") == stock.has("dse_per_head")) {
      stock.fault("kind", "must be given, or dse_per_head in its place, but not both", "");
    }
    return own.or(() -> kind.map(DryStock::dsePerHead));
  }

  private static Optional<Assumption> riskyDays(
      Fields stock, String name, Optional<DryStock> kind) {
    OptionalInt own = stock.findWhole("most_risky_days", 0, 366);
    return own.isPresent()
        ? Optional.of(
            Assumption.ofFarm(
                "most days on risky green feed, " + name, Range.exactly(own.getAsInt()), "days"))
        : kind.flatMap(DryStock::mostRiskyDays);
  }

  /** A list of months, or from one month to another, over the new year too; else all twelve. */
  private static List<Month> months(Fields stock) {
    Optional<Month> from = month(stock, "from");
    Optional<Month> to = month(stock, "to");
    List<Month> listed = GrowthReader.months(stock, "months");
    if (stock.has("from") != stock.has("to") || stock.has("from") && stock.has("months")) {
      stock.fault("from", "must come with 'to', and without 'months'", "");
    }
    if (!listed.isEmpty()) {
      return listed;
    }
    List<Month> months = new ArrayList<>();
    Month first = from.orElse(Month.JANUARY);
    int count = Math.floorMod(to.orElse(Month.DECEMBER).getValue() - first.getValue(), 12) + 1;
    for (int i = 0; i < count; i++) {
      months.add(first.plus(i));
    }
    return months.stream().sorted().toList();
  }

  private static Optional<Month> month(Fields stock, String key) {
    Optional<String> text = stock.findText(key);
    Optional<Month> month = text.flatMap(CalendarText::findMonth);
    if (text.isPresent() && month.isEmpty()) {
      stock
          .faults()
          .add(
              stock.place(key),
              "must be a month such as June",
              text.get(),
              CalendarText.monthNames());
    }
    return month;
  }
}
