package swardcase.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.Report;
import swardcase.wording.Texts;

/** What stands at the end: the cautions in full, the words used and what is odd or missing. */
final class WordsPage {

  /** The first so many words are those that a reader new to it needs. */
  static final int NEEDED = 12;

  static final int ALL = Integer.MAX_VALUE;

  private final Flow flow;
  private final Report report;

  WordsPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void draw(int mostWords) {
    flow.together(() -> list("cautions.heading", report.cautions()));
    words(mostWords);
    List<String> notices = new ArrayList<>(report.notices());
    if (flow.lettering().hasReplaced()) {
      notices.add(Texts.get("sure.replaced"));
    }
    if (!notices.isEmpty()) {
      list("sure.notices", notices);
    }
  }

  private void list(String heading, List<String> items) {
    flow.section(Texts.get(heading));
    flow.bullets(items, Style.BODY);
  }

  private static String key(int number, String what) {
    return "glossary." + number + "." + what;
  }

  private void words(int most) {
    flow.section(Texts.get("glossary.heading"));
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.term"), 130),
            Column.words(Texts.get("column.meaning"), Flow.WIDTH - 130));
    IntStream.iterate(1, i -> i <= most && Texts.has(key(i, "term")), i -> i + 1)
        .boxed()
        .sorted(Comparator.comparing(i -> Texts.get(key(i, "term")), String.CASE_INSENSITIVE_ORDER))
        .forEach(i -> table.row(Texts.get(key(i, "term")), Texts.get(key(i, "text"))));
    flow.gap(10);
  }
}
