package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import swardcase.report.BudgetCase;
import swardcase.report.JoiningReport;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Texts;

/**
 * Writes a report as the case an adviser puts before a lender: everything the program knows, with
 * the years, the odds, every paddock and every number it rests on. In the standards of {@link
 * DecisionSheet}.
 */
public final class CaseSheet {

  private CaseSheet() {}

  /** Writes the case, the joining plan within it if there is one; the stream stays open. */
  public static void write(
      Report report,
      BudgetCase budget,
      CaseHead head,
      Optional<JoiningReport> joining,
      OutputStream out)
      throws IOException {
    Passes.write(
        Texts.get("case.title", report.farm().name()),
        report,
        Texts.get("case.mark", budget.fingerprint()),
        out,
        (flow, contents) -> {
          MoneyFaces faces = new MoneyFaces(report);
          new CasePage(flow, report, budget, head, faces).draw();
          new PaddockTable(flow, report, faces).draw(i -> true);
          new HowSurePage(flow, report, contents).draw();
          report.howSure().ifPresent(sure -> new OddsPage(flow, report, sure).draw());
          new FeedPage(flow, report).draw();
          new YearsPage(flow, report).draw();
          new EwesPage(flow, report).draw();
          report.records().ifPresent(records -> new RecordsPage(flow, report, records).draw());
          joining.ifPresent(plan -> new JoiningPage(flow, plan, Optional.empty()).draw(""));
          int firstCardPage = new PaddockCards(flow, report).draw();
          new GroundsPage(flow, report).draw();
          WordsPage last = new WordsPage(flow, report);
          last.words();
          int cautionsPage = last.cautions();
          return new Passes.Marks(firstCardPage, cautionsPage);
        });
  }
}
