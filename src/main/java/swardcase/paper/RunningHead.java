package swardcase.paper;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import swardcase.wording.Texts;

/**
 * What stands above and below every page.
 *
 * @param program name and version of the program
 * @param farm the farm's facts
 * @param pages how many pages there are; 0 while they are still being counted
 */
public record RunningHead(String program, String farm, LocalDate date, int pages) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  void draw(Canvas canvas, Lettering lettering, int page) {
    String day = date.format(DAY);
    String number = lettering.clean(Texts.get("foot.page", page, pages));
    String maker = lettering.shorten(program, Style.NOTE, 150);
    String name = lettering.shorten(farm, Style.NOTE_BOLD, 300);
    canvas.artifact(
        () -> {
          canvas.text(name, Flow.LEFT, 36, Style.NOTE_BOLD);
          canvas.textTo(day, Flow.RIGHT, 36, Style.NOTE);
          canvas.line(Flow.LEFT, 43, Flow.RIGHT, 43, 0.6, Tint.RULE);
          double foot = Canvas.HEIGHT - 30;
          canvas.line(Flow.LEFT, foot - 12, Flow.RIGHT, foot - 12, 0.6, Tint.RULE);
          canvas.text(maker, Flow.LEFT, foot, Style.NOTE);
          canvas.textAround(
              lettering.clean(Texts.get("foot.screening")), Canvas.WIDTH / 2, foot, Style.NOTE);
          canvas.textTo(number, Flow.RIGHT, foot, Style.NOTE);
        });
  }
}
