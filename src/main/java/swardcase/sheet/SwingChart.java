package swardcase.sheet;

import java.util.List;
import java.util.stream.Stream;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.Swing;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Which inputs move the answer: a bar for each, around the mean gain. */
final class SwingChart {

  private static final double ROW = 33;
  private static final double LABELS = 178;
  private static final double HEAD = 16;

  private final List<Swing> swings;
  private final MoneyFaces faces;
  private final double mean;
  private final Lettering lettering;
  private final Scale scale;

  SwingChart(List<Swing> swings, MoneyFaces faces, Lettering lettering) {
    this.faces = faces;
    mean = faces.gain();
    this.swings = swings;
    this.lettering = lettering;
    double low = ends().min(Double::compare).orElse(mean);
    double high = ends().max(Double::compare).orElse(mean);
    this.scale = new Scale(low, high, Flow.LEFT + LABELS + numbers(), Flow.RIGHT - numbers());
  }

  /** Room for the widest number beside a bar, and never less than half the mean's. */
  private double numbers() {
    return 12 + ends().mapToDouble(end -> lettering.width(number(end), Style.CELL)).max().orElse(0);
  }

  private Stream<Double> ends() {
    return Stream.concat(
        Stream.of(mean),
        swings.stream().flatMap(swing -> Stream.of(swing.gainAtLow(), swing.gainAtHigh())));
  }

  double height() {
    return HEAD + swings.size() * ROW + 4;
  }

  void paint(Canvas canvas, double top) {
    double middle = scale.at(mean);
    double bottom = top + height();
    if (scale.low() < 0 && scale.high() > 0) {
      double zero = scale.at(0);
      canvas.line(zero, top + HEAD - 2, zero, bottom, 0.5, Tint.RULE);
      if (Math.abs(zero - middle) > 60) {
        canvas.textAround("0", zero, top + 9, Style.NOTE);
      }
    }
    canvas.line(middle, top + HEAD - 4, middle, bottom, 1, Tint.INK);
    String meanWords = Texts.get("sure.likely", number(mean));
    canvas.textAround(lettering.clean(meanWords), middle, top + 9, Style.NOTE_BOLD);
    for (int i = 0; i < swings.size(); i++) {
      row(canvas, swings.get(i), top + HEAD + i * ROW);
    }
  }

  private void row(Canvas canvas, Swing swing, double top) {
    Style fitting = lettering.fitting(swing.input(), Style.CELL_BOLD, LABELS - 8, 2);
    double baseline = top + 9.5;
    for (String line : lettering.wrap(swing.input(), fitting, LABELS - 8)) {
      canvas.text(line, Flow.LEFT, baseline, fitting);
      baseline += fitting.leading();
    }
    String ends =
        Texts.get("sure.ends", Words.exact(swing.low()), Words.exact(swing.high()), unit(swing));
    canvas.text(lettering.clean(ends), Flow.LEFT, baseline, Style.NOTE);
    double y = top + 12;
    double low = Math.min(swing.gainAtLow(), swing.gainAtHigh());
    double high = Math.max(swing.gainAtLow(), swing.gainAtHigh());
    double from = scale.at(low);
    double to = scale.at(high);
    canvas.box(from, y - 4, Math.max(0.6, to - from), 8, Tint.OCHRE);
    canvas.frame(from, y - 4, Math.max(0.6, to - from), 8, 0.5, Tint.INK);
    canvas.diamond(scale.at(swing.gainAtLow()), y, 4, false);
    canvas.diamond(scale.at(swing.gainAtHigh()), y, 4, true);
    canvas.textTo(number(low), from - 7, y + 2.8, Style.CELL);
    canvas.text(number(high), to + 7, y + 2.8, Style.CELL);
  }

  private String number(double money) {
    return faces.number(faces.rounded(money));
  }

  private static String unit(Swing swing) {
    return swing.unit().equals("-") ? "" : swing.unit();
  }
}
