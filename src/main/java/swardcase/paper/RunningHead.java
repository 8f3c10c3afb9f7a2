package swardcase.paper;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import swardcase.wording.Texts;

/**
 * What stands above and below every page.
 *
 * @param program name and version of the program
 * @param farm the farm's name
 * @param mark what stands below the rest on every page; nothing if blank
 */
public record RunningHead(String program, String farm, LocalDate date, String mark) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  void draw(Canvas canvas, Lettering lettering, int page, int pages) {
    String number = lettering.clean(Texts.get("foot.page", page, pages));
    String maker = lettering.shorten(program, Style.RUNNING, 150);
    String name = lettering.shorten(farm, Style.RUNNING.inBold(), 300);
    canvas.artifact(
        () -> {
          canvas.text(name, Flow.LEFT, 36, Style.RUNNING.inBold());
          canvas.textTo(date.format(DAY), Flow.RIGHT, 36, Style.RUNNING);
          canvas.line(Flow.LEFT, 43, Flow.RIGHT, 43, 0.6, Tint.RULE);
          double foot = Canvas.HEIGHT - 30;
          canvas.line(Flow.LEFT, foot - 12, Flow.RIGHT, foot - 12, 0.6, Tint.RULE);
          canvas.text(maker, Flow.LEFT, foot, Style.RUNNING);
          canvas.textAround(
              lettering.clean(Texts.get("foot.screening")), Canvas.WIDTH / 2, foot, Style.RUNNING);
          canvas.textTo(number, Flow.RIGHT, foot, Style.RUNNING);
          canvas.text(lettering.clean(mark), Flow.LEFT, foot + 9, Style.NOTE);
        });
  }
}
