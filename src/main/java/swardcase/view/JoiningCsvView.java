package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Shut;
import swardcase.wording.JoiningWords;

/** What is shut to whom as one file for a spreadsheet: a row for each paddock that is shut. */
public final class JoiningCsvView {

  private JoiningCsvView() {}

  /** The text of the file. */
  public static String of(JoiningReport report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "paddock",
            "action",
            "shut_to",
            "when",
            "mob_that_loses_most",
            "lost_low_per_100",
            "lost_mean_per_100",
            "lost_high_per_100",
            "chance_percent",
            "reason"));
    report.shut().forEach(shut -> rows.add(cells(shut)));
    return CsvView.text(rows);
  }

  private static List<Object> cells(Shut shut) {
    return List.of(
        shut.paddock(),
        shut.action(),
        shut.shutTo(),
        JsonView.word(shut.when()),
        shut.mob().orElse(""),
        shut.lost().<Object>map(lost -> lost.low()).orElse(""),
        shut.lost().<Object>map(lost -> lost.mean()).orElse(""),
        shut.lost().<Object>map(lost -> lost.high()).orElse(""),
        shut.chancePercent().isPresent() ? shut.chancePercent().getAsDouble() : "",
        JoiningWords.reason(shut));
  }
}
