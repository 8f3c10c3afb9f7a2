package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.SamplingReport;
import swardcase.report.SamplingReport.PaddockCount;
import swardcase.wording.SamplingWords;
import swardcase.wording.Words;

/** What the count of each paddock says, for a terminal. */
public final class SamplingView {

  private SamplingView() {}

  /** A line a paddock, and what the numbers mean, for a terminal of so many columns. */
  public static List<String> of(SamplingReport report, int width) {
    TextTable table =
        TextTable.of(
            "Paddock",
            ">Plants so far",
            ">Old cultivars %",
            ">High-oestrogen, % of feed",
            SamplingWords.question(report),
            ">Wrong in 100",
            ">Look at more");
    for (PaddockCount count : report.paddocks()) {
      table.row(
          count.paddock(),
          Words.whole(count.plants()),
          SamplingWords.share(count.oldPercent()),
          SamplingWords.share(count.highOestrogenPercent()),
          SamplingWords.call(count),
          SamplingWords.wrong(count),
          SamplingWords.more(count));
    }
    List<String> lines = new ArrayList<>();
    lines.add(report.farm());
    lines.add("");
    lines.addAll(table.lines(width));
    lines.add("");
    SamplingWords.leafTests(report).forEach(test -> lines.addAll(TerminalView.wrap(test, width)));
    SamplingWords.notes(report).forEach(note -> lines.addAll(TerminalView.wrap(note, width)));
    return lines;
  }
}
