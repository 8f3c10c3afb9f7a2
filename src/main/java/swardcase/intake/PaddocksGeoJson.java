package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockShape;
import swardcase.farm.PaddockShape.Corner;
import swardcase.farm.PaddockShape.Polygon;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.FileText;
import swardcase.reading.JsonTree;
import swardcase.reading.Names;
import swardcase.reading.Node;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Items;
import swardcase.reading.Node.Scalar;

/**
 * Reads the map of a farm, {@code paddocks.geojson}: a FeatureCollection of polygons by RFC 7946,
 * each with the property {@code name}. What else it holds is left alone.
 */
final class PaddocksGeoJson {

  static final String FILE = "paddocks.geojson";

  private static final String FEATURE = "{\"type\": \"Feature\", ...}";
  private static final Map<String, Boolean> IN_PARTS =
      Map.of("Polygon", false, "MultiPolygon", true);
  private static final int FEWEST_CORNERS = 4;
  private static final int MOST_NAMED = 8;

  /** A drawn area that differs by more from the one written is doubted, as a share of it. */
  private static final double MUCH_OFF = 0.25;

  private final List<String> names;
  private final Faults faults;

  private PaddocksGeoJson(List<String> names, Faults faults) {
    this.names = names;
    this.faults = faults;
  }

  /**
   * The shapes of a folder's map, in the order of the file; none without the file.
   *
   * @param names the paddocks of the farm; none after a fault, and then none is compared
   */
  static List<PaddockShape> read(Path folder, List<String> names, Faults faults) {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    return FileText.find(file, FILE, faults)
        .flatMap(text -> JsonTree.findByLine(FILE, text, faults))
        .map(top -> new PaddocksGeoJson(names, faults).shapes(new Fields(top, "", faults)))
        .orElse(List.of());
  }

  private List<PaddockShape> shapes(Fields map) {
    List<PaddockShape> shapes = new ArrayList<>();
    Map<String, Integer> lines = new HashMap<>();
    map.choice("type", Map.of("FeatureCollection", true));
    for (Fields feature : map.sections("features", FEATURE)) {
      feature.sound(() -> shape(feature, lines)).ifPresent(shapes::add);
    }
    if (lines.isEmpty()) {
      map.fault("features", "must hold a feature: " + FEATURE);
    }
    return shapes;
  }

  private PaddockShape shape(Fields feature, Map<String, Integer> lines) {
    feature.choice("type", Map.of("Feature", true));
    String name = name(feature.section("properties"));
    Integer first = lines.putIfAbsent(name, feature.at().line());
    if (first != null && !name.isEmpty()) {
      String rule =
          "must be the only feature of a paddock, a MultiPolygon if it lies in parts; one stands in"
              + " line %s already";
      feature.fault(String.format(Locale.ROOT, rule, first));
    }
    return new PaddockShape(name, polygons(feature.section("geometry")));
  }

  /** The name as the table of paddocks writes it; blank after a fault. */
  private String name(Fields properties) {
    String name = properties.text("name");
    Optional<String> known = names.isEmpty() ? Optional.of(name) : Names.find(name, names);
    if (known.isEmpty() && !name.isEmpty()) {
      properties.fault("name", "must be a paddock of paddocks.csv", names);
    }
    return known.orElse("");
  }

  private List<Polygon> polygons(Fields geometry) {
    Boolean inParts = geometry.choice("type", IN_PARTS);
    String path = "coordinates";
    Node coordinates = geometry.find(path).orElse(new Items(geometry.at(), List.of()));
    path = geometry.path() + "." + path;
    if (inParts == null || !inParts) {
      return List.of(new Polygon(list(coordinates, path, this::ring)));
    }
    return list(coordinates, path, (part, at) -> new Polygon(list(part, at, this::ring)));
  }

  private List<Corner> ring(Node node, String path) {
    int before = faults.count();
    List<Corner> ring = list(node, path, this::corner);
    if (faults.count() == before) {
      Check.that(
          ring.size() >= FEWEST_CORNERS && ring.get(0).equals(ring.get(ring.size() - 1)),
          "must have at least four positions, the last the first, but had %s",
          ring.size());
    }
    return ring;
  }

  private Corner corner(Node node, String path) {
    List<Double> degrees = list(node, path, this::degrees);
    Check.that(degrees.size() >= 2, "must be a position: longitude, latitude");
    return new Corner(degrees.get(0), degrees.get(1));
  }

  private double degrees(Node node, String path) {
    boolean isNumber = node instanceof Scalar of && of.form() == Form.PLAIN;
    Check.that(isNumber, "must be a number of degrees");
    return Double.parseDouble(((Scalar) node).text());
  }

  /** What the parts of a list are made into; those at fault are left out. */
  private <T> List<T> list(Node node, String path, BiFunction<Node, String, T> maker) {
    List<Node> parts = node instanceof Items items ? items.items() : List.of();
    if (parts.isEmpty()) {
      faults.add(node.at(), path, "must be a list that holds something", "");
    }
    List<T> made = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Node part = parts.get(i);
      String at = path + "[" + (i + 1) + "]";
      faults.make(part.at(), at, () -> maker.apply(part, at)).ifPresent(made::add);
    }
    return made;
  }

  /** What is odd about a map: paddocks it leaves out, and areas that are not those written. */
  static List<Doubt> doubts(Farm farm, List<PaddockShape> shapes) {
    List<String> missing = new ArrayList<>();
    List<String> off = new ArrayList<>();
    for (Paddock paddock : shapes.isEmpty() ? List.<Paddock>of() : farm.paddocks()) {
      String name = paddock.name();
      Optional<PaddockShape> drawn =
          shapes.stream().filter(shape -> shape.paddock().equals(name)).findFirst();
      double areaHa = drawn.map(PaddockShape::areaHa).orElse(paddock.areaHa());
      if (drawn.isEmpty()) {
        missing.add(name);
      } else if (Math.abs(areaHa - paddock.areaHa()) > MUCH_OFF * paddock.areaHa()) {
        off.add(String.format(Locale.ROOT, "%s (%.0f ha)", name, areaHa));
      }
    }
    List<Doubt> doubts = new ArrayList<>();
    if (!missing.isEmpty()) {
      doubts.add(
          new Doubt(
              "The map in " + FILE + " does not draw " + named(missing) + ".",
              "Nothing else depends on it."));
    }
    if (!off.isEmpty()) {
      doubts.add(
          new Doubt(
              "The map draws these paddocks with another area than paddocks.csv gives: "
                  + named(off)
                  + ".",
              "Hectares count as written in paddocks.csv: look which of the two is right."));
    }
    return doubts;
  }

  private static String named(List<String> names) {
    int more = names.size() - MOST_NAMED;
    String said = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
    return more > 0 ? said + " and " + more + " more" : said;
  }
}
