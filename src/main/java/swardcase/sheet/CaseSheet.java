package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import swardcase.paper.Flow;
import swardcase.paper.RunningHead;
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
    MoneyFaces faces = new MoneyFaces(report);
    Flow.write(
        Texts.get("case.title", report.farm().name()),
        new RunningHead(
            report.program(),
            report.farm().name(),
            report.farm().date(),
            Texts.get("case.mark", budget.fingerprint())),
        out,
        flow -> {
          new CasePage(flow, report, budget, head, faces).draw();
          new PaddockTable(flow, report, faces, of -> true).draw();
          SurePage sure = new SurePage(flow, report, faces);
          sure.draw();
          sure.drawFigures();
          report.howSure().ifPresent(of -> new OddsPage(flow, report, of, faces).draw());
          new FeedPage(flow, report).draw();
          new EwesPage(flow, report).draw();
          report.records().ifPresent(of -> new RecordsPage(flow, report, of).draw());
          joining.ifPresent(plan -> new JoiningPage(flow, plan, Optional.empty()).drawWithin());
          new PaddockCards(flow, report, faces).drawAll();
          new GroundsPage(flow, report).draw();
          new WordsPage(flow, report).draw(WordsPage.ALL);
        });
  }
}
