package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import swardcase.paper.Flow;
import swardcase.paper.RunningHead;
import swardcase.report.FarmMap;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.SheetWords;
import swardcase.wording.Texts;

/**
 * Writes a report as the sheet a farmer reads: the decision on page 1, how sure it is on page 2,
 * then a card for each paddock where something is to be done or found out, one table of all, the
 * words used and the cautions. A tagged A4 PDF that keeps to PDF/UA-1 (ISO 14289-1) and PDF/A-2a
 * (ISO 19005-2). The same report gives the same bytes.
 */
public final class DecisionSheet {

  private DecisionSheet() {}

  /**
   * Writes the sheet; the stream stays open.
   *
   * @param map where the paddocks lie, drawn on page 1
   */
  public static void write(Report report, Optional<FarmMap> map, OutputStream out)
      throws IOException {
    MoneyFaces faces = new MoneyFaces(report);
    Flow.write(
        Texts.get("title", report.farm().name()),
        new RunningHead(report.program(), report.farm().name(), report.farm().date(), ""),
        out,
        flow -> {
          new FirstPage(flow, report, faces, map).draw();
          flow.newPage();
          new SurePage(flow, report, faces).draw();
          if (!report.plan().keepsAll()) {
            new MoneyPages(flow, report, faces).inShort();
          }
          new PaddockCards(flow, report, faces).drawShort();
          new PaddockTable(flow, report, faces, of -> SheetWords.hasCard(report, of)).draw();
          report.records().ifPresent(of -> new RecordsPage(flow, report, of).draw());
          new WordsPage(flow, report).draw(WordsPage.NEEDED);
        });
  }
}
