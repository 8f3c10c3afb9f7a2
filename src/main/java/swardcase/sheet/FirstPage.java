package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.paper.Fill;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.FarmMap;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.Chances;
import swardcase.wording.MoneyFaces;
import swardcase.wording.PlanWords;
import swardcase.wording.SheetWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * Page 1, all in ten points or more: the answer, what it costs and gains, what to do for nothing
 * and for money, what to find out first and what not to do, with a map beside them if there is one.
 * What room is left is shared out between its parts, or shows the paddocks where they are few.
 */
final class FirstPage {

  private static final double BOX_GAP = 9;
  private static final double MOST_GAP = 26;
  private static final int MOST_SENTENCES = 9;
  private static final double MAP_WIDTH = 190;
  private static final double MAP_GAP = 14;
  private static final int BESIDE_MAP = 3;
  private static final double MOST_MAP = 260;
  private static final double FRAME = 10;

  private final Flow flow;
  private final Report report;
  private final MoneyFaces faces;
  private final Optional<PaddockMap> map;

  FirstPage(Flow flow, Report report, MoneyFaces faces, Optional<FarmMap> map) {
    this.map = map.map(of -> PaddockMap.ofPlan(of, report, flow.lettering()));
    this.flow = flow;
    this.report = report;
    this.faces = faces;
  }

  void draw() {
    flow.newPage();
    double caution = flow.height(this::caution) + FRAME;
    double room = flow.room() - caution - 6;
    List<Runnable> parts = fitting(map.isPresent() ? MAP_WIDTH + MAP_GAP : 0, room);
    double gap = gap(parts, room);
    double mapHeight = map.map(of -> mapHeight(of, parts, gap)).orElse(0.0);
    if (mapHeight > 0) {
      int above = parts.size() - BESIDE_MAP;
      parts.add(above, () -> map.get().draw(flow, Flow.RIGHT - MAP_WIDTH, MAP_WIDTH, mapHeight));
      parts.forEach(part -> drawWithGap(part, part == parts.get(above) ? 0 : gap));
    } else {
      List<Runnable> alone = fitting(0, room);
      if (room > height(alone) + flow.height(this::paddocks)) {
        alone.add(this::paddocks);
      }
      double between = gap(alone, room);
      alone.forEach(part -> drawWithGap(part, between));
    }
    flow.moveTo(Flow.BOTTOM - caution);
    frame(caution);
    caution();
  }

  private void drawWithGap(Runnable part, double gap) {
    part.run();
    flow.gap(gap);
  }

  /** The parts with as many sentences as there is room for. */
  private List<Runnable> fitting(double beside, double room) {
    int most = MOST_SENTENCES;
    while (most > 1 && height(parts(most, beside)) > room) {
      most--;
    }
    return parts(most, beside);
  }

  /** Height of the map beside the last parts; 0 where that is too little. */
  private double mapHeight(PaddockMap of, List<Runnable> parts, double gap) {
    double beside =
        height(parts.subList(parts.size() - BESIDE_MAP, parts.size())) + (BESIDE_MAP - 1) * gap;
    return of.height(MAP_WIDTH, Math.min(MOST_MAP, beside));
  }

  private double gap(List<Runnable> parts, double room) {
    return Math.max(0, Math.min(MOST_GAP, (room - height(parts)) / parts.size()));
  }

  private double height(List<Runnable> parts) {
    return flow.height(() -> parts.forEach(Runnable::run));
  }

  private List<Runnable> parts(int mostSentences, double beside) {
    SheetWords words = new SheetWords(report, faces, mostSentences);
    String title = Texts.get("title", report.farm().name());
    List<Runnable> parts = new ArrayList<>();
    parts.add(() -> flow.title(title, Texts.get("decision.heading")));
    parts.add(() -> flow.paragraph(PlanWords.headline(report), Style.LEAD));
    parts.add(() -> list("todo.free", words.free(), Style.ANSWER, 0));
    parts.add(() -> list("todo.paid", words.paid(), Style.ANSWER, 0));
    if (!report.plan().keepsAll()) {
      parts.add(this::boxes);
    }
    parts.add(() -> list("todo.find", words.findOut(), Style.LARGE, beside));
    parts.add(() -> list("todo.not", words.notToDo(), Style.LARGE, beside));
    parts.add(() -> list("stand.heading", words.asThingsStand(), Style.LARGE, beside));
    return parts;
  }

  /** A heading with its sentences; beside it, room. */
  private void list(String heading, List<String> items, Style style, double beside) {
    flow.heading(Texts.get(heading));
    flow.bullets(items, style, Flow.WIDTH - beside);
  }

  private void paddocks() {
    list("cards.heading", new SheetWords(report, faces, MOST_SENTENCES).paddocks(), Style.LARGE, 0);
  }

  private record Box(String label, String figure, String range) {}

  private void boxes() {
    PlanResult plan = report.plan();
    int years = report.farm().horizonYears();
    List<Box> boxes =
        List.of(
            new Box(
                Texts.get("box.cost"),
                faces.money(faces.cost()),
                Texts.get("box.cost.range", years, Words.ends(plan.cost(), faces.unit()))),
            new Box(
                Texts.get("box.gain"),
                faces.money(faces.gain()),
                Texts.get("box.gain.range", years, Words.ends(plan.gain().drawn(), faces.unit()))),
            new Box(
                Texts.get("box.pays"),
                Texts.get("box.pays.figure", Chances.outOfTen(plan.gain().chancePays())),
                plan.calls().unsure() > 0
                    ? Texts.get(
                        "box.pays.unsure", faces.money(faces.rounded(plan.sureGain().mean())))
                    : Texts.get("box.pays.range")));
    double width = (Flow.WIDTH - 2 * BOX_GAP) / 3;
    double height = 0;
    for (Box box : boxes) {
      height = Math.max(height, flow.height(() -> box(box, 0, width)));
    }
    double top = flow.y();
    double bottom = top + height + 4;
    for (int place = 0; place < boxes.size(); place++) {
      double x = Flow.LEFT + place * (width + BOX_GAP);
      flow.canvas()
          .artifact(
              () -> {
                flow.canvas().box(x, top, width, bottom - top, Tint.PALE);
                flow.canvas().box(x, top, width, 2, Tint.DEEP);
              });
      flow.moveTo(top);
      box(boxes.get(place), x, width);
    }
    flow.moveTo(bottom + 6);
  }

  private void box(Box box, double x, double width) {
    Style figure = flow.lettering().fitting(box.figure(), Style.FIGURE, width - 16, 1);
    flow.gap(6);
    flow.paragraph(box.label(), Style.LARGE_BOLD, x + 8, width - 16);
    flow.paragraph(box.figure(), figure, x + 8, width - 16);
    flow.paragraph(box.range(), Style.LARGE, x + 8, width - 16);
  }

  private void frame(double height) {
    double top = flow.y();
    flow.canvas().artifact(() -> flow.canvas().bar(Flow.LEFT, top, Flow.WIDTH, height, Fill.OPEN));
  }

  private void caution() {
    double width = Flow.WIDTH - 2 * FRAME;
    flow.gap(7);
    flow.paragraph(
        Texts.get("decision.cautions.label"), Style.LARGE_BOLD, Flow.LEFT + FRAME, width);
    flow.paragraph(Texts.get("decision.cautions"), Style.LARGE, Flow.LEFT + FRAME, width);
  }
}
