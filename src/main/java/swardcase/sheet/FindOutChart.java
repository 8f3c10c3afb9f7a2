package swardcase.sheet;

import java.util.List;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.FindOut;
import swardcase.wording.FindOutWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** What knowing is worth: a bar for each thing that could be found out, its price as a diamond. */
final class FindOutChart {

  private static final double ROW = 18;
  private static final double LABELS = 230;
  private static final double HEAD = 16;

  private final List<FindOut> items;
  private final String currency;
  private final Lettering lettering;

  FindOutChart(List<FindOut> items, String currency, Lettering lettering) {
    this.items = items;
    this.currency = currency;
    this.lettering = lettering;
  }

  double height() {
    return HEAD + items.size() * ROW + 4;
  }

  void paint(Canvas canvas, double top) {
    canvas.text(
        lettering.clean(Texts.get("sure.findOut", currency)), Flow.LEFT, top + 9, Style.NOTE);
    double most = 0;
    for (FindOut item : items) {
      most = Math.max(most, Math.max(item.worth(), item.price().orElse(0)));
    }
    Scale scale = new Scale(0, most, Flow.LEFT + LABELS, Flow.RIGHT - 56);
    for (int i = 0; i < items.size(); i++) {
      FindOut item = items.get(i);
      double y = top + HEAD + i * ROW + ROW / 2;
      String name = FindOutWords.what(item);
      Style fitting = lettering.fitting(name, Style.CELL, LABELS - 8, 1);
      canvas.text(lettering.clean(name), Flow.LEFT, y + 3, fitting);
      double to = scale.at(item.worth());
      double width = Math.max(0.6, to - scale.from());
      canvas.box(scale.from(), y - 4, width, 8, Tint.OCHRE);
      canvas.frame(scale.from(), y - 4, width, 8, 0.5, Tint.INK);
      canvas.text(Words.about(item.worth()), to + 7, y + 2.8, Style.CELL);
      item.price().ifPresent(price -> canvas.diamond(scale.at(price), y, 4, false));
    }
  }
}
