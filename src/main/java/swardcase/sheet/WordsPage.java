package swardcase.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.Report;
import swardcase.wording.Texts;

/** What stands at the end: what is odd or missing, the cautions in full and the words used. */
final class WordsPage {

  /** The first so many words are those that a reader new to it needs. */
  private static final int NEEDED = 12;

  private static final double HEADINGS = 60;

  private final Flow flow;
  private final Report report;

  WordsPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void notices(boolean replaced) {
    List<String> notices = new ArrayList<>(report.notices());
    if (replaced) {
      notices.add(Texts.get("sure.replaced"));
    }
    if (!notices.isEmpty()) {
      flow.section(Texts.get("sure.notices"));
      flow.bullets(notices, Style.BODY);
    }
  }

  /** Gives their page. */
  int cautions() {
    double height = HEADINGS;
    for (String caution : report.cautions()) {
      height +=
          2.5
              + Style.BODY.leading()
                  * flow.lettering().wrap(caution, Style.BODY, Flow.WIDTH - 12).size();
    }
    flow.need(Math.min(height, Flow.BOTTOM - Flow.TOP));
    flow.section(Texts.get("cautions.heading"));
    int page = flow.page();
    flow.bullets(report.cautions(), Style.BODY);
    return page;
  }

  /** All words. */
  void words() {
    table(entries(Integer.MAX_VALUE));
  }

  /** The words that a new reader needs. */
  void neededWords() {
    table(entries(NEEDED));
  }

  private static String key(int number, String what) {
    return "glossary." + number + "." + what;
  }

  private static List<List<Cell>> entries(int most) {
    return IntStream.iterate(1, i -> i <= most && Texts.has(key(i, "term")), i -> i + 1)
        .boxed()
        .sorted(Comparator.comparing(i -> Texts.get(key(i, "term")), String.CASE_INSENSITIVE_ORDER))
        .map(
            i ->
                List.of(
                    Cell.of(Texts.get(key(i, "term")), Style.CELL_BOLD),
                    Cell.of(Texts.get(key(i, "text")))))
        .toList();
  }

  private void table(List<List<Cell>> entries) {
    flow.section(Texts.get("glossary.heading"));
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.term"), 130),
                Column.words(Texts.get("column.meaning"), Flow.WIDTH - 130)));
    table.head();
    entries.forEach(table::row);
    flow.gap(10);
  }
}
