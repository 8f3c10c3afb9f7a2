package swardcase.page;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import swardcase.report.Call;
import swardcase.report.FarmMap;
import swardcase.report.FarmMap.Outline;
import swardcase.report.FarmMap.Point;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.wording.Texts;

/** The farm as a drawing: each paddock with a pattern that says what is to be done there. */
final class MapView {

  private static final double WIDTH = 640;
  private static final double MOST_HEIGHT = 640;
  private static final double LETTER = 7;

  /** Strokes of a pattern in a square of 8 by 8, by what is to be done. */
  private static final Map<Call, String> PATTERNS =
      Map.of(
          Call.ACT, "M0 0L8 8M8 0L0 8",
          Call.KEEP_OFF, "M0 8L8 0",
          Call.UNDECIDED, "M2 4h3",
          Call.KEEP, "");

  private final Report report;
  private final double scale;
  private final Html html = new Html();

  private MapView(FarmMap map, Report report) {
    this.report = report;
    scale = Math.min(WIDTH / map.widthKm(), MOST_HEIGHT / map.heightKm());
    html.open("figure class=map");
    svg(map.widthKm() * scale + 2, map.heightKm() * scale + 2, "role=img");
    html.open("title").text(alternative(map)).close().open("defs");
    for (Call call : Call.values()) {
      html.open("pattern id=? width=? height=? patternUnits=userSpaceOnUse", "map-" + call, 8, 8);
      html.open("path d=? class=stroke", PATTERNS.get(call)).close();
    }
    html.close();
    map.outlines().forEach(this::area);
    map.outlines().forEach(this::label);
    html.close().open("figcaption");
    for (Call call : Call.values()) {
      html.open("span class=key");
      svg(24, 16, "aria-hidden=true");
      html.open("path d=? class=area fill=?", "M1 1h22v14h-22z", fill(call)).close();
      html.text(" " + Texts.of("map.call", call)).close().text(" ");
    }
    html.close().close();
  }

  /** The drawing. */
  static Html of(FarmMap map, Report report) {
    return new MapView(map, report).html;
  }

  private void svg(double width, double height, String more) {
    html.open("svg viewBox=? width=? " + more, "0 0 " + s(width) + " " + s(height), s(width));
  }

  private static String fill(Call call) {
    return "url(#map-" + call + ")";
  }

  private Optional<Call> call(String paddock) {
    return report.paddocks().stream()
        .filter(one -> one.name().equals(paddock))
        .map(PaddockResult::call)
        .findFirst();
  }

  private void area(Outline outline) {
    String path = outline.rings().stream().map(this::ring).collect(Collectors.joining());
    String fill = call(outline.paddock()).map(MapView::fill).orElse("none");
    html.open("path d=? class=area fill=? fill-rule=evenodd", path, fill);
  }

  private String ring(List<Point> ring) {
    return ring.stream().map(this::at).collect(Collectors.joining("L", "M", "Z"));
  }

  private String at(Point point) {
    return s(1 + point.eastKm() * scale) + " " + s(1 + point.southKm() * scale);
  }

  private void label(Outline outline) {
    double half = outline.paddock().length() * LETTER / 2 + 3;
    Point at = outline.label();
    String box = "m-" + s(half) + " -9h" + s(2 * half) + "v18h-" + s(2 * half) + "z";
    html.open("path d=? class=paper", "M" + at(at) + box);
    String x = s(1 + at.eastKm() * scale);
    html.element("text x=? y=?", outline.paddock(), x, s(5 + at.southKm() * scale));
  }

  private String alternative(FarmMap map) {
    return Arrays.stream(Call.values())
        .map(call -> Texts.get("map.kind", Texts.of("map.call", call), names(map, call)))
        .collect(Collectors.joining(" "));
  }

  private String names(FarmMap map, Call call) {
    return map.outlines().stream()
        .map(Outline::paddock)
        .filter(name -> call(name).equals(Optional.of(call)))
        .collect(Collectors.joining(", "));
  }

  private static String s(double length) {
    return String.format(Locale.ROOT, "%.1f", length);
  }
}
