package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.KnownClover;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.FindOutWords;
import swardcase.wording.LeafTestWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** What the count of each paddock says, and how many more plants are worth looking at. */
public final class SamplingView {

  private SamplingView() {}

  /** A line a paddock, and what the numbers mean, for a terminal of so many columns. */
  public static List<String> of(Report report, int width) {
    FindOutWords words = new FindOutWords(report);
    TextTable table =
        TextTable.of(
            "Paddock",
            ">Plants so far",
            ">Old cultivars %",
            ">High-oestrogen, % of feed",
            "Call: above " + riskShare(report) + "?",
            ">Wrong in 100",
            ">Look at more");
    List<String> notes = new ArrayList<>();
    for (PaddockResult paddock : report.paddocks()) {
      KnownClover clover = paddock.clover();
      table.row(
          paddock.name(),
          Words.whole(clover.plantsLookedAt()),
          clover.oldShare().map(share -> Words.range(share.times(100))).orElse("?"),
          clover
              .highOestrogenShareOfSward()
              .map(share -> Words.range(share.times(100)))
              .orElse("?"),
          FindOutWords.call(clover),
          FindOutWords.wrong(clover),
          words.plants(paddock.name()));
      LeafTestWords.of(paddock).ifPresent(notes::add);
    }
    notes.addAll(words.tests());
    notes.add(Texts.get("sampling.note", riskShare(report)));
    return new TerminalLines(width)
        .heading(report.farm().name())
        .blank()
        .table(table)
        .blank()
        .each("", notes)
        .all();
  }

  private static String riskShare(Report report) {
    return report.paddocks().stream()
        .map(paddock -> Words.percent(paddock.clover().riskShare()))
        .findFirst()
        .orElse(Texts.get("none"));
  }
}
