package swardcase.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.BiFunction;
import swardcase.paper.Contents;
import swardcase.paper.Flow;
import swardcase.paper.RunningHead;
import swardcase.paper.TaggedFile;
import swardcase.report.Report;

/** Lays a document out until its page numbers are those it was laid out with. */
final class Passes {

  /**
   * A trial finds the page numbers, the first pass uses them, and the second shows a note that only
   * the first could call for.
   */
  private static final int MOST = 3;

  private Passes() {}

  /**
   * Where things were found.
   *
   * @param firstCardPage page of the first paddock card
   * @param cautionsPage page of the full cautions
   */
  record Marks(int firstCardPage, int cautionsPage) {}

  /**
   * Writes a document; the stream stays open.
   *
   * @param mark stands below every page beside the program's name
   */
  static void write(
      String title,
      Report report,
      String mark,
      OutputStream out,
      BiFunction<Flow, Contents, Marks> pages)
      throws IOException {
    Contents expected = Contents.UNKNOWN;
    for (int pass = 1; ; pass++) {
      try (TaggedFile file = new TaggedFile(title, report.program(), report.farm().date())) {
        if (pass == 1) {
          expected = layOut(report, mark, expected, file.trial(), pages);
        }
        Contents found = layOut(report, mark, expected, file, pages);
        if (found.isAsIn(expected) || pass == MOST) {
          file.save(out);
          return;
        }
        expected = found;
      }
    }
  }

  private static Contents layOut(
      Report report,
      String mark,
      Contents contents,
      TaggedFile file,
      BiFunction<Flow, Contents, Marks> pages) {
    Flow flow =
        new Flow(
            file,
            new RunningHead(
                report.program(),
                report.farm().name(),
                report.farm().date(),
                contents.pages(),
                mark));
    Marks marks = pages.apply(flow, contents);
    flow.end();
    return new Contents(
        file.pageCount(),
        marks.firstCardPage(),
        marks.cautionsPage(),
        file.lettering().hasReplaced());
  }
}
