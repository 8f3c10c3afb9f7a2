package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.DatePoint;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.GroupMoves;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.Rating;
import swardcase.report.JoiningReport.YoungRow;
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
    lines.addAll(TerminalView.wrap(report.headline(), width));
    for (MobCalendar mob : report.mobs()) {
      lines.add("");
      lines.addAll(calendar(report, mob, width));
    }
    lines.add("");
    lines.addAll(
        TerminalView.wrap(
            "days: so many in that half-month. keep off: none. \u2013: does not matter for this"
                + " mob. ?: nobody knows the clover, so it is rated as"
                + " risky until its leaf is tested. Sure: lowest and highest chance, in per cent,"
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
    lines.addAll(TerminalView.wrap(report.safeFeed().statement(), width));
    report.safeFeed().waysOut().forEach(way -> lines.addAll(TerminalView.wrap("- " + way, width)));
    lines.addAll(TerminalView.wrap(report.safeFeed().worthStatement(), width));
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
    lines.add(mob.name() + ", " + Words.exact(mob.ewes()) + " ewes, " + mob.joining() + ":");
    TextTable withReasons = calendar(report, mob, true);
    if (withReasons.width() <= width) {
      lines.addAll(withReasons.lines(width));
      return lines;
    }
    lines.addAll(calendar(report, mob, false).lines(width));
    lines.add("");
    lines.add("Why");
    for (PaddockRow row : mob.paddocks()) {
      lines.addAll(TerminalView.wrap(row.paddock() + ": " + row.reason(), width));
    }
    return lines;
  }

  private static TextTable calendar(JoiningReport report, MobCalendar mob, boolean reasons) {
    List<String> headings = new ArrayList<>();
    headings.add(mob.name());
    for (HalfMonth half : report.halfMonths()) {
      headings.add(half.from());
    }
    headings.add("Sure %");
    if (reasons) {
      headings.add("Why");
    }
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (PaddockRow row : mob.paddocks()) {
      List<String> cells = new ArrayList<>();
      cells.add(row.paddock() + (row.unknown() ? " ?" : ""));
      row.cells().forEach(cell -> cells.add(cell.label()));
      cells.add(isToBeTested(row) ? "test first" : sure(row.cells()));
      if (reasons) {
        cells.add(row.reason());
      }
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  /** Whether a rating of the row rests on clover that nobody knows. */
  private static boolean isToBeTested(PaddockRow row) {
    return row.unknown()
        && row.cells().stream()
            .anyMatch(cell -> cell.rating() == Rating.LIMITED || cell.rating() == Rating.KEEP_OFF);
  }

  /** Lowest and highest chance of a row. */
  private static String sure(List<Cell> cells) {
    var chances =
        cells.stream()
            .filter(cell -> cell.rating() != Rating.NOT_RATED)
            .mapToDouble(Cell::chanceRight)
            .summaryStatistics();
    String low = Words.whole(chances.getMin());
    String high = Words.whole(chances.getMax());
    return low.equals(high) ? low : low + " to " + high;
  }

  private static List<String> young(JoiningReport report, int width) {
    TextTable table =
        TextTable.of(
            "Replacement ewe lambs, maidens", "Through the green season", "Barren per 100");
    for (YoungRow row : report.youngEwes()) {
      table.row(row.paddock(), row.label(), Words.count(row.barrenPercent()));
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
          policy.name(),
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
      List<String> cells = new ArrayList<>(List.of(half.from() + " to " + half.to()));
      for (GroupMoves group : report.moves()) {
        Move move = group.moves().get(k);
        cells.add(move.where() + feed(report, move));
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
    report.halfMonths().forEach(half -> headings.add(half.from()));
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (Gate gate : report.gates()) {
      List<String> cells = new ArrayList<>(List.of(gate.paddock()));
      gate.to().forEach(to -> cells.add(to));
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
    double most =
        report.dates().stream()
            .flatMap(date -> date.lost().stream())
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(0);
    List<String> headings = new ArrayList<>(List.of("Rams in"));
    report.mobs().forEach(mob -> headings.add(">" + mob.name()));
    headings.add("");
    TextTable table = TextTable.of(headings.toArray(String[]::new));
    for (DatePoint date : report.dates()) {
      List<String> cells = new ArrayList<>(List.of(date.date()));
      date.lost().forEach(lost -> cells.add(Words.rounded(lost, 1)));
      double worst = date.lost().stream().mapToDouble(Double::doubleValue).max().orElse(0);
      cells.add(most < 0.5 ? "" : "#".repeat((int) Math.round(BAR * worst / most)));
      table.row(cells.toArray(String[]::new));
    }
    lines.addAll(table.lines(width));
    lines.addAll(TerminalView.wrap(report.notModelled(), width));
    return lines;
  }
}
