package swardcase.sheet;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.paper.Canvas;
import swardcase.paper.Lettering;
import swardcase.paper.RangeBar;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;

/** A lying picture: names with their numbers, below each a bar of its range, all on one scale. */
final class RowChart {

  private static final double ROW = 20;

  /** A row: what it is, the same as a number, and what its bar shows. */
  record Row(String name, String number, Drawn drawn) {}

  private final Lettering lettering;
  private final List<Row> rows;
  private final Scale scale;

  /** A picture as wide as its scale, an upright stroke at nothing in each row. */
  RowChart(Lettering lettering, List<Row> rows, Scale scale) {
    this.lettering = lettering;
    this.rows = rows;
    this.scale = scale;
  }

  double height() {
    return rows.size() * ROW + 4;
  }

  void paint(Canvas canvas, double top) {
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      double baseline = top + i * ROW + 9;
      double line = baseline + 8;
      double room = scale.to() - scale.from() - 8 - lettering.width(row.number(), Style.CELL);
      String name = lettering.shorten(row.name(), Style.CELL, room);
      canvas.text(name, scale.from(), baseline, Style.CELL);
      canvas.textTo(row.number(), scale.to(), baseline, Style.CELL);
      canvas.line(scale.from(), line, scale.to(), line, 0.5, Tint.RULE);
      if (scale.low() < 0 && scale.high() > 0) {
        canvas.line(scale.at(0), line - 5, scale.at(0), line + 5, 1, Tint.RULE);
      }
      RangeBar.draw(canvas, row.drawn(), scale, line, 5);
    }
  }
}
