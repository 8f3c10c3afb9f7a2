package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
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
    Passes.write(
        Texts.get("title", report.farm().name()),
        report,
        "",
        out,
        (flow, contents) -> {
          MoneyFaces faces = new MoneyFaces(report);
          new FirstPage(flow, report, faces, map, contents.cautionsPage()).draw();
          new SurePage(flow, report, faces).draw();
          int firstCardPage = new ShortCards(flow, report, faces).draw();
          new PaddockTable(flow, report, faces)
              .draw(i -> !SheetWords.hasCard(report, report.paddocks().get(i)));
          report.records().ifPresent(records -> new RecordsPage(flow, report, records).draw());
          WordsPage last = new WordsPage(flow, report);
          int cautionsPage = last.cautions();
          last.neededWords();
          last.notices(contents.replaced());
          return new Passes.Marks(firstCardPage, cautionsPage);
        });
  }
}
