package swardcase.sheet;

import java.util.List;
import java.util.stream.Collectors;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.paper.Canvas;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.RangeBar;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.KnownClover.NamedShare;
import swardcase.report.PaddockResult;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** What the clover of a paddock consists of: a range bar for each name, from 0 to 100 %. */
final class CloverFigure {

  private static final double HEAD = 24;
  private static final double ROW = 20;

  private final List<NamedShare> clovers;
  private final int most;
  private final double plants;
  private final double width;
  private final Lettering lettering;

  /**
   * The figure of a paddock.
   *
   * @param most names that are shown, at most; the rest is counted
   */
  CloverFigure(PaddockResult paddock, int most, double width, Lettering lettering) {
    this.clovers = paddock.clover().found();
    this.plants = paddock.clover().plantsLookedAt();
    this.most = most;
    this.width = width;
    this.lettering = lettering;
  }

  double height() {
    int rows = Math.max(1, Math.min(most, clovers.size()));
    return HEAD + rows * ROW + (clovers.size() > most ? 12 : 0);
  }

  String alternative() {
    if (clovers.isEmpty()) {
      return Texts.get("clover.none");
    }
    return Texts.get(
        "clover.alt",
        clovers.stream()
            .map(clover -> clover.name() + " " + Words.percent(clover.share()))
            .collect(Collectors.joining("; ")));
  }

  private String heading() {
    return plants > 0
        ? Texts.get("clover.heading", Words.exact(plants))
        : Texts.get("clover.heading.none");
  }

  void paint(Canvas canvas, double top) {
    canvas.text(lettering.clean(heading()), Flow.LEFT, top + 10, Style.NOTE_BOLD);
    canvas.line(Flow.LEFT, top + 16, Flow.LEFT + width, top + 16, 0.5, Tint.INK);
    if (clovers.isEmpty()) {
      canvas.text(lettering.clean(Texts.get("clover.none")), Flow.LEFT, top + HEAD + 8, Style.CELL);
    }
    Scale scale = new Scale(0, 1, Flow.LEFT, Flow.LEFT + width - 4);
    int shown = Math.min(most, clovers.size());
    for (int i = 0; i < shown; i++) {
      row(canvas, clovers.get(i), scale, top + HEAD + i * ROW - 4);
    }
    if (clovers.size() > most) {
      String rest = Texts.get("clover.more", clovers.size() - most);
      canvas.text(lettering.clean(rest), Flow.LEFT, top + HEAD + shown * ROW + 5, Style.NOTE);
    }
  }

  private void row(Canvas canvas, NamedShare clover, Scale scale, double top) {
    String numbers = Words.percent(clover.share());
    double right = Flow.LEFT + width - 4;
    double room = width - 12 - lettering.width(numbers, Style.CELL);
    canvas.text(lettering.shorten(clover.name(), Style.CELL, room), Flow.LEFT, top + 9, Style.CELL);
    canvas.textTo(numbers, right, top + 9, Style.CELL);
    canvas.line(scale.from(), top + 17, scale.to(), top + 17, 0.5, Tint.RULE);
    Range share = clover.share();
    RangeBar.draw(canvas, Drawn.of(share.likely(), share.low(), share.high()), scale, top + 17, 5);
  }
}
