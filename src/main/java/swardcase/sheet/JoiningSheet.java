package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import swardcase.paper.Flow;
import swardcase.paper.RunningHead;
import swardcase.report.FarmMap;
import swardcase.report.JoiningReport;
import swardcase.wording.Texts;

/**
 * Writes a joining plan as a tagged A4 PDF, in the standards of {@link DecisionSheet}: the page to
 * pin up, and one behind it. The same report gives the same bytes.
 */
public final class JoiningSheet {

  private JoiningSheet() {}

  /** Writes the sheet; the stream stays open. */
  public static void write(JoiningReport report, Optional<FarmMap> map, OutputStream out)
      throws IOException {
    String title = Texts.get("joining.title", report.farm().name());
    Flow.write(
        title,
        new RunningHead(report.program(), report.farm().name(), report.farm().date(), ""),
        out,
        flow -> new JoiningPage(flow, report, map).draw(title));
  }
}
