package swardcase.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
  private final int cautionsPage;

  FirstPage(Flow flow, Report report, MoneyFaces faces, Optional<FarmMap> map, int cautionsPage) {
    this.map = map.map(of -> PaddockMap.ofPlan(of, report, flow.lettering()));
    this.flow = flow;
    this.report = report;
    this.faces = faces;
    this.cautionsPage = cautionsPage;
  }

  /** A part of the page and the points it takes. */
  private record Part(double height, Runnable drawing) {}

  void draw() {
    flow.newPage();
    List<Part> parts = fitting(map.isPresent() ? MAP_WIDTH + MAP_GAP : 0);
    double mapHeight = map.isPresent() ? mapHeight(parts) : 0;
    if (mapHeight == 0) {
      parts = fitting(0);
      PaddockTable table = new PaddockTable(flow, report, faces);
      if (table.shortHeight() < room() - height(parts)) {
        parts.add(new Part(table.shortHeight(), table::drawShort));
      }
    }
    double gap = gap(parts);
    for (int i = 0; i < parts.size(); i++) {
      if (mapHeight > 0 && i == parts.size() - BESIDE_MAP) {
        map.orElseThrow().draw(flow, Flow.RIGHT - MAP_WIDTH, MAP_WIDTH, mapHeight);
      }
      parts.get(i).drawing().run();
      flow.gap(gap);
    }
    cautions();
  }

  /** The parts with as many sentences as there is room for. */
  private List<Part> fitting(double beside) {
    List<Part> parts = parts(MOST_SENTENCES, beside);
    for (int most = MOST_SENTENCES - 1; most > 0 && height(parts) > room(); most--) {
      parts = parts(most, beside);
    }
    return parts;
  }

  /** Height of the map beside the last parts; 0 where that is too little. */
  private double mapHeight(List<Part> parts) {
    double beside =
        height(parts.subList(parts.size() - BESIDE_MAP, parts.size()))
            + (BESIDE_MAP - 1) * gap(parts);
    return map.orElseThrow().height(MAP_WIDTH, Math.min(MOST_MAP, beside));
  }

  private double gap(List<Part> parts) {
    return Math.max(0, Math.min(MOST_GAP, (room() - height(parts)) / parts.size()));
  }

  private static double height(List<Part> parts) {
    return parts.stream().mapToDouble(Part::height).sum();
  }

  private double room() {
    return Flow.BOTTOM - Flow.TOP - cautionsHeight() - 6;
  }

  private List<Part> parts(int mostSentences, double beside) {
    SheetWords words = new SheetWords(report, faces, mostSentences);
    List<Part> parts = new ArrayList<>();
    parts.add(title());
    parts.add(paragraph(PlanWords.headline(report), Style.LEAD));
    parts.add(list("todo.free", words.free(), "todo.free.none", Style.ANSWER, 0));
    parts.add(list("todo.paid", words.paid(), "todo.paid.none", Style.ANSWER, 0));
    if (!report.plan().keepsAll()) {
      parts.add(boxes());
    }
    parts.add(list("todo.find", words.findOut(), "", Style.LARGE, beside));
    parts.add(list("todo.not", words.notToDo(), "", Style.LARGE, beside));
    parts.add(list("stand.heading", words.asThingsStand(), "", Style.LARGE, beside));
    return parts;
  }

  private Part title() {
    String title = Texts.get("title", report.farm().name());
    List<String> lines = flow.lettering().wrap(title, Style.TITLE, Flow.WIDTH, 2);
    return new Part(
        lines.size() * Style.TITLE.leading() + 4,
        () -> flow.title(String.join(" ", lines), Texts.get("decision.heading")));
  }

  private Part paragraph(String text, Style style) {
    int lines = flow.lettering().wrap(text, style, Flow.WIDTH).size();
    return new Part(lines * style.leading() + 4, () -> flow.paragraph(text, style));
  }

  /** A heading with its sentences, or with the one that says there are none; beside it, room. */
  private Part list(String heading, List<String> found, String none, Style style, double beside) {
    List<String> items = found.isEmpty() && !none.isEmpty() ? List.of(Texts.get(none)) : found;
    double height = 26;
    for (String item : items) {
      height +=
          flow.lettering().wrap(item, style, Flow.WIDTH - beside - 12).size() * style.leading()
              + 2.5;
    }
    return new Part(
        height,
        () -> {
          flow.heading(Texts.get(heading));
          flow.bullets(items, style, Flow.WIDTH - beside);
        });
  }

  private record Box(String label, String figure, String range) {}

  private Part boxes() {
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
    int lines =
        boxes.stream()
            .mapToInt(box -> flow.lettering().wrap(box.range(), Style.LARGE, width - 16).size())
            .max()
            .orElse(1);
    double height = 12 + Style.LARGE.leading() * (lines + 1) + Style.FIGURE.leading();
    return new Part(
        height + 6,
        () -> {
          double top = flow.y();
          for (int place = 0; place < boxes.size(); place++) {
            flow.moveTo(top);
            box(boxes.get(place), Flow.LEFT + place * (width + BOX_GAP), width, height);
          }
          flow.moveTo(top + height + 6);
        });
  }

  private void box(Box box, double x, double width, double height) {
    double top = flow.y();
    flow.canvas()
        .artifact(
            () -> {
              flow.canvas().box(x, top, width, height, Tint.PALE);
              flow.canvas().box(x, top, width, 2, Tint.DEEP);
            });
    flow.moveTo(top + 6);
    inBox(box.label(), Style.LARGE_BOLD, x, width);
    Style figure = flow.lettering().fitting(box.figure(), Style.FIGURE, width - 16, 1);
    inBox(box.figure(), figure, x, width);
    inBox(box.range(), Style.LARGE, x, width);
  }

  private void inBox(String text, Style style, double x, double width) {
    flow.paragraph(flow.lettering().wrap(text, style, width - 16), style, x + 8);
  }

  private List<String> cautionLines() {
    return flow.lettering()
        .wrap(Texts.get("decision.cautions", cautionsPage), Style.LARGE, Flow.WIDTH - 2 * FRAME);
  }

  private double cautionsHeight() {
    return 14 + Style.LARGE.leading() * (1 + cautionLines().size());
  }

  private void cautions() {
    double height = cautionsHeight();
    double top = Flow.BOTTOM - height;
    flow.canvas()
        .artifact(() -> flow.canvas().frame(Flow.LEFT, top, Flow.WIDTH, height, 1.1, Tint.INK));
    flow.moveTo(top + 7);
    flow.paragraph(
        List.of(flow.lettering().clean(Texts.get("decision.cautions.label"))),
        Style.LARGE_BOLD,
        Flow.LEFT + FRAME);
    flow.paragraph(cautionLines(), Style.LARGE, Flow.LEFT + FRAME);
  }
}
