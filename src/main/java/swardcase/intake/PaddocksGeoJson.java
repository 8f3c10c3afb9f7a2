package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockShape;
import swardcase.farm.PaddockShape.Corner;
import swardcase.farm.PaddockShape.Polygon;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Items;
import swardcase.intake.YamlNode.Scalar;

/**
 * Reads the map of a farm, {@code paddocks.geojson}: a FeatureCollection of polygons by RFC 7946,
 * each with the property {@code name}. What else it holds is left alone.
 */
final class PaddocksGeoJson {

  static final String FILE = "paddocks.geojson";

  private static final String COLLECTION = "FeatureCollection";
  private static final String POLYGON = "Polygon";
  private static final String POLYGONS = "MultiPolygon";
  private static final int FEWEST_CORNERS = 4;
  private static final int MOST_NAMED = 8;

  /** A drawn area that differs by more from the one written is doubted, as a share of it. */
  private static final double MUCH_OFF = 0.25;

  private final List<String> names;
  private final FaultList faults;

  private PaddocksGeoJson(List<String> names, FaultList faults) {
    this.names = names;
    this.faults = faults;
  }

  /**
   * The shapes of a folder's map, in the order of the file; none without the file.
   *
   * @param names the paddocks of the farm; none after a fault, and then none is compared
   */
  static List<PaddockShape> read(Path folder, List<String> names, FaultList faults) {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    return FileText.find(file, faults)
        .flatMap(text -> JsonTree.findByLine(FILE, text, faults))
        .map(top -> new PaddocksGeoJson(names, faults).shapes(top))
        .orElse(List.of());
  }

  private List<PaddockShape> shapes(Entries top) {
    Map<String, PaddockShape> shapes = new LinkedHashMap<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    word(top, "", "type", List.of(COLLECTION));
    int count = 0;
    for (YamlNode feature : items(top, "", "features")) {
      String path = "features[" + ++count + "]";
      if (!(feature instanceof Entries entries)) {
        faults.add(new Place(feature.at(), path), "must be a feature: {\"type\": ...}", "");
        continue;
      }
      word(entries, path, "type", List.of("Feature"));
      int before = faults.count();
      Optional<String> name = name(entries, path);
      List<Polygon> polygons = polygons(entries, path);
      name.filter(known -> lines.putIfAbsent(known, feature.at().line()) != null)
          .ifPresent(
              twice ->
                  faults.add(
                      new Place(feature.at(), path),
                      "must be the only feature of a paddock, a MultiPolygon if it lies in parts;"
                          + " one stands in line "
                          + lines.get(twice)
                          + " already",
                      twice));
      Place place = new Place(feature.at(), path);
      faults
          .build(before, place, () -> new PaddockShape(name.orElseThrow(), polygons))
          .ifPresent(shape -> shapes.put(shape.paddock(), shape));
    }
    return List.copyOf(shapes.values());
  }

  /** The name as the table of paddocks writes it. */
  private Optional<String> name(Entries feature, String path) {
    Entries properties = entries(feature, path, "properties");
    Entry name = properties.entries().get("name");
    String text = name != null && name.value() instanceof Scalar of ? Names.tidy(of.text()) : "";
    Place place = new Place(name == null ? properties.at() : name.at(), path + ".properties.name");
    if (text.isEmpty()) {
      faults.add(place, "must be the name of a paddock", "");
      return Optional.empty();
    }
    Optional<String> known = names.isEmpty() ? Optional.of(text) : Names.find(text, names);
    if (known.isEmpty()) {
      faults.add(place, "must be a paddock of paddocks.csv", text, names);
    }
    return known;
  }

  private List<Polygon> polygons(Entries feature, String path) {
    Entries geometry = entries(feature, path, "geometry");
    String at = path + ".geometry";
    String type = word(geometry, at, "type", List.of(POLYGON, POLYGONS));
    if (type.isEmpty()) {
      return List.of();
    }
    List<YamlNode> parts = items(geometry, at, "coordinates");
    at += ".coordinates";
    List<Polygon> polygons = new ArrayList<>();
    if (type.equals(POLYGON)) {
      polygon(parts, at).ifPresent(polygons::add);
      return polygons;
    }
    for (int i = 0; i < parts.size(); i++) {
      String part = at + "[" + (i + 1) + "]";
      polygon(list(parts.get(i), part), part).ifPresent(polygons::add);
    }
    return polygons;
  }

