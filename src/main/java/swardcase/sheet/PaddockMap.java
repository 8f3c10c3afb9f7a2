package swardcase.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.paper.Canvas;
import swardcase.paper.Canvas.Fill;
import swardcase.paper.Flow;
import swardcase.paper.Lettering;
import swardcase.paper.Scale;
import swardcase.paper.Style;
import swardcase.paper.Tint;
import swardcase.report.Call;
import swardcase.report.FarmMap;
import swardcase.report.FarmMap.Outline;
import swardcase.report.FarmMap.Point;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Shut;
import swardcase.report.JoiningReport.When;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.JoiningWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/**
 * The farm's paddocks drawn to scale, each with a pattern that says what is to be done there, told
 * in words below and in the alternative text. A name that does not fit becomes the paddock's number
 * in the map's file; where more than {@value #MOST_NUMBERS} do not fit, these have none.
 */
final class PaddockMap {

  private static final double ROW = 14;
  private static final double SWATCH = 16;
  private static final int MOST_NUMBERS = 40;
  private static final double LEAST_HEIGHT = 48;
  private static final int ROUNDS = 4;
  private static final Style LABEL = new Style(true, 10, Tint.INK);

  /**
   * What is to be done with some paddocks.
   *
   * @param words in a word or three
   * @param fill their pattern
   * @param paddocks their names
   */
  record Kind(String words, Fill fill, List<String> paddocks) {}

  private final FarmMap map;
  private final List<Kind> kinds;
  private final Lettering lettering;

  /** A map whose paddocks are of these kinds; a paddock of none is plain. */
  PaddockMap(FarmMap map, List<Kind> kinds, Lettering lettering) {
    this.map = map;
    this.kinds = kinds.stream().filter(kind -> !kind.paddocks().isEmpty()).toList();
    this.lettering = lettering;
  }

  /** The map of a decision: by what is to be done with each paddock. */
  static PaddockMap ofPlan(FarmMap map, Report report, Lettering lettering) {
    Map<Call, Fill> fills = new LinkedHashMap<>();
    fills.put(Call.ACT, Fill.CROSSED);
    fills.put(Call.KEEP_OFF, Fill.SLANTED);
    fills.put(Call.UNDECIDED, Fill.DOTTED);
    fills.put(Call.KEEP, Fill.PLAIN);
    List<String> drawn = map.outlines().stream().map(Outline::paddock).toList();
    List<Kind> kinds = new ArrayList<>();
    fills.forEach(
        (call, fill) ->
            kinds.add(
                new Kind(
                    Texts.of("map.call", call),
                    fill,
                    report.paddocks().stream()
                        .filter(paddock -> paddock.call() == call)
                        .map(PaddockResult::name)
                        .filter(drawn::contains)
                        .toList())));
    return new PaddockMap(map, kinds, lettering);
  }

  /** The map of a joining sheet: by whom each paddock is shut to. */
  static PaddockMap ofJoining(FarmMap map, JoiningReport report, Lettering lettering) {
    List<String> drawn = map.outlines().stream().map(Outline::paddock).toList();
    Map<String, Shut> shut =
        report.shut().stream().collect(Collectors.toMap(Shut::paddock, of -> of));
    return new PaddockMap(
        map,
        List.of(
            kind("joining.map.all", Fill.CROSSED, drawn, of -> is(shut.get(of), true)),
            kind("joining.map.some", Fill.SLANTED, drawn, of -> is(shut.get(of), false)),
            kind(
                "joining.map.out",
                Fill.DOTTED,
                drawn,
                of -> shut.containsKey(of) && shut.get(of).when() == When.OUT),
            kind("joining.map.open", Fill.PLAIN, drawn, of -> !shut.containsKey(of))),
        lettering);
  }

  private static boolean is(Shut shut, boolean toAllEwes) {
    return shut != null && shut.when() != When.OUT && shut.toAllEwes() == toAllEwes;
  }

  private static Kind kind(String key, Fill fill, List<String> drawn, Predicate<String> of) {
    return new Kind(Texts.get(key), fill, drawn.stream().filter(of).toList());
  }

  /** The finding in words. */
  String alternative() {
    return Texts.get(
        "map.alt",
        map.outlines().size(),
        kinds.stream()
            .map(kind -> Texts.get("map.kind", kind.words(), JoiningWords.names(kind.paddocks())))
            .map(Texts::capital)
            .collect(Collectors.joining(" ")));
  }

  /**
   * Height at this width that leaves no paper free, at most {@code most}; 0 where that is too
   * little to draw anything.
   */
  double height(double width, double most) {
    double scale = scale(width, most);
    return map.heightKm() * scale < LEAST_HEIGHT
        ? 0
        : Math.min(most, map.heightKm() * scale + below(scale, width));
  }

  /** Points a kilometre. A smaller drawing needs more numbers, which leave it less room. */
  private double scale(double width, double height) {
    double scale = width / map.widthKm();
    for (int round = 0; round < ROUNDS && scale > 0; round++) {
      scale = Math.min(scale, (height - below(scale, width)) / map.heightKm());
    }
    return scale;
  }

