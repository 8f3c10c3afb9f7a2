package swardcase.sheet;

import java.util.List;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.Swing;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Which inputs move the answer: a bar for each, around the likely net present value. */
final class SwingChart {

  private static final double ROW = 24;
  private static final double LABELS = 178;
  private static final double HEAD = 16;

  private final List<Swing> swings;
  private final double likely;
  private final Lettering lettering;
  private final Scale scale;

  SwingChart(List<Swing> swings, double likely, Lettering lettering) {
    this.swings = swings;
    this.likely = likely;
    this.lettering = lettering;
    double low = ends().min(Double::compare).orElse(likely);
    double high = ends().max(Double::compare).orElse(likely);
    this.scale = new Scale(low, high, Flow.LEFT + LABELS + numbers(), Flow.RIGHT - numbers());
  }

  /** Room for the widest number beside a bar, and never less than half the likely value's. */
  private double numbers() {
    return 12
        + ends().mapToDouble(end -> lettering.width(Words.about(end), Style.CELL)).max().orElse(0);
  }

  private Stream<Double> ends() {
    return Stream.concat(
        Stream.of(likely),
        swings.stream().flatMap(swing -> Stream.of(swing.npvAtLow(), swing.npvAtHigh())));
  }

  double height() {
    return HEAD + swings.size() * ROW + 4;
  }

  void paint(Canvas canvas, double top) {
    double middle = scale.at(likely);
    double bottom = top + height();
    if (scale.low() < 0 && scale.high() > 0) {
      double zero = scale.at(0);
      canvas.line(zero, top + HEAD - 2, zero, bottom, 0.5, Tint.RULE);
      if (Math.abs(zero - middle) > 60) {
        canvas.textAround("0", zero, top + 9, Style.NOTE);
      }
    }
    canvas.line(middle, top + HEAD - 4, middle, bottom, 1, Tint.INK);
    String likelyWords = Texts.get("sure.likely", Words.about(likely));
    canvas.textAround(lettering.clean(likelyWords), middle, top + 9, Style.NOTE_BOLD);
    for (int i = 0; i < swings.size(); i++) {
      row(canvas, swings.get(i), top + HEAD + i * ROW);
    }
  }

  private void row(Canvas canvas, Swing swing, double top) {
    String name = lettering.shorten(swing.input(), Style.CELL_BOLD, LABELS - 8);
    canvas.text(name, Flow.LEFT, top + 9.5, Style.CELL_BOLD);
    String ends =
        Texts.get("sure.ends", Words.exact(swing.low()), Words.exact(swing.high()), unit(swing));
    canvas.text(lettering.shorten(ends, Style.NOTE, LABELS - 8), Flow.LEFT, top + 19.5, Style.NOTE);
    double y = top + 12;
    Range reach =
        Range.of(
            Math.min(swing.npvAtLow(), swing.npvAtHigh()),
            Math.min(swing.npvAtLow(), swing.npvAtHigh()),
            Math.max(swing.npvAtLow(), swing.npvAtHigh()));
    double from = scale.at(reach.low());
    double to = scale.at(reach.high());
    canvas.box(from, y - 4, Math.max(0.6, to - from), 8, Tint.OCHRE);
    canvas.frame(from, y - 4, Math.max(0.6, to - from), 8, 0.5, Tint.INK);
    canvas.diamond(scale.at(swing.npvAtLow()), y, 4, false);
    canvas.diamond(scale.at(swing.npvAtHigh()), y, 4, true);
    canvas.textTo(Words.about(reach.low()), from - 7, y + 2.8, Style.CELL);
    canvas.text(Words.about(reach.high()), to + 7, y + 2.8, Style.CELL);
  }

  private static String unit(Swing swing) {
    return swing.unit().equals("-") ? "" : swing.unit();
  }
}
