package swardcase.sheet;

import java.util.List;
import java.util.stream.Collectors;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.DatePoint;
import swardcase.wording.JoiningWords;
import swardcase.wording.Words;

/** Ewes in lamb lost by the day the rams go in: a column for each mob and date. */
final class JoiningDatesChart {

  static final double HEIGHT = 185;
  private static final double AXIS = 34;
  private static final double LEGEND = 16;

  /** Mobs that can be told apart in grey; further ones are left out of the picture. */
  private static final int MOST_MOBS = 3;

  private final JoiningReport report;
  private final Lettering lettering;

  JoiningDatesChart(JoiningReport report, Lettering lettering) {
    this.report = report;
    this.lettering = lettering;
  }

  /** The picture in words. */
  String alternative() {
    return report.dateEnds().stream().map(JoiningWords::dates).collect(Collectors.joining(" "));
  }

  void paint(Canvas canvas, double top) {
    List<DatePoint> dates = report.dates();
    int mobs = Math.min(MOST_MOBS, report.mobs().size());
    double most = dates.stream().mapToDouble(DatePoint::most).max().orElse(1);
    double bottom = top + HEIGHT - 18;
    Scale scale = new Scale(0, Math.max(most, 3), bottom, top + LEGEND + 8);
    for (double tick : scale.ticks(5)) {
      double y = scale.at(tick);
      canvas.line(Flow.LEFT + AXIS, y, Flow.RIGHT, y, 0.4, Tint.RULE);
      canvas.textTo(Words.exact(tick), Flow.LEFT + AXIS - 5, y + 2.6, Style.NOTE);
    }
    double column = (Flow.WIDTH - AXIS) / dates.size();
    double bar = column * 0.8 / mobs;
    for (int k = 0; k < dates.size(); k++) {
      double left = Flow.LEFT + AXIS + k * column + column * 0.1;
      for (int g = 0; g < mobs; g++) {
        double y = scale.at(dates.get(k).lost().get(g));
        bar(canvas, g, left + g * bar, y, bar, bottom - y);
      }
      if (k % 2 == 0) {
        canvas.textAround(
            lettering.clean(JoiningWords.day(dates.get(k).date())),
            left + column * 0.4,
            bottom + 11,
            Style.NOTE);
      }
    }
    canvas.line(Flow.LEFT + AXIS, bottom, Flow.RIGHT, bottom, 0.8, Tint.INK);
    legend(canvas, top, mobs);
  }

  private void legend(Canvas canvas, double top, int mobs) {
    double x = Flow.LEFT + AXIS;
    for (int g = 0; g < mobs; g++) {
      bar(canvas, g, x, top + 2, 10, 8);
      String name = lettering.shorten(report.mobs().get(g).name(), Style.NOTE, 120);
      canvas.text(name, x + 14, top + 9, Style.NOTE);
      x += 26 + lettering.width(name, Style.NOTE);
    }
  }

  private static void bar(Canvas canvas, int mob, double x, double y, double w, double h) {
    if (h < 0.3) {
      return;
    }
    canvas.box(x, y, w, h, mob == 0 ? Tint.DEEP : mob == 1 ? Tint.OCHRE : Tint.PAPER);
    if (mob == 1) {
      canvas.hatch(x, y, w, h, Tint.INK);
    }
    canvas.frame(x, y, w, h, 0.5, Tint.INK);
  }
}