  /** Height of what stands below the drawing: legend and numbers. */
  private double below(double scale, double width) {
    return ROW * (1 + legend(width).size() + numbers(scale, width).size());
  }

  /** Draws it at the cursor of a flow, which stays where it is, in a box of this size. */
  void draw(Flow flow, double x, double width, double height) {
    flow.figureAt(
        x, width, height, alternative(), (canvas, top) -> paint(canvas, x, top, width, height));
  }

  private void paint(Canvas canvas, double x, double top, double width, double height) {
    double scale = scale(width, height);
    double left = x + (width - map.widthKm() * scale) / 2;
    for (Outline outline : map.outlines()) {
      canvas.area(
          outline.rings().stream().map(ring -> ring(ring, left, top, scale)).toList(),
          fill(outline));
    }
    for (int i = 0; i < map.outlines().size(); i++) {
      Outline outline = map.outlines().get(i);
      label(
          canvas,
          label(i, scale),
          left + outline.label().eastKm() * scale,
          top + outline.label().southKm() * scale);
    }
    double y = top + map.heightKm() * scale + ROW;
    for (List<Kind> row : legend(width)) {
      double at = x;
      for (Kind kind : row) {
        double lower = y - 8;
        canvas.area(
            List.of(new double[] {at, lower, at + SWATCH, lower, at + SWATCH, y, at, y}),
            kind.fill());
        canvas.text(lettering.clean(kind.words()), at + SWATCH + 4, y - 1.5, Style.LARGE);
        at += legendWidth(kind);
      }
      y += ROW;
    }
    for (String line : numbers(scale, width)) {
      canvas.text(line, x, y - 1.5, Style.LARGE);
      y += ROW;
    }
    scaleBar(canvas, x + width, y - ROW * (1 + numbers(scale, width).size()), scale);
  }

  private static double[] ring(List<Point> ring, double left, double top, double scale) {
    return ring.stream()
        .flatMap(point -> Stream.of(left + point.eastKm() * scale, top + point.southKm() * scale))
        .mapToDouble(Double::doubleValue)
        .toArray();
  }

  private Fill fill(Outline outline) {
    return kinds.stream()
        .filter(kind -> kind.paddocks().contains(outline.paddock()))
        .map(Kind::fill)
        .findFirst()
        .orElse(Fill.PLAIN);
  }

  /** The name of a paddock, or its number where there is no room for it. */
  private String label(int i, double scale) {
    Outline outline = map.outlines().get(i);
    String name = lettering.clean(outline.paddock());
    if (fits(name, outline, scale)) {
      return name;
    }
    String number = "" + (i + 1);
    return fits(number, outline, scale) && isNumbered(scale) ? number : "";
  }

  private boolean fits(String text, Outline outline, double scale) {
    return lettering.width(lettering.clean(text), LABEL) + 5 <= outline.labelKm() * scale;
  }

  /** Whether few enough names have no room for their numbers to be told below. */
  private boolean isNumbered(double scale) {
    return map.outlines().stream().filter(of -> !fits(of.paddock(), of, scale)).count()
        <= MOST_NUMBERS;
  }

  private void label(Canvas canvas, String text, double x, double y) {
    if (text.isEmpty()) {
      return;
    }
    double width = lettering.width(text, LABEL) + 4;
    canvas.box(x - width / 2, y - 6, width, 12, Tint.PAPER);
    canvas.textAround(text, x, y + 3.5, LABEL);
  }

  private List<String> numbers(double scale, double width) {
    List<String> numbers = new ArrayList<>();
    for (int i = 0; i < map.outlines().size(); i++) {
      if (label(i, scale).equals("" + (i + 1))) {
        numbers.add((i + 1) + "\u00a0" + map.outlines().get(i).paddock());
      }
    }
    return numbers.isEmpty()
        ? List.of()
        : lettering.wrap(Texts.get("map.numbers", String.join(", ", numbers)), Style.LARGE, width);
  }

  /** Kinds in rows that leave room for the scale at the end of the last. */
  private List<List<Kind>> legend(double width) {
    List<List<Kind>> rows = new ArrayList<>();
    double at = width;
    for (Kind kind : kinds) {
      if (at + legendWidth(kind) > width - 90) {
        rows.add(new ArrayList<>());
        at = 0;
      }
      rows.get(rows.size() - 1).add(kind);
      at += legendWidth(kind);
    }
    return rows;
  }

  private double legendWidth(Kind kind) {
    return SWATCH + 18 + lettering.width(lettering.clean(kind.words()), Style.LARGE);
  }

  private void scaleBar(Canvas canvas, double right, double y, double scale) {
    double km = new Scale(0, 110 / scale, 0, 110).ticks(4).get(1);
    String words = Texts.get("map.scale", Words.exact(km));
    double from = right - lettering.width(words, Style.LARGE) - 4;
    canvas.textTo(words, right, y - 1.5, Style.LARGE);
    canvas.line(from - km * scale, y - 3, from, y - 3, 1.2, Tint.INK);
  }
}
