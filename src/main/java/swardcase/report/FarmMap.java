package swardcase.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import swardcase.farm.PaddockShape;
import swardcase.farm.PaddockShape.Corner;
import swardcase.farm.PaddockShape.Polygon;

/**
 * The farm as it is drawn: kilometres east and south of its north-western corner, by the parallel
 * through its middle (x = longitude x cos latitude), which is true to shape for a farm.
 *
 * @param widthKm its extent from west to east
 * @param heightKm its extent from north to south
 * @param outlines paddocks in the order of the map's file
 */
public record FarmMap(double widthKm, double heightKm, List<Outline> outlines) {

  /** Heights within an outline at which its label is tried. */
  private static final int TRIES = 8;

  /**
   * A point.
   *
   * @param eastKm east of the corner
   * @param southKm south of it
   */
  public record Point(double eastKm, double southKm) {}

  /**
   * A paddock.
   *
   * @param paddock its name
   * @param rings its outlines and the holes in them
   * @param label middle of the widest part of it
   * @param labelKm how wide it is there
   */
  public record Outline(String paddock, List<List<Point>> rings, Point label, double labelKm) {}

  /** The drawing of a farm; empty for one without a map. */
  public static Optional<FarmMap> of(List<PaddockShape> shapes) {
    if (shapes.isEmpty()) {
      return Optional.empty();
    }
    DoubleSummaryStatistics latitudes = over(shapes, Corner::latitude);
    double middle = (latitudes.getMin() + latitudes.getMax()) / 2;
    DoubleSummaryStatistics east = over(shapes, corner -> corner.eastKm(middle));
    DoubleSummaryStatistics south = over(shapes, Corner::southKm);
    List<Outline> outlines = new ArrayList<>();
    for (PaddockShape shape : shapes) {
      List<List<Point>> rings = new ArrayList<>();
      for (Polygon polygon : shape.polygons()) {
        for (List<Corner> ring : polygon.rings()) {
          rings.add(
              ring.stream()
                  .map(
                      corner ->
                          new Point(
                              corner.eastKm(middle) - east.getMin(),
                              corner.southKm() - south.getMin()))
                  .toList());
        }
      }
      outlines.add(labelled(shape.paddock(), rings));
    }
    return Optional.of(
        new FarmMap(east.getMax() - east.getMin(), south.getMax() - south.getMin(), outlines));
  }

  private static DoubleSummaryStatistics over(
      List<PaddockShape> shapes, ToDoubleFunction<Corner> of) {
    return shapes.stream()
        .flatMap(shape -> shape.polygons().stream())
        .flatMap(polygon -> polygon.rings().stream())
        .flatMap(List::stream)
        .mapToDouble(of)
        .summaryStatistics();
  }

  /** Looks along some parallels for the widest stretch that lies inside. */
  private static Outline labelled(String paddock, List<List<Point>> rings) {
    DoubleSummaryStatistics south =
        rings.stream().flatMap(List::stream).mapToDouble(Point::southKm).summaryStatistics();
    Point best = rings.get(0).get(0);
    double widest = 0;
    double most = 0;
    for (int k = 1; k < TRIES; k++) {
      double y = south.getMin() + (south.getMax() - south.getMin()) * k / TRIES;
      List<Double> crossings = crossings(rings, y);
      double towardsMiddle = 1 - 0.4 * Math.abs(2.0 * k / TRIES - 1);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        double width = crossings.get(i + 1) - crossings.get(i);
        if (width * towardsMiddle > most) {
          most = width * towardsMiddle;
          widest = width;
          best = new Point((crossings.get(i) + crossings.get(i + 1)) / 2, y);
        }
      }
    }
    return new Outline(paddock, rings, best, widest);
  }

  private static List<Double> crossings(List<List<Point>> rings, double y) {
    List<Double> crossings = new ArrayList<>();
    for (List<Point> ring : rings) {
      for (int i = 1; i < ring.size(); i++) {
        Point from = ring.get(i - 1);
        Point to = ring.get(i);
        if (from.southKm() <= y != to.southKm() <= y) {
          double part = (y - from.southKm()) / (to.southKm() - from.southKm());
          crossings.add(from.eastKm() + part * (to.eastKm() - from.eastKm()));
        }
      }
    }
    crossings.sort(Comparator.naturalOrder());
    return crossings;
  }
}
