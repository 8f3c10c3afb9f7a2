package swardcase.sheet;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import swardcase.report.Report;

/**
 * What stands above and below every page.
 *
 * @param report the sheet's report
 * @param pages how many pages there are; 0 while they are still being counted
 */
record RunningHead(Report report, int pages) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  void draw(Canvas canvas, Lettering lettering, int page) {
    String date = report.farm().date().format(DAY);
    String number = lettering.clean(Texts.get("foot.page", page, pages));
    String program = lettering.shorten(report.program(), Style.NOTE, 150);
    String farm = lettering.shorten(report.farm().name(), Style.NOTE_BOLD, 300);
    canvas.artifact(
        () -> {
          canvas.text(farm, Flow.LEFT, 36, Style.NOTE_BOLD);
          canvas.textTo(date, Flow.RIGHT, 36, Style.NOTE);
          canvas.line(Flow.LEFT, 43, Flow.RIGHT, 43, 0.6, Tint.RULE);
          double foot = Canvas.HEIGHT - 30;
          canvas.line(Flow.LEFT, foot - 12, Flow.RIGHT, foot - 12, 0.6, Tint.RULE);
          canvas.text(program, Flow.LEFT, foot, Style.NOTE);
          canvas.textAround(
              lettering.clean(Texts.get("foot.screening")), Canvas.WIDTH / 2, foot, Style.NOTE);
          canvas.textTo(number, Flow.RIGHT, foot, Style.NOTE);
        });
  }
}
