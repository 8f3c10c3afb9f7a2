package swardcase.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.paper.Canvas;
import swardcase.paper.Fill;
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
  private static final double SCALE_BAR = 90;
  private static final int MOST_NUMBERS = 40;
  private static final double LEAST_HEIGHT = 48;
  private static final int ROUNDS = 4;
  private static final Style LABEL = Style.LARGE_BOLD;

  /** How paddocks of a kind are filled, and in a word or three what is to be done there. */
  private record Kind(String key, Fill fill) {

    String words() {
      return Texts.get(key);
    }
  }

  private static final Map<Call, Kind> OF_PLAN =
      Map.of(
          Call.ACT, new Kind("map.call.ACT", Fill.CROSSED),
          Call.KEEP_OFF, new Kind("map.call.KEEP_OFF", Fill.SLANTED),
          Call.UNDECIDED, new Kind("map.call.UNDECIDED", Fill.DOTTED),
          Call.KEEP, new Kind("map.call.KEEP", Fill.OPEN));

  private static final Kind ALL = new Kind("joining.map.all", Fill.CROSSED);
  private static final Kind SOME = new Kind("joining.map.some", Fill.SLANTED);
  private static final Kind OUT = new Kind("joining.map.out", Fill.DOTTED);
  private static final Kind FREE = new Kind("joining.map.open", Fill.OPEN);

  private final FarmMap map;
  private final Map<String, Kind> ofPaddocks;
  private final Lettering lettering;

  private PaddockMap(FarmMap map, Map<String, Kind> ofPaddocks, Lettering lettering) {
    this.map = map;
    this.ofPaddocks = ofPaddocks;
    this.lettering = lettering;
  }

  /** The map of a decision: by what is to be done with each paddock. */
  static PaddockMap ofPlan(FarmMap map, Report report, Lettering lettering) {
    return new PaddockMap(
        map,
        report.paddocks().stream()
            .collect(Collectors.toMap(PaddockResult::name, of -> OF_PLAN.get(of.call()))),
        lettering);
  }

  /** The map of a joining sheet: by whom each paddock is shut to. */
  static PaddockMap ofJoining(FarmMap map, JoiningReport report, Lettering lettering) {
    return new PaddockMap(
        map,
        report.shut().stream().collect(Collectors.toMap(Shut::paddock, PaddockMap::kind)),
        lettering);
  }

  private static Kind kind(Shut shut) {
    return shut.when() == When.OUT ? OUT : shut.toAllEwes() ? ALL : SOME;
  }

  private Kind kind(Outline outline) {
    return Optional.ofNullable(ofPaddocks.get(outline.paddock())).orElse(FREE);
  }

  /** Paddocks on the map by kind, the most that is to be done first. */
  private Map<Kind, List<String>> kinds() {
    return Stream.of(Fill.CROSSED, Fill.SLANTED, Fill.DOTTED, Fill.OPEN)
        .flatMap(fill -> map.outlines().stream().filter(of -> kind(of).fill() == fill))
        .collect(
            Collectors.groupingBy(
                this::kind,
                LinkedHashMap::new,
                Collectors.mapping(Outline::paddock, Collectors.toList())));
  }

  /** The finding in words. */
  String alternative() {
    return Texts.get(
        "map.alt",
        map.outlines().size(),
        kinds().entrySet().stream()
            .map(
                of -> Texts.get("map.kind", of.getKey().words(), JoiningWords.names(of.getValue())))
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
    int rows = (kinds().size() - 1) / inARow(width) + 1;
    return ROW * (1 + rows + numbers(scale, width).size());
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
          kind(outline).fill(),
          1);
    }
    List<String> labels = labels(scale);
    for (int i = 0; i < labels.size(); i++) {
      Point at = map.outlines().get(i).label();
      label(canvas, labels.get(i), left + at.eastKm() * scale, top + at.southKm() * scale);
    }
    double y = top + map.heightKm() * scale + ROW;
    scaleBar(canvas, x + width, y, scale);
    List<Kind> kinds = List.copyOf(kinds().keySet());
    for (int i = 0; i < kinds.size(); i++) {
      double at = x + i % inARow(width) * widest();
      double baseline = y + i / inARow(width) * ROW;
      canvas.bar(at, baseline - 8, SWATCH, 8, kinds.get(i).fill());
      String words = lettering.clean(kinds.get(i).words());
      canvas.text(words, at + SWATCH + 4, baseline - 1.5, Style.LARGE);
    }
    y += ROW * ((kinds.size() - 1) / inARow(width) + 1);
    for (String line : numbers(scale, width)) {
      canvas.text(line, x, y - 1.5, Style.LARGE);
      y += ROW;
    }
  }

  private static double[] ring(List<Point> ring, double left, double top, double scale) {
    return ring.stream()
        .flatMap(point -> Stream.of(left + point.eastKm() * scale, top + point.southKm() * scale))
        .mapToDouble(Double::doubleValue)
        .toArray();
  }

  /** The name of each paddock, or its number where there is no room for it. */
  private List<String> labels(double scale) {
    List<Outline> outlines = map.outlines();
    boolean isNumbered =
        outlines.stream().filter(of -> !fits(of.paddock(), of, scale)).count() <= MOST_NUMBERS;
    List<String> labels = new ArrayList<>();
    for (Outline outline : outlines) {
      String number = Integer.toString(labels.size() + 1);
      labels.add(
          fits(outline.paddock(), outline, scale)
              ? lettering.clean(outline.paddock())
              : isNumbered && fits(number, outline, scale) ? number : "");
    }
    return labels;
  }

  private boolean fits(String text, Outline outline, double scale) {
    return lettering.width(lettering.clean(text), LABEL) + 5 <= outline.labelKm() * scale;
  }

  private void label(Canvas canvas, String text, double x, double y) {
    double width = lettering.width(text, LABEL) + 4;
    if (!text.isEmpty()) {
      canvas.box(x - width / 2, y - 6, width, 12, Tint.PAPER);
      canvas.textAround(text, x, y + 3.5, LABEL);
    }
  }

  private List<String> numbers(double scale, double width) {
    List<String> numbers = new ArrayList<>();
    List<String> labels = labels(scale);
    for (int i = 0; i < labels.size(); i++) {
      if (labels.get(i).equals("" + (i + 1))) {
        numbers.add((i + 1) + "\u00a0" + map.outlines().get(i).paddock());
      }
    }
    return numbers.isEmpty()
        ? List.of()
        : lettering.wrap(Texts.get("map.numbers", String.join(", ", numbers)), Style.LARGE, width);
  }

  /** Kinds that stand beside each other and leave room for the scale. */
  private int inARow(double width) {
    return Math.max(1, (int) ((width - SCALE_BAR) / widest()));
  }

  private double widest() {
    return SWATCH
        + 18
        + kinds().keySet().stream()
            .mapToDouble(kind -> lettering.width(lettering.clean(kind.words()), Style.LARGE))
            .max()
            .orElse(0);
  }

  private void scaleBar(Canvas canvas, double right, double y, double scale) {
    double km = new Scale(0, 110 / scale, 0, 110).ticks(4).get(1);
    String words = Texts.get("map.scale", Words.exact(km));
    double from = right - lettering.width(words, Style.LARGE) - 4;
    canvas.textTo(words, right, y - 1.5, Style.LARGE);
    canvas.line(from - km * scale, y - 3, from, y - 3, 1.2, Tint.INK);
  }
}
