package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import swardcase.paper.Contents;
import swardcase.paper.Flow;
import swardcase.paper.RunningHead;
import swardcase.paper.TaggedFile;
import swardcase.report.JoiningReport;
import swardcase.report.Report;
import swardcase.wording.Texts;

/**
 * Writes a report as a decision sheet: a tagged A4 PDF that keeps to PDF/UA-1 (ISO 14289-1) and
 * PDF/A-2a (ISO 19005-2). The same report gives the same bytes.
 */
public final class DecisionSheet {

  /**
   * A trial finds the page numbers, the first pass uses them, and the second shows a note that only
   * the first could call for.
   */
  private static final int MOST_PASSES = 3;

  private DecisionSheet() {}

  /** Writes the sheet, the joining plan within it if there is one; the stream stays open. */
  public static void write(Report report, Optional<JoiningReport> joining, OutputStream out)
      throws IOException {
    String title = Texts.get("title", report.farm().name());
    Contents expected = Contents.UNKNOWN;
    for (int pass = 1; ; pass++) {
      try (TaggedFile file = new TaggedFile(title, report.program(), report.farm().date())) {
        if (pass == 1) {
          expected = layOut(report, joining, expected, file.trial());
        }
        Contents found = layOut(report, joining, expected, file);
        if (found.isAsIn(expected) || pass == MOST_PASSES) {
          file.save(out);
          return;
        }
        expected = found;
      }
    }
  }

  private static Contents layOut(
      Report report, Optional<JoiningReport> joining, Contents contents, TaggedFile file) {
    Flow flow =
        new Flow(
            file,
            new RunningHead(
                report.program(), report.farm().name(), report.farm().date(), contents.pages()));
    new DecisionPage(flow, report, contents).draw();
    new HowSurePage(flow, report, contents).draw();
    report.howSure().ifPresent(sure -> new OddsPage(flow, report, sure).draw());
    new FeedPage(flow, report).draw();
    new YearsPage(flow, report).draw();
    new EwesPage(flow, report).draw();
    report.records().ifPresent(records -> new RecordsPage(flow, report, records).draw());
    joining.ifPresent(plan -> new JoiningPage(flow, plan).draw(""));
    int firstCardPage = new PaddockCards(flow, report).draw();
    int cautionsPage = new GroundsPage(flow, report).draw();
    flow.end();
    return new Contents(
        file.pageCount(), firstCardPage, cautionsPage, file.lettering().hasReplaced());
  }
}
