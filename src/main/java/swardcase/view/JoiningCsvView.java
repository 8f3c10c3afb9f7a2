package swardcase.view;

import swardcase.chance.Drawn;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Shut;
import swardcase.wording.JoiningWords;

/** What is shut to whom as one file for a spreadsheet: a row for each paddock that is shut. */
public final class JoiningCsvView {

  private JoiningCsvView() {}

  /** The text of the file. */
  public static String of(JoiningReport report) {
    return new CsvTable<Shut>()
        .column("paddock", Shut::paddock)
        .column("action", Shut::action)
        .column("shut_to", Shut::shutTo)
        .column("when", Shut::when)
        .column("mob_that_loses_most", Shut::mob)
        .column("lost_low_per_100", shut -> shut.lost().map(Drawn::low))
        .column("lost_mean_per_100", shut -> shut.lost().map(Drawn::mean))
        .column("lost_high_per_100", shut -> shut.lost().map(Drawn::high))
        .column("chance_percent", Shut::chancePercent)
        .column("reason", JoiningWords::reason)
        .text(report.shut());
  }
}
