package swardcase.sheet;

import java.util.Optional;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
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

  private static final Style PINNED = Style.LARGE;
  private static final Style PINNED_BOLD = Style.LARGE_BOLD;

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

  /** Draws both pages of a sheet of its own. */
  void draw(String title) {
    flow.title(title, title);
    answer();
    boolean isShut = !report.shut().isEmpty();
    boolean isRoom = !isShut || flow.room() >= ROOM_FOR_CAUTIONS;
    if (isRoom) {
      cautions();
    }
    if (isShut) {
      map();
      flow.newPage();
      shut();
    }
    young();
    if (!isRoom) {
      cautions();
    }
  }

  /** The same as a section of a case, which has cautions of its own. */
  void drawWithin() {
    answer();
    if (!report.shut().isEmpty()) {
      shut();
    }
    young();
  }

  private void answer() {
    flow.section(Texts.get("joining.heading"));
    flow.paragraph(String.join(" ", JoiningWords.answer(report)), PINNED_BOLD);
    if (!report.shut().isEmpty()) {
      mobs();
      seasons();
    }
  }

  private void mobs() {
    for (MobRow mob : report.mobs()) {
      flow.part(JoiningWords.who(mob) + ", " + JoiningWords.joining(mob));
      flow.paragraph(Texts.get("joining.off", String.join("; ", JoiningWords.off(mob))), PINNED);
      Table table =
          new Table(
              flow,
              Column.words("", 110).in(PINNED),
              Column.words("", Flow.WIDTH - 110).in(PINNED_BOLD));
      for (StayRow stay : mob.stays()) {
        table.row(JoiningWords.when(stay), JoiningWords.where(stay, report));
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
            Column.words(Texts.get("joining.break.column"), 42).in(PINNED_BOLD),
            Column.numbers(Texts.get("joining.break.years"), 50).in(PINNED),
            Column.words(Texts.get("joining.break.do"), 220).in(PINNED_BOLD),
            Column.words(Texts.get("joining.break.lost"), 195).in(PINNED));
    for (SeasonRow season : report.seasons()) {
      table.row(
          Texts.of("joining.break", season.comes()),
          Words.rounded(10 * season.chance(), 0.1),
          JoiningWords.out(season),
          JoiningWords.lost(season));
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
    double room = flow.room() - 4;
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
            Column.names(Texts.get("column.paddock"), 82),
            Column.words(Texts.get("joining.column.shutTo"), 118),
            Column.words(Texts.get("joining.column.why"), 140),
            Column.words(Texts.get("joining.column.lost"), 112),
            Column.words(JoiningWords.sureHeading(report), 55));
    for (Shut shut : report.shut().stream().limit(MOST_ROWS).toList()) {
      table.row(
          shut.paddock(),
          JoiningWords.shutTo(shut),
          JoiningWords.reason(shut),
          JoiningWords.lost(shut),
          JoiningWords.sure(shut));
    }
    flow.gap(4);
    int more = report.shut().size() - MOST_ROWS;
    if (more > 0) {
      flow.paragraph(Texts.get("joining.behind.more", more), Style.BODY);
    }
    flow.paragraph(
        Texts.get("joining.behind.note", Words.exact(report.answer().tellable())), Style.NOTE);
  }

  private void young() {
    if (!report.youngEwes().isEmpty()) {
      flow.part(Texts.get("joining.young"));
      flow.paragraph(JoiningWords.young(report), Style.BODY);
    }
  }
}
