package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.Rating;
import swardcase.wording.JoiningWords;

/** The calendar as one file for a spreadsheet: a row for each mob, paddock and half-month. */
public final class JoiningCsvView {

  private JoiningCsvView() {}

  /** The text of the file; half-months that do not matter for a mob are left out. */
  public static String of(JoiningReport report) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "mob",
            "paddock",
            "from",
            "to",
            "rating",
            "days_allowed",
            "days_in",
            "lost_low_per_100",
            "lost_mean_per_100",
            "lost_high_per_100",
            "chance_right_percent",
            "unknown_clover",
            "reason"));
    for (MobCalendar mob : report.mobs()) {
      for (PaddockRow row : mob.paddocks()) {
        for (int k = 0; k < row.cells().size(); k++) {
          Cell cell = row.cells().get(k);
          if (cell.rating() != Rating.NOT_RATED) {
            rows.add(cells(mob, row, report.halfMonths().get(k), cell));
          }
        }
      }
    }
    return CsvView.text(rows);
  }

  private static List<Object> cells(MobCalendar mob, PaddockRow row, HalfMonth half, Cell cell) {
    return List.of(
        mob.name(),
        row.paddock(),
        JoiningWords.day(half.from()),
        JoiningWords.day(half.to()),
        JoiningWords.rating(cell),
        cell.days(),
        cell.daysIn(),
        cell.lost().low(),
        cell.lost().mean(),
        cell.lost().high(),
        cell.chanceRight(),
        row.clover().isOestrogenKnown() ? "no" : "yes",
        JoiningWords.reason(row));
  }
}
