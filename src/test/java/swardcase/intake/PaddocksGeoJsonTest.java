package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.check.FaultsException;
import swardcase.farm.PaddockShape;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class PaddocksGeoJsonTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final Path FARM = Path.of("src/test/resources/farms/two-paddocks");

  @TempDir private Path folder;
  private List<String> names;

  @BeforeEach
  void copyFarm() throws IOException {
    for (String file : FarmFolder.FILES) {
      if (Files.exists(FARM.resolve(file))) {
        Files.copy(FARM.resolve(file), folder.resolve(file));
      }
    }
    names = read().farm().paddocks().stream().map(paddock -> paddock.name()).toList();
  }

  private LoadedFarm read() {
    return FarmFolder.read(folder, TABLES);
  }

  private LoadedFarm read(String map) throws IOException {
    Files.writeString(folder.resolve("paddocks.geojson"), map);
    return read();
  }

  private List<String> faults(String map) throws IOException {
    Files.writeString(folder.resolve("paddocks.geojson"), map);
    return catchThrowableOfType(FaultsException.class, this::read).getMessage().lines().toList();
  }

  private static String collection(String... features) {
    return "{\"type\": \"FeatureCollection\", \"features\": [\n"
        + String.join(",\n", features)
        + "]}";
  }

  private static String feature(String name, String type, String coordinates) {
    return "{\"type\": \"Feature\", \"properties\": {\"name\": \""
        + name
        + "\"}, \"geometry\": {\"type\": \""
        + type
        + "\", \"coordinates\": "
        + coordinates
        + "}}";
  }

  /** A square of so many degrees from a corner. */
  private static String square(double east, double north, double side) {
    return String.format(
        java.util.Locale.ROOT,
        "[[%1$f, %2$f], [%3$f, %2$f], [%3$f, %4$f], [%1$f, %4$f], [%1$f, %2$f]]",
        east,
        north,
        east + side,
        north + side);
  }

  @Test
  void folder_withoutAMap_hasNoShapesAndNoDoubtOfThem() {
    assertThat(read().shapes()).isEmpty();
    assertThat(read().remarks()).noneMatch(remark -> remark.contains("map"));
  }

  @Test
  void map_ofPolygonsAndMultiPolygons_isReadByNameWhateverItsCase() throws IOException {
    String two = "[[" + square(117, -33, 0.01) + "], [" + square(117.02, -33, 0.01) + "]]";
    String holed = "[" + square(117.1, -33, 0.01) + ", " + square(117.102, -32.998, 0.002) + "]";
    LoadedFarm farm =
        read(
            collection(
                feature(names.get(0).toUpperCase(java.util.Locale.ROOT), "MultiPolygon", two),
                feature(names.get(1), "Polygon", holed)));
    assertThat(farm.shapes()).extracting(PaddockShape::paddock).containsExactlyElementsOf(names);
    assertThat(farm.shapes().get(0).polygons()).hasSize(2);
    assertThat(farm.shapes().get(1).polygons().get(0).rings()).hasSize(2);
    // 0.01 degrees of a sphere of 6,371 km are 1.112 km, and 0.9328 km eastward at 33 degrees south
    // (cosine 0.83867): 103.7 ha, by hand; the hole is a twenty-fifth of it.
    assertThat(farm.shapes().get(0).areaHa()).isCloseTo(2 * 103.7, within(0.1));
    assertThat(farm.shapes().get(1).areaHa()).isCloseTo(103.7 * 24 / 25, within(0.1));
  }

  @Test
  void map_thatLeavesOutAPaddockOrDrawsItWrong_isDoubtedAndTaken() throws IOException {
    LoadedFarm farm =
        read(collection(feature(names.get(1), "Polygon", "[" + square(117, -33, 0.02) + "]")));
    assertThat(farm.remarks())
        .contains(
            "The map in paddocks.geojson does not draw "
                + names.get(0)
                + ". Nothing else depends on it.")
        .anyMatch(
            remark ->
                remark.startsWith(
                    "The map draws these paddocks with another area than paddocks.csv gives: "
                        + names.get(1)
                        + " (415 ha)."));
    assertThat(farm.farm()).isEqualTo(withoutMap());
  }

  private swardcase.farm.Farm withoutMap() throws IOException {
    Files.delete(folder.resolve("paddocks.geojson"));
    return read().farm();
  }

  @Test
  void map_withFaultsOfEveryKind_listsEachWithItsPlace() throws IOException {
    String near = names.get(0).substring(0, names.get(0).length() - 1) + "x";
    String good = "[" + square(117, -33, 0.01) + "]";
    List<String> faults =
        faults(
            collection(
                feature(near, "Polygon", good),
                feature(names.get(1), "Polygn", good),
                feature(names.get(1), "Polygon", "[[[117, -33], [117.1, -33], [117, -33.1]]]"),
                feature(names.get(1), "Polygon", "[[[-33, 117], [1, 1], [2, 2], [-33, 117]]]"),
                feature(names.get(0), "Polygon", "[[[1, 1], [2, 1], [2, 2], [1, 2]]]"),
                feature(names.get(0), "Polygon", "[[[1, 1], [2, 1], [\"2\", 2], [1, 1]]]"),
                feature(names.get(0), "Polygon", "[[[1, 1], [2, 1], [1, 1], [2, 1], [1, 1]]]"),
                "{\"type\": \"Feature\", \"properties\": null, \"geometry\": null}",
                "7"));
    assertThat(faults)
        .containsExactly(
            "paddocks.geojson:2: features[1].properties.name: must be a paddock of paddocks.csv;"
                + " found '"
                + near
                + "'; did you mean '"
                + names.get(0)
                + "'?",
            "paddocks.geojson:3: features[2].geometry.type: must be one of: MultiPolygon, Polygon;"
                + " found 'Polygn'; did you mean 'Polygon'?",
            "paddocks.geojson:4: features[3]: " + again(3),
            "paddocks.geojson:4: features[3].geometry.coordinates[1]: must have at least four"
                + " positions, the last the first, but had 3",
            "paddocks.geojson:5: features[4]: " + again(3),
            "paddocks.geojson:5: features[4].geometry.coordinates[1][1]: latitude (degrees, WGS 84,"
                + " the second number) must be from -90 to 90, but was 117",
            "paddocks.geojson:5: features[4].geometry.coordinates[1][4]: latitude (degrees, WGS 84,"
                + " the second number) must be from -90 to 90, but was 117",
            "paddocks.geojson:6: features[5].geometry.coordinates[1]: must have at least four"
                + " positions, the last the first, but had 4",
            "paddocks.geojson:7: features[6]: " + again(6),
            "paddocks.geojson:7: features[6].geometry.coordinates[1][3][1]: must be a number of"
                + " degrees",
            "paddocks.geojson:8: features[7]: " + again(6),
            "paddocks.geojson:9: features[8].geometry.coordinates: must be a list that holds"
                + " something",
            "paddocks.geojson:9: features[8].geometry.type: must be given",
            "paddocks.geojson:9: features[8].properties.name: must be given",
            "paddocks.geojson:10: features[9]: must have keys, such as {\"type\": \"Feature\", ...}");
  }

  private static String again(int line) {
    return "must be the only feature of a paddock, a MultiPolygon if it lies in parts; one stands in"
        + " line "
        + line
        + " already";
  }

  @Test
  void outline_thatEnclosesNothing_isAFault() throws IOException {
    assertThat(
            faults(
                collection(
                    feature(
                        names.get(0), "Polygon", "[[[1, 1], [2, 1], [1, 1], [2, 1], [1, 1]]]"))))
        .containsExactly(
            "paddocks.geojson:2: features[1]: the outline of "
                + names.get(0)
                + " must enclose something");
  }

  @Test
  void faults_ofTheMapAndOfOtherFiles_comeTogether() throws IOException {
    Files.writeString(folder.resolve("plants.csv"), "paddock,cultivar,plants\nNowhere,Yarlop,3\n");
    assertThat(faults(collection(feature("Nowhere", "Polygon", "[" + square(1, 1, 0.1) + "]"))))
        .anyMatch(line -> line.startsWith("paddocks.geojson:2: "))
        .anyMatch(line -> line.startsWith("plants.csv:2: "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{",
        "{}",
        "{\"type\": \"FeatureCollection\"}",
        "{\"type\": \"FeatureCollection\", \"features\": []}",
        "{\"type\": \"FeatureCollection\", \"features\": 3}",
        "{\"type\": \"Topology\", \"features\": [{}]}",
        "{\"type\": \"FeatureCollection\", \"features\": [{}], \"features\": []}",
        "\u0000",
        "{\"type\": \"FeatureCollection\", \"features\": [[[[[[[[[[[[[[]]]]]]]]]]]]]]}"
      })
  void file_thatIsNoMap_isAFaultOfThatFile(String text) throws IOException {
    assertThat(faults(text)).isNotEmpty().allMatch(line -> line.startsWith("paddocks.geojson"));
  }

  @Test
  void json_thatBreaksOff_namesTheLine() throws IOException {
    assertThat(faults("{\"type\":\n \"FeatureCollection\",\n \"features\": [}"))
        .singleElement()
        .asString()
        .startsWith("paddocks.geojson:3: must be JSON that can be read: ");
  }
}
