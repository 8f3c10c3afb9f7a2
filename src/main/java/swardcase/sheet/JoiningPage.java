package swardcase.sheet;

import java.util.List;
import java.util.Optional;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.paper.Tint;
import swardcase.report.FarmMap;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.MobRow;
import swardcase.report.JoiningReport.SeasonRow;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReport.StayRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Before joining: a page to pin up in the shed, and one behind it that says why. Where nothing is
 * shut the page says so and shows no table. Stands alone or as a section of another sheet.
 */
final class JoiningPage {

  private static final Style PINNED = new Style(false, 10, Tint.INK);
  private static final Style PINNED_BOLD = PINNED.inBold();

  /** Rows of paddocks on the page behind; the rest is counted. */
  private static final int MOST_ROWS = 16;

  /** With less left of the front, cautions stand behind it. */
  private static final double ROOM_FOR_CAUTIONS = 125;

  private static final double LEAST_MAP = 130;
  private static final double MOST_MAP = 330;

  private final Flow flow;
  private final JoiningReport report;
  private final Optional<FarmMap> map;

  JoiningPage(Flow flow, JoiningReport report, Optional<FarmMap> map) {
    this.flow = flow;
    this.report = report;
    this.map = map;
  }

  /** Draws both pages; {@code title} heads a sheet of its own and is blank within another. */
  void draw(String title) {
    flow.newPage();
    if (!title.isBlank()) {
      flow.title(title, title);
    }
    flow.section(Texts.get("joining.heading"));
    flow.paragraph(String.join(" ", JoiningWords.answer(report)), PINNED_BOLD);
    if (report.shut().isEmpty()) {
      cautions();
      young();
      return;
    }
    mobs();
    seasons();
    boolean isFull = Flow.BOTTOM - flow.y() < ROOM_FOR_CAUTIONS;
    if (!isFull) {
      cautions();
      map();
    }
    flow.newPage();
    shut();
    young();
    if (isFull) {
      cautions();
    }
  }

  private void mobs() {
    for (MobRow mob : report.mobs()) {
      flow.part(JoiningWords.who(mob) + ", " + JoiningWords.joining(mob));
      flow.paragraph(Texts.get("joining.off", String.join("; ", JoiningWords.off(mob))), PINNED);
      Table table =
          new Table(flow, List.of(Column.words("", 110), Column.words("", Flow.WIDTH - 110)));
      table.start();
      for (StayRow stay : mob.stays()) {
        table.row(
            List.of(
                Cell.of(JoiningWords.when(stay), PINNED),
                Cell.of(JoiningWords.where(stay, report), PINNED_BOLD)));
      }
      flow.gap(4);
    }
    flow.paragraph(Texts.get("joining.note"), Style.BODY);
    JoiningWords.others(report).forEach(of -> flow.paragraph(of, Style.BODY));
  }

  private void seasons() {
    flow.part(Texts.get("joining.break"));
    Optional<String> same = JoiningWords.sameInAllSeasons(report);
    if (same.isPresent()) {
      flow.paragraph(same.get(), PINNED);
    } else {
      seasonsApart();
    }
    flow.paragraph(Texts.get("joining.break.rule"), Style.BODY);
  }

  private void seasonsApart() {
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("joining.break.column"), 42),
                Column.numbers(Texts.get("joining.break.years"), 50),
                Column.words(Texts.get("joining.break.do"), 130),
                Column.words(Texts.get("joining.break.feed"), 150),
                Column.words(Texts.get("joining.break.lost"), 135)));
    table.head();
    for (SeasonRow season : report.seasons()) {
      table.row(
          List.of(
              Cell.of(Texts.of("joining.break", season.comes()), PINNED_BOLD),
              Cell.of(Words.rounded(10 * season.chance(), 0.1), PINNED),
              Cell.of(JoiningWords.out(season), PINNED_BOLD),
              Cell.of(JoiningWords.feed(season)),
              Cell.of(JoiningWords.lost(season))));
    }
    flow.gap(4);
  }

  private void cautions() {
    flow.part(Texts.get("joining.before"));
    flow.bullets(report.cautions(), Style.BODY);
  }

  /** The map takes what is left of the page. */
  private void map() {
    flow.gap(8);
    double room = Flow.BOTTOM - flow.y() - 4;
    if (map.isEmpty() || room < LEAST_MAP) {
      return;
    }
    PaddockMap drawing = PaddockMap.ofJoining(map.get(), report, flow.lettering());
    double height = drawing.height(Flow.WIDTH, Math.min(MOST_MAP, room));
    if (height == 0) {
      return;
    }
    drawing.draw(flow, Flow.LEFT, Flow.WIDTH, height);
    flow.gap(height);
  }

  private void shut() {
    flow.section(Texts.get("joining.behind"));
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.paddock"), 82),
                Column.words(Texts.get("joining.column.shutTo"), 118),
                Column.words(Texts.get("joining.column.why"), 140),
                Column.words(Texts.get("joining.column.lost"), 112),
                Column.words(JoiningWords.sureHeading(report), 55)));
    table.head();
    report.shut().stream().limit(MOST_ROWS).forEach(shut -> row(table, shut));
    flow.gap(4);
    int more = report.shut().size() - MOST_ROWS;
    if (more > 0) {
      flow.paragraph(Texts.get("joining.behind.more", more), Style.BODY);
    }
    flow.paragraph(
        Texts.get("joining.behind.note", Words.exact(report.answer().tellable())), Style.NOTE);
  }

  private static void row(Table table, Shut shut) {
    table.row(
        List.of(
            Cell.of(shut.paddock(), Style.CELL_BOLD),
            Cell.of(JoiningWords.shutTo(shut)),
            Cell.of(JoiningWords.reason(shut)),
            Cell.of(JoiningWords.lost(shut)),
            Cell.of(JoiningWords.sure(shut))));
  }

  private void young() {
    if (!report.youngEwes().isEmpty()) {
      flow.part(Texts.get("joining.young"));
      flow.paragraph(JoiningWords.young(report), Style.BODY);
    }
  }
}
