package swardcase.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.CertaintyLine;
import swardcase.report.HowSureReport.FindOut;
import swardcase.report.HowSureReport.Mover;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.Report;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The odds in figures, for whoever has to defend them: by paddock, by input, by taste for risk. */
final class OddsPage {

  private static final double PADDOCK = 84;

  /** Room for a heading, the words under it and the first rows of a table. */
  private static final double HEAD_OF_TABLE = 90;

  private final Flow flow;
  private final HowSureReport sure;
  private final String currency;

  OddsPage(Flow flow, Report report, HowSureReport sure) {
    this.flow = flow;
    this.sure = sure;
    currency = report.farm().currency();
  }

  void draw() {
    flow.newPage();
    flow.section(Texts.get("odds.heading"));
    flow.paragraph(
        Texts.get(
            "odds.plan",
            money(sure.expectedRegret()),
            money(sure.expectedRegretOfKeeping()),
            money(sure.perfect())),
        Style.BODY);
    paddocks();
    purchases();
    breakEvens();
    movers();
    certainty();
  }

  private void paddocks() {
    part("odds.paddocks", Texts.get("odds.paddocks.note", currency));
    Table table =
        table(
            Column.words(Texts.get("column.paddock"), PADDOCK),
            Column.words(Texts.get("column.weighed"), 104),
            Column.numbers(Texts.get("column.odds.gain"), 108),
            Column.numbers(Texts.get("column.pays"), 41),
            Column.numbers(Texts.get("column.regretOfActing"), 53),
            Column.numbers(Texts.get("column.regretOfKeeping"), 53),
            Column.words(Texts.get("column.beats"), 64));
    for (int i = 0; i < sure.paddocks().size(); i++) {
      PaddockSure paddock = sure.paddocks().get(i);
      boolean weighed = !paddock.option().isBlank();
      table.row(
          List.of(
              name(i),
              text(paddock.option()),
              weighed ? Cell.inLine(paddock.gain()) : text(""),
              weighed ? Cell.of(Words.whole(100 * paddock.chanceItPays())) : text(""),
              weighed ? Cell.of(Words.about(paddock.regretOfActing())) : text(""),
              weighed ? Cell.of(Words.about(paddock.regretOfKeeping())) : text(""),
              text(paddock.betterThanKeeping())));
    }
    flow.gap(6);
  }

  /** A leaf test and more plants, for the paddocks where knowing more is worth anything. */
  private void purchases() {
    part(
        "odds.purchases",
        IntStream.range(0, sure.paddocks().size()).allMatch(i -> worthKnowing(i).isEmpty())
            ? Texts.get("odds.purchases.none")
            : Texts.get("odds.purchases.note", currency));
    Table table = null;
    for (int i = 0; i < sure.paddocks().size(); i++) {
      for (FindOut what : worthKnowing(i)) {
        if (table == null) {
          table =
              table(
                  Column.words(Texts.get("column.paddock"), PADDOCK),
                  Column.words(Texts.get("column.what"), 173),
                  Column.numbers(Texts.get("column.worth"), 60),
                  Column.numbers(Texts.get("column.price"), 60),
                  Column.words(Texts.get("column.advice"), 130));
        }
        table.row(
            List.of(
                name(i),
                Cell.of(what.what()),
                Cell.of(Words.about(what.value())),
                Cell.of(Words.about(price(what))),
                Cell.of(what.advice())));
      }
    }
    flow.gap(6);
  }

  /** The leaf test, and the count that is worth most beyond its price; neither if worth nothing. */
  private List<FindOut> worthKnowing(int paddock) {
    PaddockSure of = sure.paddocks().get(paddock);
    Stream<FindOut> bestCount =
        of.plants().stream()
            .max(Comparator.comparingDouble(what -> what.value() - price(what)))
            .stream();
    return Stream.concat(Stream.of(of.leafTest()), bestCount)
        .filter(what -> what.value() >= 1)
        .toList();
  }

  private static double price(FindOut what) {
    return what.price().orElse(0);
  }

  private void breakEvens() {
    if (sure.breakEvens().isEmpty() || keepsAll()) {
      return;
    }
    part("odds.breakEvens", Texts.get("odds.breakEvens.note"));
    Table table =
        table(
            Column.words(Texts.get("column.input"), 230),
            Column.words(Texts.get("column.gainOf"), PADDOCK),
            Column.words(Texts.get("column.breakEven"), 193));
    for (BreakEvenLine line : sure.breakEvens()) {
      table.row(
          List.of(
              Cell.of(line.input()),
              Cell.of(line.paddock().isBlank() ? Texts.get("odds.thePlan") : line.paddock()),
              Cell.of(line.words())));
    }
    flow.gap(6);
  }

  private void movers() {
    if (sure.movers().isEmpty()) {
      return;
    }
    part("odds.movers", Texts.get(keepsAll() ? "odds.movers.other" : "odds.movers.note"));
    Table table =
        table(
            Column.words(Texts.get("column.input"), 314),
            Column.numbers(Texts.get("column.varianceShare"), 100));
    for (Mover mover : sure.movers()) {
      table.row(List.of(Cell.of(mover.input()), Cell.of(Words.percent(mover.varianceShare()))));
    }
    flow.gap(6);
  }

  private void certainty() {
    if (sure.certainty().isEmpty()) {
      return;
    }
    part("odds.certainty", Texts.get("odds.certainty.note", currency));
    Table table =
        table(
            Column.numbers(Texts.get("column.tolerance"), 120),
            Column.numbers(Texts.get("column.certain"), 120));
    for (CertaintyLine line : sure.certainty()) {
      table.row(
          List.of(Cell.of(Words.about(line.tolerance())), Cell.of(Words.about(line.worth()))));
    }
  }

  private boolean keepsAll() {
    return sure.npv().low() == 0 && sure.npv().high() == 0;
  }

  private void part(String heading, String note) {
    flow.need(HEAD_OF_TABLE);
    flow.part(Texts.get(heading));
    flow.paragraph(note, Style.NOTE);
  }

  private Table table(Column... columns) {
    Table table = new Table(flow, List.of(columns));
    table.head();
    return table;
  }

  private Cell name(int i) {
    return Cell.of(
        Texts.get("decision.name", i + 1, sure.paddocks().get(i).name()), Style.CELL_BOLD);
  }

  private static Cell text(String text) {
    return Cell.of(text.isBlank() ? Texts.get("none") : text);
  }

  private String money(double value) {
    return Words.aboutMoney(currency, value);
  }
}
