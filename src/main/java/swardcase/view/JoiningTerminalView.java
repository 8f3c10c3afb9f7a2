package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.DatePoint;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.GroupMoves;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.SafeFeedWords;
import swardcase.wording.Words;

/** The joining plan for a terminal. */
public final class JoiningTerminalView {

  private static final int BAR = 40;

  private JoiningTerminalView() {}

  /** The plan as lines for a terminal of so many columns. */
  public static List<String> of(JoiningReport report, int width) {
    List<String> lines = new ArrayList<>();
    lines.add(report.farm().name() + ", " + report.farm().date() + ": before joining");
    lines.add("");
    lines.addAll(TerminalView.wrap(JoiningWords.answer(report), width));
    for (MobCalendar mob : report.mobs()) {
      lines.add("");
      lines.addAll(calendar(report, mob, width));
    }
    lines.add("");
    lines.addAll(
        TerminalView.wrap(
            "days: so many in that half-month. keep off: none. \u2013: does not matter for this"
                + " mob. ?: nobody knows the clover, so it is rated as"
                + " risky. Sure: lowest and highest chance, in per cent,"
                + " that a rating of the row is right.",
            width));
    lines.add("");
    lines.addAll(young(report, width));
    lines.add("");
    lines.addAll(policies(report, width));
    lines.add("");
    lines.addAll(moves(report, width));
    lines.add("");
    lines.addAll(gates(report, width));
    lines.add("");
    SafeFeedWords safeFeed = new SafeFeedWords(report);
    lines.addAll(TerminalView.wrap(safeFeed.statement(), width));
    safeFeed.waysOut().forEach(way -> lines.addAll(TerminalView.wrap("- " + way, width)));
    lines.addAll(TerminalView.wrap(safeFeed.worth(), width));
    lines.add("");
    lines.addAll(dates(report, width));
    lines.add("");
    report.notices().forEach(note -> lines.addAll(TerminalView.wrap("- " + note, width)));
    report.cautions().forEach(caution -> lines.addAll(TerminalView.wrap("! " + caution, width)));
    return lines;
  }

  /** Where the reasons have no room beside the half-months, they stand below them. */
  private static List<String> calendar(JoiningReport report, MobCalendar mob, int width) {
    List<String> lines = new ArrayList<>();
    lines.add(
        mob.name() + ", " + Words.exact(mob.ewes()) + " ewes, " + JoiningWords.joining(mob) + ":");
    TextTable withReasons = calendar(report, mob, true);
    if (withReasons.width() <= width) {
      lines.addAll(withReasons.lines(width));
      return lines;
    }
    lines.addAll(calendar(report, mob, false).lines(width));
    lines.add("");
    lines.add("Why");
    for (PaddockRow row : mob.paddocks()) {
      lines.addAll(TerminalView.wrap(row.paddock() + ": " + JoiningWords.reason(row), width));
    }
    return lines;
  }

  private static TextTable calendar(JoiningReport report, MobCalendar mob, boolean reasons) {
    List<String> headings = new ArrayList<>();
    headings.add(mob.name());
    for (HalfMonth half : report.halfMonths()) {
      headings.add(JoiningWords.day(half.from()));
    }
    headings.add("Sure %");
    if (reasons) {
      headings.add("Why");
    }
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (PaddockRow row : mob.paddocks()) {
      List<String> cells = new ArrayList<>();
      cells.add(row.paddock() + (row.clover().isOestrogenKnown() ? "" : " ?"));
      row.cells().forEach(cell -> cells.add(JoiningWords.rating(cell)));
      cells.add(row.onUnknown() ? "unknown" : sure(row));
      if (reasons) {
        cells.add(JoiningWords.reason(row));
      }
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  /** Lowest and highest chance of a row. */
  private static String sure(PaddockRow row) {
    String low = Words.whole(row.leastSure());
    String high = Words.whole(row.mostSure());
    return low.equals(high) ? low : low + " to " + high;
  }

  private static List<String> young(JoiningReport report, int width) {
    TextTable table =
        TextTable.of(
            "Replacement ewe lambs, maidens", "Through the green season", "Barren per 100");
    for (YoungRow row : report.youngEwes()) {
      table.row(row.paddock(), JoiningWords.young(row), Words.count(row.barrenPercent()));
    }
    return table.lines(width);
  }

  private static List<String> policies(JoiningReport report, int width) {
    String currency = report.farm().currency();
    TextTable table =
        TextTable.of(
            "Way of grazing",
            "Lambs not marked (range)",
            "Worth " + currency,
            ">Feed bought t",
            ">" + currency,
            "Gain on grazing as now");
    for (PolicyResult policy : report.policies()) {
      table.row(
          JoiningWords.policy(policy.policy()),
          Words.count(policy.lambs()),
          Words.count(policy.lambMoney()),
          Words.about(policy.boughtTonnes()),
          Words.about(policy.boughtMoney()),
          policy.saved().isExact() ? "" : Words.range(policy.saved()));
    }
    return table.lines(width);
  }

  private static List<String> moves(JoiningReport report, int width) {
    List<String> headings = new ArrayList<>(List.of("Where to be"));
    report.moves().forEach(group -> headings.add(group.group()));
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (int k = 0; k < report.halfMonths().size(); k++) {
      HalfMonth half = report.halfMonths().get(k);
      List<String> cells =
          new ArrayList<>(
              List.of(JoiningWords.day(half.from()) + " to " + JoiningWords.day(half.to())));
      for (GroupMoves group : report.moves()) {
        Move move = group.moves().get(k);
        cells.add(String.join(", ", JoiningWords.where(move)) + feed(report, move));
      }
      table.row(cells.toArray(String[]::new));
    }
    return table.lines(width);
  }

  private static List<String> gates(JoiningReport report, int width) {
    if (report.gates().isEmpty()) {
      return List.of("Gates to keep shut: none.");
    }
    List<String> headings = new ArrayList<>(List.of("Gates to keep shut to"));
    report.halfMonths().forEach(half -> headings.add(JoiningWords.day(half.from())));
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (Gate gate : report.gates()) {
      List<String> cells = new ArrayList<>(List.of(gate.paddock()));
      gate.shutTo().forEach(mobs -> cells.add(JoiningWords.shutTo(mobs, report)));
      table.row(cells.toArray(String[]::new));
    }
    return table.lines(width);
  }

  private static String feed(JoiningReport report, Move move) {
    return move.feedTonnes() > 0
        ? "; feed " + Words.about(move.feedTonnes()) + " t " + report.farm().supplement()
        : "";
  }

  private static List<String> dates(JoiningReport report, int width) {
    List<String> lines = new ArrayList<>();
    lines.add("Ewes in lamb lost per 100 joined, by the day the rams go in");
    double longest = report.dates().stream().mapToDouble(DatePoint::most).max().orElse(0);
    List<String> headings = new ArrayList<>(List.of("Rams in"));
    report.mobs().forEach(mob -> headings.add(">" + mob.name()));
    headings.add("");
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (DatePoint date : report.dates()) {
      List<String> cells = new ArrayList<>(List.of(JoiningWords.day(date.date())));
      date.lost().forEach(lost -> cells.add(Words.rounded(lost, 1)));
      cells.add(longest < 0.5 ? "" : "#".repeat((int) Math.round(BAR * date.most() / longest)));
      table.row(cells.toArray(String[]::new));
    }
    lines.addAll(table.lines(width));
    lines.addAll(TerminalView.wrap(JoiningWords.notModelled(), width));
    return lines;
  }
}
