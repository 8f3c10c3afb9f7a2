package swardcase.view;

import java.util.List;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.MobRow;
import swardcase.report.JoiningReport.SeasonRow;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReport.StayRow;
import swardcase.wording.JoiningWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The joining plan for a terminal. */
public final class JoiningTerminalView {

  private JoiningTerminalView() {}

  /** The plan as lines for a terminal of so many columns. */
  public static List<String> of(JoiningReport report, int width) {
    TerminalLines lines =
        new TerminalLines(width)
            .heading(report.farm().name() + ", " + report.farm().date() + ": before joining")
            .blank()
            .text(String.join(" ", JoiningWords.answer(report)))
            .blank();
    if (!report.shut().isEmpty()) {
      report.mobs().forEach(mob -> mob(report, mob, lines));
      lines.text(Texts.get("joining.note")).each("", JoiningWords.others(report)).blank();
      JoiningWords.sameInAllSeasons(report)
          .ifPresentOrElse(lines::text, () -> lines.table(seasons(report)));
      lines
          .text(Texts.get("joining.break.rule"))
          .blank()
          .table(shut(report))
          .text(Texts.get("joining.behind.note", Words.exact(report.answer().tellable())))
          .blank();
    }
    if (!report.youngEwes().isEmpty()) {
      lines.text(JoiningWords.young(report)).blank();
    }
    return lines.each("- ", report.notices()).each("! ", report.cautions()).all();
  }

  private static void mob(JoiningReport report, MobRow mob, TerminalLines lines) {
    lines
        .text(JoiningWords.who(mob) + ", " + JoiningWords.joining(mob) + ":")
        .text("- " + Texts.get("joining.off", String.join("; ", JoiningWords.off(mob))));
    for (StayRow stay : mob.stays()) {
      lines.text("- " + JoiningWords.when(stay) + ": " + JoiningWords.where(stay, report));
    }
    lines.blank();
  }

  private static TextTable seasons(JoiningReport report) {
    TextTable table =
        TextTable.of(
            Texts.get("joining.break.column"),
            ">" + Texts.get("joining.break.years"),
            Texts.get("joining.break.do"),
            Texts.get("joining.break.lost"));
    for (SeasonRow season : report.seasons()) {
      table.row(
          Texts.of("joining.break", season.comes()),
          Words.rounded(10 * season.chance(), 0.1),
          JoiningWords.out(season),
          JoiningWords.lost(season));
    }
    return table;
  }

  private static TextTable shut(JoiningReport report) {
    TextTable table =
        TextTable.of(
            Texts.get("column.paddock"),
            Texts.get("joining.column.shutTo"),
            Texts.get("joining.column.why"),
            Texts.get("joining.column.lost"),
            JoiningWords.sureHeading(report));
    for (Shut shut : report.shut()) {
      table.row(
          shut.paddock(),
          JoiningWords.shutTo(shut),
          JoiningWords.reason(shut),
          JoiningWords.lost(shut),
          JoiningWords.sure(shut));
    }
    return table;
  }
}