  private Optional<Polygon> polygon(List<YamlNode> rings, String path) {
    List<List<Corner>> read = new ArrayList<>();
    for (int i = 0; i < rings.size(); i++) {
      String at = path + "[" + (i + 1) + "]";
      List<YamlNode> nodes = list(rings.get(i), at);
      int before = faults.count();
      List<Corner> ring = new ArrayList<>();
      for (int k = 0; k < nodes.size(); k++) {
        corner(nodes.get(k), at + "[" + (k + 1) + "]").ifPresent(ring::add);
      }
      if (faults.count() > before) {
        continue;
      }
      Place place = new Place(rings.get(i).at(), at);
      if (ring.size() < FEWEST_CORNERS) {
        faults.add(
            place, "must have at least four positions, the last the first", ring.size() + "");
      } else if (!ring.get(0).equals(ring.get(ring.size() - 1))) {
        Corner last = ring.get(ring.size() - 1);
        String found = last.longitude() + ", " + last.latitude();
        faults.add(place, "must end with the position it begins with", found);
      }
      read.add(ring);
    }
    return read.isEmpty() ? Optional.empty() : Optional.of(new Polygon(read));
  }

  private Optional<Corner> corner(YamlNode node, String path) {
    List<YamlNode> parts = list(node, path);
    Place place = new Place(node.at(), path);
    if (parts.size() < 2) {
      faults.add(place, "must be a position: longitude, latitude", "");
      return Optional.empty();
    }
    OptionalDouble east = degrees(parts.get(0), place, "longitude", 180);
    OptionalDouble north = degrees(parts.get(1), place, "latitude", 90);
    return east.isPresent() && north.isPresent()
        ? Optional.of(new Corner(east.getAsDouble(), north.getAsDouble()))
        : Optional.empty();
  }

  private OptionalDouble degrees(YamlNode node, Place place, String what, int most) {
    String text = node instanceof Scalar scalar ? scalar.text() : "";
    boolean number = node instanceof Scalar scalar && !scalar.quoted() && text.matches("-?[0-9].*");
    double degrees = number ? Double.parseDouble(text) : Double.NaN;
    if (Math.abs(degrees) <= most) {
      return OptionalDouble.of(degrees);
    }
    faults.add(
        place,
        "must have a "
            + what
            + " from -"
            + most
            + " to "
            + most
            + " degrees (WGS 84, longitude first)",
        text);
    return OptionalDouble.empty();
  }

  /** One of some words behind a key; blank after a fault. */
  private String word(Entries of, String path, String key, List<String> words) {
    Entry entry = of.entries().get(key);
    String text = entry != null && entry.value() instanceof Scalar word ? word.text() : "";
    if (words.contains(text)) {
      return text;
    }
    Place place = new Place(entry == null ? of.at() : entry.at(), below(path, key));
    faults.add(place, "must be " + String.join(" or ", words), text, words);
    return "";
  }

  private Entries entries(Entries of, String path, String key) {
    Entry entry = of.entries().get(key);
    if (entry != null && entry.value() instanceof Entries below) {
      return below;
    }
    if (!key.equals("properties")) {
      Place place = new Place(entry == null ? of.at() : entry.at(), below(path, key));
      faults.add(place, "must be given, with keys of its own", "");
    }
    return Entries.none(of.at());
  }

  private List<YamlNode> items(Entries of, String path, String key) {
    Entry entry = of.entries().get(key);
    if (entry != null) {
      return list(entry.value(), below(path, key));
    }
    faults.add(new Place(of.at(), below(path, key)), "must be given, as a list", "");
    return List.of();
  }

  private List<YamlNode> list(YamlNode node, String path) {
    if (node instanceof Items items && !items.items().isEmpty()) {
      return items.items();
    }
    String found = node instanceof Scalar scalar ? scalar.text() : "";
    faults.add(new Place(node.at(), path), "must be a list that holds something", found);
    return List.of();
  }

  private static String below(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** What is odd about a map: paddocks it leaves out, and areas that are not those written. */
  static List<Doubt> doubts(Farm farm, List<PaddockShape> shapes) {
    if (shapes.isEmpty()) {
      return List.of();
    }
    Map<String, PaddockShape> byName = new LinkedHashMap<>();
    shapes.forEach(shape -> byName.put(shape.paddock(), shape));
    List<String> missing =
        farm.paddocks().stream().map(Paddock::name).filter(n -> !byName.containsKey(n)).toList();
    List<String> off =
        farm.paddocks().stream()
            .filter(paddock -> byName.containsKey(paddock.name()))
            .filter(paddock -> isOff(paddock, byName.get(paddock.name())))
            .map(
                paddock ->
                    String.format(
                        Locale.ROOT,
                        "%s (%.0f ha)",
                        paddock.name(),
                        byName.get(paddock.name()).areaHa()))
            .toList();
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
    return List.copyOf(doubts);
  }

  private static boolean isOff(Paddock paddock, PaddockShape shape) {
    return Math.abs(shape.areaHa() - paddock.areaHa()) > MUCH_OFF * paddock.areaHa();
  }

  private static String named(List<String> names) {
    int more = names.size() - MOST_NAMED;
    String said = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
    return more > 0 ? said + " and " + more + " more" : said;
  }
}
