package swardcase.sheet;

import java.util.Optional;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.BreakEvenLine;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.PaddockResult.OptionResult;
import swardcase.report.Report;
import swardcase.wording.HowSureWords;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PaddockWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The odds in figures, for whoever has to defend them: by paddock, and where gain turns to loss.
 */
final class OddsPage {

  private final Flow flow;
  private final Report report;
  private final HowSureReport sure;
  private final MoneyFaces faces;

  OddsPage(Flow flow, Report report, HowSureReport sure, MoneyFaces faces) {
    this.flow = flow;
    this.report = report;
    this.sure = sure;
    this.faces = faces;
  }

  void draw() {
    flow.section(Texts.get("odds.heading"));
    flow.paragraph(
        Texts.get(
            "odds.plan",
            faces.about(sure.expectedRegret()),
            faces.about(sure.expectedRegretOfKeeping()),
            faces.about(sure.perfect())),
        Style.BODY);
    paddocks();
    if (!sure.breakEvens().isEmpty() && !report.plan().keepsAll()) {
      breakEvens();
    }
  }

  private void paddocks() {
    flow.part(Texts.get("odds.paddocks"));
    flow.paragraph(Texts.get("odds.paddocks.note", report.farm().currency()), Style.NOTE);
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.paddock"), 100),
            Column.words(Texts.get("column.weighed"), 136),
            Column.numbers(Texts.get("column.odds.gain"), 114),
            Column.numbers(Texts.get("column.pays"), 41),
            Column.numbers(Texts.get("column.regretOfActing"), 58),
            Column.numbers(Texts.get("column.regretOfKeeping"), 58));
    String none = Texts.get("none");
    for (int i = 0; i < sure.paddocks().size(); i++) {
      PaddockSure paddock = sure.paddocks().get(i);
      String name = PaddockWords.numbered(i, paddock.name());
      Optional<OptionResult> option = paddock.option().flatMap(report.paddocks().get(i)::option);
      if (option.isPresent()) {
        table.row(
            name,
            option.get().name(),
            faces.withEnds(faces.option(i, option.get()), paddock.gain()),
            Words.whole(100 * paddock.chanceItPays()),
            Words.about(paddock.regretOfActing()),
            Words.about(paddock.regretOfKeeping()));
      } else {
        table.row(name, none, none, none, none, none);
      }
    }
    flow.gap(6);
  }

  private void breakEvens() {
    flow.part(Texts.get("odds.breakEvens"));
    flow.paragraph(Texts.get("odds.breakEvens.note"), Style.NOTE);
    Table table =
        new Table(
            flow,
            Column.words(Texts.get("column.input"), 214),
            Column.words(Texts.get("column.gainOf"), 100),
            Column.words(Texts.get("column.breakEven"), 193));
    for (BreakEvenLine line : sure.breakEvens()) {
      table.row(
          line.input(),
          line.paddock().orElse(Texts.get("odds.thePlan")),
          HowSureWords.breakEven(line));
    }
    flow.gap(6);
  }
}
