package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.farm.PaddockShape;
import swardcase.farm.PaddockShape.Corner;
import swardcase.farm.PaddockShape.Polygon;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.report.FarmMap.Outline;
import swardcase.report.FarmMap.Point;
import swardcase.tables.TablesLoader;

class FarmMapTest {

  private static List<Corner> ring(double... degrees) {
    return java.util.stream.IntStream.range(0, degrees.length / 2)
        .mapToObj(i -> new Corner(degrees[2 * i], degrees[2 * i + 1]))
        .toList();
  }

  @Test
  void farm_withoutShapes_hasNoMap() {
    assertThat(FarmMap.of(List.of())).isEmpty();
  }

  /** A degree is 111.19 km on a sphere of 6,371 km; at 60 degrees half of that eastward. */
  @Test
  void drawing_atSixtyDegrees_isHalfAsWide() {
    Polygon square = new Polygon(List.of(ring(10, 59.99, 10.02, 59.99, 10.02, 60.01, 10, 59.99)));
    FarmMap map = FarmMap.of(List.of(new PaddockShape("House", List.of(square)))).orElseThrow();
    assertThat(map.heightKm()).isCloseTo(2.224, within(0.001));
    assertThat(map.widthKm()).isCloseTo(1.112, within(0.001));
    List<Point> ring = map.outlines().get(0).rings().get(0);
    assertThat(ring.get(0).eastKm()).isCloseTo(0, within(1e-9));
    assertThat(ring.get(0).southKm()).isCloseTo(map.heightKm(), within(1e-9));
    assertThat(ring.get(2).southKm()).isCloseTo(0, within(1e-9));
  }

  /** A U: its middle lies outside, so that the label must go into its base. */
  @Test
  void label_ofAPaddockThatIsHollow_liesInside() {
    Polygon hollow =
        new Polygon(
            List.of(
                ring(
                    0, 0, 0.03, 0, 0.03, 0.03, 0.02, 0.03, 0.02, 0.01, 0.01, 0.01, 0.01, 0.03, 0,
                    0.03, 0, 0)));
    Outline of =
        FarmMap.of(List.of(new PaddockShape("U", List.of(hollow)))).orElseThrow().outlines().get(0);
    assertThat(of.labelKm()).isCloseTo(3.336, within(0.001));
    assertThat(of.label().southKm()).isGreaterThan(2.224);
  }

  /** Polygons of any farm lie beside each other as they are written, and labels lie within. */
  @Test
  void demoFarm_isDrawnWholeAndToItsHectares() {
    LoadedFarm farm =
        FarmFolder.read(Path.of("demo-data/mixed-farm"), TablesLoader.standard().load());
    FarmMap map = FarmMap.of(farm.shapes()).orElseThrow();
    assertThat(map.outlines())
        .extracting(Outline::paddock)
        .containsExactlyElementsOf(farm.farm().paddocks().stream().map(p -> p.name()).toList());
    assertThat(farm.remarks()).noneMatch(remark -> remark.contains("map"));
    for (Outline outline : map.outlines()) {
      assertThat(outline.labelKm()).isPositive();
      for (Point point : outline.rings().get(0)) {
        assertThat(point.eastKm()).isBetween(-1e-9, map.widthKm() + 1e-9);
        assertThat(point.southKm()).isBetween(-1e-9, map.heightKm() + 1e-9);
      }
    }
  }
}
