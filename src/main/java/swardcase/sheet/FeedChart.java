package swardcase.sheet;

import java.util.List;
import swardcase.paper.Canvas;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.FeedMonth;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** The feed budget month by month: what the ewes need, what they find and what is bought. */
final class FeedChart {

  static final double HEIGHT = 186;
  private static final double AXIS = 30;

  private static final double KEYS = 42;

  private final List<FeedMonth> months;
  private final Lettering lettering;
  private final double start;
  private final double end;
  private final double column;

  FeedChart(List<FeedMonth> months, double start, double width, Lettering lettering) {
    this.months = months;
    this.lettering = lettering;
    this.start = start;
    this.end = start + width;
    this.column = (width - AXIS) / months.size();
  }

  void paintBudget(Canvas canvas, double top) {
    Scale scale =
        frame(
            canvas,
            top,
            months.stream()
                .mapToDouble(
                    month ->
                        Math.max(
                            month.demandMjPerHa(), month.eatenMjPerHa() + month.boughtMjPerHa()))
                .max()
                .orElse(1));
    for (int i = 0; i < months.size(); i++) {
      FeedMonth month = months.get(i);
      double x = left(i) + column * 0.18;
      double width = column * 0.64;
      double eaten = scale.at(month.eatenMjPerHa());
      double all = scale.at(month.eatenMjPerHa() + month.boughtMjPerHa());
      canvas.box(x, eaten, width, scale.at(0) - eaten, Tint.DEEP);
      if (month.boughtMjPerHa() > 0) {
        canvas.box(x, all, width, eaten - all, Tint.OCHRE);
        canvas.hatch(x, all, width, eaten - all, Tint.INK);
        canvas.frame(x, all, width, eaten - all, 0.5, Tint.INK);
      }
      double need = scale.at(month.demandMjPerHa());
      canvas.line(left(i) + column * 0.06, need, left(i) + column * 0.94, need, 2, Tint.INK);
    }
    key(canvas, top, Texts.get("feed.key.demand"), Key.LINE);
    key(canvas, top + 12, Texts.get("feed.key.eaten"), Key.DEEP);
    key(canvas, top + 24, Texts.get("feed.key.bought"), Key.HATCHED);
  }

  void paintBought(Canvas canvas, double top) {
    Scale scale =
        frame(
            canvas,
            top,
            months.stream()
                .mapToDouble(
                    month -> Math.max(month.boughtMjPerHa(), month.boughtWithCurrentMjPerHa()))
                .max()
                .orElse(1));
    for (int i = 0; i < months.size(); i++) {
      FeedMonth month = months.get(i);
      double width = column * 0.34;
      double now = scale.at(month.boughtMjPerHa());
      double current = scale.at(month.boughtWithCurrentMjPerHa());
      double x = left(i) + column * 0.15;
      canvas.box(x, now, width, scale.at(0) - now, Tint.OCHRE);
      canvas.hatch(x, now, width, scale.at(0) - now, Tint.INK);
      canvas.frame(x, now, width, scale.at(0) - now, 0.5, Tint.INK);
      canvas.box(x + width, current, width, scale.at(0) - current, Tint.PAPER);
      canvas.frame(x + width, current, width, scale.at(0) - current, 0.8, Tint.INK);
    }
    key(canvas, top, Texts.get("feed.key.boughtNow"), Key.HATCHED);
    key(canvas, top + 12, Texts.get("feed.key.boughtCurrent"), Key.OPEN);
  }

  private double left(int month) {
    return start + AXIS + month * column;
  }

  private Scale frame(Canvas canvas, double top, double most) {
    double bottom = top + HEIGHT - 14;
    Scale scale = new Scale(0, Math.max(most, 1e-9), bottom, top + KEYS + 16);
    for (int i = 0; i < months.size(); i++) {
      if (months.get(i).winter()) {
        canvas.box(left(i), top + KEYS, column, bottom - top - KEYS, Tint.PALE);
      }
      canvas.textAround(
          lettering.shorten(Words.shortName(months.get(i).month()), Style.FINE, column),
          left(i) + column / 2,
          bottom + 10.5,
          Style.FINE);
    }
    nameWinter(canvas, top + KEYS + 8);
    for (double tick : scale.ticks(5)) {
      double y = scale.at(tick);
      canvas.line(start + AXIS, y, end, y, 0.4, Tint.RULE);
      canvas.textTo(Words.exact(tick), start + AXIS - 5, y + 2.6, Style.NOTE);
    }
    return scale;
  }

  private void nameWinter(Canvas canvas, double baseline) {
    for (int i = 0; i < months.size(); i++) {
      if (months.get(i).winter() && (i == 0 || !months.get(i - 1).winter())) {
        canvas.text(lettering.clean(Texts.get("feed.winter")), left(i) + 3, baseline, Style.NOTE);
      }
    }
  }

  private enum Key {
    LINE,
    DEEP,
    HATCHED,
    OPEN
  }

  private void key(Canvas canvas, double top, String words, Key key) {
    double x = start + AXIS;
    double y = top + 2;
    switch (key) {
      case LINE -> canvas.line(x, y + 4, x + 14, y + 4, 2, Tint.INK);
      case DEEP -> canvas.box(x, y, 14, 8, Tint.DEEP);
      case HATCHED -> {
        canvas.box(x, y, 14, 8, Tint.OCHRE);
        canvas.hatch(x, y, 14, 8, Tint.INK);
        canvas.frame(x, y, 14, 8, 0.5, Tint.INK);
      }
      case OPEN -> canvas.frame(x, y, 14, 8, 0.8, Tint.INK);
    }
    canvas.text(lettering.clean(words), x + 18, y + 7, Style.CELL);
  }
}
