package swardcase.view;

import java.util.ArrayList;
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
    List<String> lines = new ArrayList<>();
    lines.add(report.farm().name() + ", " + report.farm().date() + ": before joining");
    lines.add("");
    lines.addAll(TerminalView.wrap(String.join(" ", JoiningWords.answer(report)), width));
    lines.add("");
    if (!report.shut().isEmpty()) {
      report.mobs().forEach(mob -> lines.addAll(mob(report, mob, width)));
      lines.addAll(TerminalView.wrap(Texts.get("joining.note"), width));
      JoiningWords.others(report).forEach(of -> lines.addAll(TerminalView.wrap(of, width)));
      lines.add("");
      lines.addAll(
          JoiningWords.sameInAllSeasons(report)
              .map(same -> TerminalView.wrap(same, width))
              .orElseGet(() -> seasons(report).lines(width)));
      lines.addAll(TerminalView.wrap(Texts.get("joining.break.rule"), width));
      lines.add("");
      lines.addAll(shut(report).lines(width));
      lines.addAll(TerminalView.wrap(behind(report), width));
      lines.add("");
    }
    if (!report.youngEwes().isEmpty()) {
      lines.addAll(TerminalView.wrap(JoiningWords.young(report), width));
      lines.add("");
    }
    report.notices().forEach(note -> lines.addAll(TerminalView.wrap("- " + note, width)));
    report.cautions().forEach(caution -> lines.addAll(TerminalView.wrap("! " + caution, width)));
    return lines;
  }

  private static List<String> mob(JoiningReport report, MobRow mob, int width) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        TerminalView.wrap(JoiningWords.who(mob) + ", " + JoiningWords.joining(mob) + ":", width));
    lines.addAll(
        TerminalView.wrap(
            "- " + Texts.get("joining.off", String.join("; ", JoiningWords.off(mob))), width));
    for (StayRow stay : mob.stays()) {
      lines.addAll(
          TerminalView.wrap(
              "- " + JoiningWords.when(stay) + ": " + JoiningWords.where(stay, report), width));
    }
    lines.add("");
    return lines;
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

  private static String behind(JoiningReport report) {
    return Texts.get("joining.behind.note", Words.exact(report.answer().tellable()));
  }
}
