package swardcase.sheet;

import java.util.List;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.RangeBar;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.HowSureReport;
import swardcase.report.Report;
import swardcase.wording.MoneyFaces;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The chance that the plan brings at least so much, falling from 100 to 0, with its range below.
 */
final class SpreadChart {

  private static final double HEIGHT = 138;
  private static final double HEAD = 4;
  private static final double AXIS = 34;
  private static final double FOOT = 44;

  private SpreadChart() {}

  /** Draws it with the finding in words. */
  static void draw(Flow flow, Report report, HowSureReport sure, MoneyFaces faces) {
    flow.paragraph(Texts.get("sure.spread", report.farm().currency()), Style.NOTE);
    flow.figure(
        HEIGHT,
        Texts.get(
            "sure.spread.alt",
            Words.percent(sure.chanceItPays()),
            faces.moneyWithEnds(faces.gain(), report.plan().gain().drawn())),
        (canvas, top) -> paint(canvas, top, sure));
  }

  private static void paint(Canvas canvas, double top, HowSureReport sure) {
    List<Double> quantiles = sure.npvQuantiles();
    int last = quantiles.size() - 1;
    // The one in twenty at either end would squeeze what most draws bring.
    double low = Math.min(0, quantiles.get(1));
    double high = Math.max(0, quantiles.get(last - 1));
    Scale across = new Scale(low, high, Flow.LEFT + AXIS, Flow.RIGHT - 20);
    double bottom = top + HEIGHT - FOOT;
    Scale up = new Scale(0, 100, bottom, top + HEAD);
    for (int percent = 0; percent <= 100; percent += 25) {
      double y = up.at(percent);
      canvas.line(Flow.LEFT + AXIS, y, Flow.RIGHT - 20, y, 0.4, Tint.RULE);
      canvas.textTo(Integer.toString(percent), Flow.LEFT + AXIS - 5, y + 2.6, Style.NOTE);
    }
    canvas.line(across.at(0), top + HEAD, across.at(0), bottom, 0.8, Tint.INK);
    for (int k = 2; k < last; k++) {
      canvas.line(
          across.at(quantiles.get(k - 1)),
          up.at(100 - 100.0 * (k - 1) / last),
          across.at(quantiles.get(k)),
          up.at(100 - 100.0 * k / last),
          1.4,
          Tint.INK);
    }
    RangeBar.draw(canvas, sure.npv(), across, bottom + 12, 8);
    for (double tick : across.ticks(6)) {
      canvas.line(across.at(tick), bottom, across.at(tick), bottom + 3, 0.4, Tint.INK);
      canvas.textAround(Words.exact(tick), across.at(tick), bottom + 30, Style.NOTE);
    }
  }
}
