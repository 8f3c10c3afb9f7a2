package swardcase.sheet;

import java.util.List;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.PlanYear;
import swardcase.wording.Words;

/** The money in hand year by year: a column a year, below the line while the plan is in debt. */
final class CashChart {

  static final double HEIGHT = 190;

  /** Lower than this it shows nothing. */
  static final double LEAST = 90;

  private final List<PlanYear> years;
  private final int lowest;
  private final double step;
  private final Lettering lettering;
  private final double left;
  private final double height;

  CashChart(PlanResult plan, double step, double height, Lettering lettering) {
    this.height = height;
    this.years = plan.years();
    this.lowest = plan.lowestYear() - years.get(0).year();
    this.step = step;
    this.lettering = lettering;
    this.left = Flow.LEFT + axis();
  }

  private Scale scale(double top) {
    double low = Math.min(0, years.stream().mapToDouble(PlanYear::cumulative).min().orElse(0));
    double high = Math.max(0, years.stream().mapToDouble(PlanYear::cumulative).max().orElse(1));
    return new Scale(low, high, top + height - 32, top + 16);
  }

  /** Room for the widest number beside the chart. */
  private double axis() {
    return 8
        + scale(0).ticks(5).stream()
            .mapToDouble(tick -> lettering.width(Words.exact(tick), Style.NOTE))
            .max()
            .orElse(0);
  }

  void paint(Canvas canvas, double top) {
    Scale scale = scale(top);
    for (double tick : scale.ticks(5)) {
      double y = scale.at(tick);
      canvas.line(left, y, Flow.RIGHT, y, 0.4, Tint.RULE);
      canvas.textTo(Words.exact(tick), left - 5, y + 2.6, Style.NOTE);
    }
    double column = (Flow.RIGHT - left) / years.size();
    double zero = scale.at(0);
    int every = (int) Math.ceil(26 / column);
    for (int i = 0; i < years.size(); i++) {
      double value = years.get(i).cumulative();
      double x = left + i * column + column * 0.2;
      double y = Math.min(zero, scale.at(value));
      double tall = Math.abs(scale.at(value) - zero);
      canvas.box(x, y, column * 0.6, tall, value < 0 ? Tint.OCHRE : Tint.DEEP);
      if (value < 0) {
        canvas.hatch(x, y, column * 0.6, tall, Tint.INK);
        canvas.frame(x, y, column * 0.6, tall, 0.5, Tint.INK);
      }
      if (i % every == 0) {
        canvas.textAround(
            Integer.toString(years.get(i).year()), x + column * 0.3, top + height - 6, Style.NOTE);
      }
    }
    canvas.line(left, zero, Flow.RIGHT, zero, 1, Tint.INK);
    label(canvas, scale, column, lowest);
    if (lowest != years.size() - 1) {
      label(canvas, scale, column, years.size() - 1);
    }
  }

  private void label(Canvas canvas, Scale scale, double column, int year) {
    double value = years.get(year).cumulative();
    String words = Words.rounded(value, step);
    double middle = left + (year + 0.5) * column;
    double y = scale.at(value) + (value < 0 ? 10 : -4);
    if (year == years.size() - 1) {
      canvas.textTo(words, Flow.RIGHT, y, Style.CELL_BOLD);
    } else {
      canvas.textAround(words, middle, y, Style.CELL_BOLD);
    }
  }
}
