package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.Drawn;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Gate;
import swardcase.report.JoiningReport.GroupMoves;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.PolicyResult;
import swardcase.report.JoiningReport.YoungRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.SafeFeedWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Before joining: a page to pin up in the shed, the calendar of each mob, and what the plan rests
 * on. Stands alone or as a section of the decision sheet.
 */
final class JoiningPage {

  /** Half-months side by side on the page to pin up; more of them go into a second table. */
  private static final int MOST_ACROSS = 9;

  private static final double NAME_WIDTH = 60;
  private static final Style WHERE = Style.CELL_BOLD;
  private static final Style ON_DARK = new Style(true, 7.5, Tint.PAPER);

  private final Flow flow;
  private final JoiningReport report;

  JoiningPage(Flow flow, JoiningReport report) {
    this.flow = flow;
    this.report = report;
  }

  /** Draws all pages; {@code title} heads a sheet of its own and is blank within another. */
  void draw(String title) {
    flow.newPage();
    if (!title.isBlank()) {
      flow.title(title, title);
    }
    flow.section(Texts.get("joining.heading"));
    flow.paragraph(JoiningWords.answer(report), Style.BODY_BOLD);
    moves();
    flow.part(Texts.get("joining.before"));
    flow.bullets(report.cautions(), Style.BODY);
    flow.newPage();
    flow.section(Texts.get("joining.calendar"));
    flow.paragraph(Texts.get("joining.calendar.note"), Style.BODY);
    JoiningCalendarTable calendar = new JoiningCalendarTable(flow, report);
    report.mobs().forEach(calendar::draw);
    young();
    grounds();
  }

  private void moves() {
    int count = report.halfMonths().size();
    int tables = Math.max(1, (count + MOST_ACROSS - 1) / MOST_ACROSS);
    int across = (count + tables - 1) / tables;
    for (int from = 0; from < count; from += across) {
      int to = Math.min(count, from + across);
      Table table = table("joining.mob", from, to);
      for (GroupMoves group : report.moves()) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(group.group(), Style.CELL_BOLD));
        group.moves().subList(from, to).forEach(move -> cells.add(cell(move)));
        table.row(cells);
      }
      flow.gap(4);
    }
    flow.paragraph(Texts.get("joining.moves.note"), Style.NOTE);
    flow.part(Texts.get("joining.gates"));
    if (report.gates().isEmpty()) {
      flow.paragraph(Texts.get("joining.gates.none"), Style.BODY);
      return;
    }
    for (int from = 0; from < count; from += across) {
      int to = Math.min(count, from + across);
      Table table = table("column.paddock", from, to);
      for (Gate gate : report.gates()) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(gate.paddock(), Style.CELL_BOLD));
        gate.shutTo()
            .subList(from, to)
            .forEach(mobs -> cells.add(shut(JoiningWords.shutTo(mobs, report))));
        table.row(cells);
      }
      flow.gap(4);
    }
    flow.paragraph(Texts.get("joining.gates.note"), Style.NOTE);
  }

  private Table table(String first, int from, int to) {
    double width = (Flow.WIDTH - NAME_WIDTH) / (to - from);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words(Texts.get(first), NAME_WIDTH));
    for (HalfMonth half : report.halfMonths().subList(from, to)) {
      columns.add(
          Column.words(
              Texts.get("joining.from", JoiningWords.day(half.from()), JoiningWords.day(half.to())),
              width));
    }
    Table table = new Table(flow, columns, Flow.LEFT, 4);
    table.head();
    return table;
  }

  private static Cell shut(String who) {
    return who.isBlank()
        ? Cell.of(Texts.get("none"), Style.NOTE)
        : new Cell(List.of(new Cell.Piece(who, ON_DARK)), JoiningCalendarTable::fill);
  }

  private Cell cell(Move move) {
    List<Cell.Piece> pieces = new ArrayList<>();
    for (String stay : JoiningWords.where(move)) {
      pieces.add(new Cell.Piece(stay.replaceAll("(\\d) d", "$1\u00a0d"), WHERE));
    }
    if (move.feedTonnes() > 0) {
      String feed =
          Texts.get("joining.feed", Words.about(move.feedTonnes()), report.farm().supplement());
      pieces.add(new Cell.Piece(feed, Style.CELL));
    }
    return new Cell(pieces, null);
  }

  private void young() {
    flow.part(Texts.get("joining.young"));
    flow.paragraph(Texts.get("joining.young.note"), Style.BODY);
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.paddock"), 157),
                Column.words(Texts.get("joining.young.rating"), 200),
                Column.numbers(Texts.get("joining.young.barren"), 150)));
    table.head();
    for (YoungRow row : report.youngEwes()) {
      table.row(
          List.of(
              Cell.of(row.paddock(), Style.CELL_BOLD),
              Cell.of(JoiningWords.young(row)),
              Cell.of(Words.count(row.barrenPercent()))));
    }
    flow.gap(4);
  }

  private void grounds() {
    flow.gap(8);
    flow.section(Texts.get("joining.compared"));
    policies();
    flow.paragraph(Texts.get("joining.compared.note"), Style.NOTE);
    flow.part(Texts.get("joining.safe"));
    SafeFeedWords safeFeed = new SafeFeedWords(report);
    flow.paragraph(safeFeed.statement(), Style.BODY);
    flow.bullets(safeFeed.waysOut(), Style.BODY);
    flow.paragraph(safeFeed.worth(), Style.BODY);
    flow.need(JoiningDatesChart.HEIGHT + 40);
    flow.part(Texts.get("joining.dates"));
    JoiningDatesChart chart = new JoiningDatesChart(report, flow.lettering());
    flow.figure(JoiningDatesChart.HEIGHT, chart.alternative(), chart::paint);
    flow.paragraph(JoiningWords.notModelled(), Style.NOTE);
  }

  private void policies() {
    String currency = report.farm().currency();
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("joining.policy"), 97),
                Column.numbers(Texts.get("joining.lambs"), 80),
                Column.numbers(Texts.get("joining.worth", currency), 110),
                Column.numbers(Texts.get("joining.bought", report.farm().supplement()), 100),
                Column.numbers(Texts.get("joining.saved", currency), 120)));
    table.head();
    for (PolicyResult policy : report.policies()) {
      table.row(
          List.of(
              Cell.of(JoiningWords.policy(policy.policy()), Style.CELL_BOLD),
              count(policy.lambs()),
              count(policy.lambMoney()),
              Cell.of(
                  Texts.get(
                      "joining.bought.value",
                      Words.about(policy.boughtTonnes()),
                      Words.aboutMoney(currency, policy.boughtMoney()))),
              policy.saved().isExact() ? Cell.of(Texts.get("none")) : Cell.of(policy.saved())));
    }
    flow.gap(4);
  }

  private static Cell count(Drawn drawn) {
    return drawn.high() < 1 ? Cell.of(Words.count(drawn)) : Cell.of(drawn);
  }
}
