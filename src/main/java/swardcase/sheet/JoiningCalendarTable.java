package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.paper.Canvas;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Cell;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.MobCalendar;
import swardcase.report.JoiningReport.PaddockRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The calendar of a mob: a row for each paddock, a column for each half-month. Words say the
 * rating; a dark ground repeats keep off, a framed hatch limits, paper open.
 */
final class JoiningCalendarTable {

  private static final double NAME_WIDTH = 78;
  private static final double WHY_WIDTH = 118;
  private static final int MOST_ACROSS = 10;
  private static final Style SMALL = new Style(false, 7, Tint.INK);
  private static final Style SMALL_BOLD = new Style(true, 7, Tint.INK);
  private static final Style ON_DARK = new Style(true, 7, Tint.PAPER);
  private static final Style CHANCE_ON_DARK = new Style(false, 6.5, Tint.PAPER);
  private static final Style CHANCE = new Style(false, 6.5, Tint.QUIET);

  private final Flow flow;
  private final JoiningReport report;

  JoiningCalendarTable(Flow flow, JoiningReport report) {
    this.flow = flow;
    this.report = report;
  }

  void draw(MobCalendar mob) {
    flow.part(
        Texts.get(
            "joining.calendar.mob",
            mob.name(),
            Words.exact(mob.ewes()),
            JoiningWords.joining(mob)));
    int first = firstRated(mob);
    int last = lastRated(mob);
    int count = last - first + 1;
    int tables = Math.max(1, (count + MOST_ACROSS - 1) / MOST_ACROSS);
    int across = (count + tables - 1) / tables;
    for (int from = first; from <= last; from += across) {
      draw(mob, from, Math.min(last + 1, from + across));
      flow.gap(6);
    }
  }

  /** Half-months before and after those that matter for the mob are left out. */
  private int firstRated(MobCalendar mob) {
    int first = 0;
    while (first < report.halfMonths().size() - 1 && !isRated(mob, first)) {
      first++;
    }
    return first;
  }

  private int lastRated(MobCalendar mob) {
    int last = report.halfMonths().size() - 1;
    while (last > 0 && !isRated(mob, last)) {
      last--;
    }
    return Math.max(last, firstRated(mob));
  }

  private static boolean isRated(MobCalendar mob, int halfMonth) {
    return mob.paddocks().stream()
        .anyMatch(row -> row.cells().get(halfMonth).rating() != JoiningReport.Rating.NOT_RATED);
  }

  private void draw(MobCalendar mob, int from, int to) {
    double width = (Flow.WIDTH - NAME_WIDTH - WHY_WIDTH) / (to - from);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words(Texts.get("column.paddock"), NAME_WIDTH));
    for (HalfMonth half : report.halfMonths().subList(from, to)) {
      columns.add(Column.words(JoiningWords.day(half.from()), width));
    }
    columns.add(Column.words(Texts.get("joining.why"), WHY_WIDTH));
    Table table = new Table(flow, columns);
    table.head();
    for (PaddockRow row : mob.paddocks()) {
      List<swardcase.paper.Cell> cells = new ArrayList<>();
      String mark =
          row.clover().isOestrogenKnown()
              ? row.paddock()
              : Texts.get("joining.unknown", row.paddock());
      cells.add(swardcase.paper.Cell.of(mark, SMALL_BOLD));
      for (Cell cell : row.cells().subList(from, to)) {
        cells.add(cell(cell, row));
      }
      cells.add(swardcase.paper.Cell.of(JoiningWords.reason(row), CHANCE));
      table.row(cells);
    }
  }

  private static swardcase.paper.Cell cell(Cell cell, PaddockRow row) {
    boolean dark = cell.rating() == JoiningReport.Rating.KEEP_OFF;
    String rating = JoiningWords.rating(cell);
    String chance = JoiningWords.sure(cell, row);
    Style words = dark ? ON_DARK : SMALL_BOLD;
    return switch (cell.rating()) {
      case NOT_RATED -> swardcase.paper.Cell.of(rating, CHANCE);
      case OPEN -> cell(rating, SMALL, chance, CHANCE, null);
      case LIMITED -> cell(rating, words, chance, CHANCE, JoiningCalendarTable::frame);
      case KEEP_OFF -> cell(rating, words, chance, CHANCE_ON_DARK, JoiningCalendarTable::fill);
    };
  }

  private static swardcase.paper.Cell cell(
      String label, Style style, String chance, Style small, swardcase.paper.Cell.Mark mark) {
    return new swardcase.paper.Cell(
        List.of(
            new swardcase.paper.Cell.Piece(label, style),
            new swardcase.paper.Cell.Piece(chance, small)),
        mark);
  }

  /** The dark ground of what is shut. */
  static void fill(Canvas canvas, double x, double top, double width, double height) {
    canvas.box(x - 3, top + 0.8, width + 6, height, Tint.INK);
  }

  private static void frame(Canvas canvas, double x, double top, double width, double height) {
    canvas.box(x - 3, top + 0.8, width + 6, height, Tint.PALE);
    canvas.frame(x - 3, top + 0.8, width + 6, height, 0.9, Tint.INK);
  }
}
