package swardcase.sheet;

import java.util.List;
import java.util.stream.IntStream;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.RangeBar;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.HowSureReport;
import swardcase.report.HowSureReport.PaddockSure;
import swardcase.report.Report;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Where everything is kept: what the best change of each paddock would bring, around nothing. */
final class WeighedChart {

  private static final int MOST = 16;
  private static final double ROW = 18;
  private static final double FOOT = 18;
  private static final double LABELS = 110;

  private final List<PaddockSure> rows;
  private final long losing;
  private final Scale scale;
  private final Lettering lettering;

  WeighedChart(Report report, HowSureReport sure, Lettering lettering) {
    List<PaddockSure> all =
        IntStream.range(0, sure.paddocks().size())
            .mapToObj(sure.paddocks()::get)
            .filter(paddock -> paddock.option().isPresent())
            .toList();
    rows = all.subList(0, Math.min(MOST, all.size()));
    losing = all.stream().filter(paddock -> paddock.gain().mean() < 0).count();
    scale = Scale.over(rows.stream().map(PaddockSure::gain), Flow.LEFT + LABELS, Flow.RIGHT - 20);
    this.lettering = lettering;
  }

  double height() {
    return rows.size() * ROW + FOOT;
  }

  String finding() {
    return Texts.get("weighed.alt", losing, rows.size());
  }

  void paint(Canvas canvas, double top) {
    double bottom = top + rows.size() * ROW;
    for (double tick : scale.ticks(6)) {
      canvas.line(scale.at(tick), top, scale.at(tick), bottom, 0.4, Tint.RULE);
      canvas.textAround(Words.exact(tick), scale.at(tick), bottom + 11, Style.NOTE);
    }
    canvas.line(scale.at(0), top, scale.at(0), bottom, 1, Tint.INK);
    for (int i = 0; i < rows.size(); i++) {
      double middle = top + (i + 0.5) * ROW;
      canvas.text(
          lettering.shorten(rows.get(i).name(), Style.CELL, LABELS - 8),
          Flow.LEFT,
          middle + 3,
          Style.CELL);
      RangeBar.draw(canvas, rows.get(i).gain(), scale, middle, 7);
    }
  }
}
