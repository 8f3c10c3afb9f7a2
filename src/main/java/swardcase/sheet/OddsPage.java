package swardcase.sheet;

import java.util.List;
import java.util.Optional;
import swardcase.chance.Certainty;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.FindOut;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.Mover;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.FindOutWords;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The odds in figures, for whoever has to defend them: by paddock, by input, by taste for risk. */
final class OddsPage {

  private static final double PADDOCK = 84;

  /** Room for a heading, the words under it and the first rows of a table. */
  private static final double HEAD_OF_TABLE = 90;

  private final Flow flow;
  private final Report report;
  private final HowSureReport sure;
  private final String currency;
  private final MoneyFaces faces;

  OddsPage(Flow flow, Report report, HowSureReport sure) {
    this.flow = flow;
    this.report = report;
    this.sure = sure;
    currency = report.farm().currency();
    faces = new MoneyFaces(report);
  }

  void draw() {
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
    String none = Texts.get("none");
    for (int i = 0; i < sure.paddocks().size(); i++) {
      PaddockSure paddock = sure.paddocks().get(i);
      Optional<PaddockResult.OptionResult> option =
          paddock.option().flatMap(report.paddocks().get(i)::option);
      boolean weighed = option.isPresent();
      table.row(
          List.of(
              name(i),
              Cell.of(option.map(PaddockResult.OptionResult::name).orElse(none)),
              weighed
                  ? Cell.of(
                      faces.withEnds(faces.option(i, option.get()), paddock.gain()), Style.FINE)
                  : Cell.of(none),
              weighed ? Cell.of(Words.whole(100 * paddock.chanceItPays())) : Cell.of(none),
              weighed ? Cell.of(Words.about(paddock.regretOfActing())) : Cell.of(none),
              weighed ? Cell.of(Words.about(paddock.regretOfKeeping())) : Cell.of(none),
              Cell.of(Texts.of("sure", paddock.betterThanKeeping()))));
    }
    flow.gap(6);
  }

  /** Walks, plants and leaf tests, where knowing more is worth anything. */
  private void purchases() {
    List<FindOut> tests =
        report.findOut().stream().filter(row -> row.isTest() && row.worth() >= 1).toList();
    part(
        "odds.purchases",
        tests.isEmpty()
            ? Texts.get("odds.purchases.none")
            : Texts.get("odds.purchases.note", currency));
    if (!tests.isEmpty()) {
      Table table =
          table(
              Column.words(Texts.get("column.what"), PADDOCK + 173),
              Column.numbers(Texts.get("column.worth"), 60),
              Column.numbers(Texts.get("column.price"), 60),
              Column.words(Texts.get("column.advice"), 130));
      for (FindOut row : tests) {
        table.row(
            List.of(
                Cell.of(Texts.capital(FindOutWords.what(row))),
                Cell.of(Words.about(row.worth())),
                Cell.of(Words.about(row.price().orElseThrow())),
                Cell.of(FindOutWords.advice(row))));
      }
    }
    flow.gap(6);
  }

  private void breakEvens() {
    if (sure.breakEvens().isEmpty() || report.plan().keepsAll()) {
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
              Cell.of(line.paddock().orElse(Texts.get("odds.thePlan"))),
              Cell.of(HowSureWords.breakEven(line))));
    }
    flow.gap(6);
  }

  private void movers() {
    if (sure.movers().isEmpty()) {
      return;
    }
    part(
        "odds.movers",
        Texts.get(report.plan().keepsAll() ? "odds.movers.other" : "odds.movers.note"));
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
    for (Certainty line : sure.certainty()) {
      table.row(
          List.of(Cell.of(Words.about(line.tolerance())), Cell.of(Words.about(line.worth()))));
    }
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
    return Cell.of(PaddockWords.numbered(i, sure.paddocks().get(i).name()), Style.CELL_BOLD);
  }

  private String money(double value) {
    return Words.aboutMoney(currency, value);
  }
}
