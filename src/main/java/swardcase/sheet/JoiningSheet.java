package swardcase.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import swardcase.report.JoiningReport;
import swardcase.report.Texts;

/**
 * Writes a joining plan as a tagged A4 PDF, in the standards of {@link DecisionSheet}: the page to
 * pin up, then its grounds. The same report gives the same bytes.
 */
public final class JoiningSheet {

  private JoiningSheet() {}

  /** Writes the sheet; the stream stays open. */
  public static void write(JoiningReport report, OutputStream out) throws IOException {
    int pages = layOut(report, Contents.UNKNOWN.pages(), new ByteArrayOutputStream());
    layOut(report, pages, out);
  }

  private static int layOut(JoiningReport report, int pages, OutputStream out) throws IOException {
    String title = Texts.get("joining.title", report.farm().name());
    try (TaggedFile file = new TaggedFile(title, report.program(), report.farm().date())) {
      Flow flow = new Flow(file, new RunningHead(report.program(), report.farm(), pages));
      new JoiningPage(flow, report).draw(title);
      flow.end();
      file.save(out);
      return file.pageCount();
    }
  }
}
