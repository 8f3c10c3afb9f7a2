package swardcase.intake;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.OtherStock;
import swardcase.reading.Fields;
import swardcase.tables.DryStock;
import swardcase.tables.Tables;

/** Reads stock other than ewes. */
final class StockReader {

  private final Tables tables;

  StockReader(Tables tables) {
    this.tables = tables;
  }

  List<OtherStock> list(Fields farm) {
    return farm.sections("other_stock", "'- name: wethers'").stream()
        .flatMap(stock -> stock.make(() -> read(stock)).stream())
        .toList();
  }

  private OtherStock read(Fields stock) {
    String name = stock.text("name");
    Optional<DryStock> kind =
        stock
            .findName("kind", "a class of stock in the tables", tables.dryStock().keySet())
            .map(tables.dryStock()::get);
    Optional<Assumption> dse =
        stock
            .findRange("dse_per_head", 0, 40)
            .map(own -> Assumption.ofFarm("dry sheep equivalents, " + name, own, "DSE/head"))
            .or(() -> kind.map(DryStock::dsePerHead));
    if (stock.has("kind") == stock.has("dse_per_head")) {
      stock.fault("kind", "must be given, or dse_per_head in its place, but not both");
    }
    return new OtherStock(
        name,
        stock.whole("head", 0, 1_000_000),
        dse.orElse(null),
        riskyDays(stock, name, kind),
        months(stock),
        stock.findYesNo("may_move").orElse(true));
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
    Month from = stock.findMonth("from").orElse(Month.JANUARY);
    Month to = stock.findMonth("to").orElse(Month.DECEMBER);
    List<Month> listed = stock.months("months");
    if (stock.has("from") != stock.has("to") || stock.has("from") && stock.has("months")) {
      stock.fault("from", "must come with 'to', and without 'months'");
    }
    int count = Math.floorMod(to.getValue() - from.getValue(), 12) + 1;
    return listed.isEmpty()
        ? Stream.iterate(from, month -> month.plus(1)).limit(count).sorted().toList()
        : listed;
  }
}
