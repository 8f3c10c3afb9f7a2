package swardcase.sheet;

import java.util.List;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.wording.Words;

/** The ewes' dose of formononetin by month: an upright bar from low to high, a stroke at likely. */
final class DoseChart {

  static final double HEIGHT = 165;
  private static final double AXIS = 34;

  private final List<DoseMonth> months;
  private final Lettering lettering;

  DoseChart(List<DoseMonth> months, Lettering lettering) {
    this.months = months;
    this.lettering = lettering;
  }

  void paint(Canvas canvas, double top) {
    double most =
        months.stream()
            .mapToDouble(month -> month.formononetinPercentOfIntake().high())
            .max()
            .orElse(1);
    double bottom = top + HEIGHT - 18;
    Scale scale = new Scale(0, Math.max(most, 1e-9), bottom, top + 8);
    for (double tick : scale.ticks(5)) {
      double y = scale.at(tick);
      canvas.line(Flow.LEFT + AXIS, y, Flow.RIGHT, y, 0.4, Tint.RULE);
      canvas.textTo(Words.exact(tick), Flow.LEFT + AXIS - 5, y + 2.6, Style.NOTE);
    }
    double column = (Flow.WIDTH - AXIS) / months.size();
    for (int i = 0; i < months.size(); i++) {
      var dose = months.get(i).formononetinPercentOfIntake();
      double middle = Flow.LEFT + AXIS + (i + 0.5) * column;
      double half = Math.min(8, column * 0.25);
      double high = scale.at(dose.high());
      double height = Math.max(0.6, scale.at(dose.low()) - high);
      canvas.box(middle - half, high, 2 * half, height, Tint.OCHRE);
      canvas.frame(middle - half, high, 2 * half, height, 0.5, Tint.INK);
      double mean = scale.at(dose.mean());
      canvas.line(middle - half - 3, mean, middle + half + 3, mean, 1.8, Tint.INK);
      canvas.textAround(
          lettering.shorten(Words.shortName(months.get(i).month()), Style.CELL, column),
          middle,
          bottom + 11,
          Style.CELL);
    }
  }
}
