package swardcase.farm;

import java.util.List;
import swardcase.check.Check;

/**
 * Where a paddock lies: its polygons in longitude and latitude, of which nothing is computed but a
 * drawing.
 *
 * @param paddock its name
 * @param polygons at least one
 */
public record PaddockShape(String paddock, List<Polygon> polygons) {

  /** Radius of a sphere of the Earth's mean size, km. */
  private static final double EARTH_KM = 6371;

  /** Checks that there is a polygon. */
  public PaddockShape {
    Check.notBlank(paddock, "paddock of a shape");
    polygons = List.copyOf(polygons);
    double hectares = polygons.stream().mapToDouble(Polygon::areaHa).sum();
    Check.that(hectares > 0, "the outline of %s must enclose something", paddock);
  }

  /**
   * A corner.
   *
   * @param longitude degrees east
   * @param latitude degrees north
   */
  public record Corner(double longitude, double latitude) {

    /** Checks that it is on Earth. */
    public Corner {
      Check.inRange(longitude, -180, 180, "longitude (degrees, WGS 84, the first number)");
      Check.inRange(latitude, -90, 90, "latitude (degrees, WGS 84, the second number)");
    }

    /** Kilometres east of the prime meridian, along the parallel {@code middleLatitude}. */
    public double eastKm(double middleLatitude) {
      return EARTH_KM * Math.toRadians(longitude) * Math.cos(Math.toRadians(middleLatitude));
    }

    /** Kilometres south of the equator. */
    public double southKm() {
      return -EARTH_KM * Math.toRadians(latitude);
    }
  }

  /**
   * A polygon.
   *
   * @param rings its outline, then holes in it; each ends where it begins
   */
  public record Polygon(List<List<Corner>> rings) {

    /** Copies the lists. */
    public Polygon {
      rings = rings.stream().map(List::copyOf).toList();
      Check.that(!rings.isEmpty(), "a polygon must have a ring");
    }

    private double areaHa() {
      double outer = areaHa(rings.get(0));
      return outer - rings.stream().skip(1).mapToDouble(Polygon::areaHa).sum();
    }

    private static double areaHa(List<Corner> ring) {
      double middle = ring.get(0).latitude();
      double twice = 0;
      for (int i = 1; i < ring.size(); i++) {
        double y = ring.get(i - 1).southKm() - ring.get(0).southKm();
        double nextY = ring.get(i).southKm() - ring.get(0).southKm();
        double x = ring.get(i - 1).eastKm(middle) - ring.get(0).eastKm(middle);
        double nextX = ring.get(i).eastKm(middle) - ring.get(0).eastKm(middle);
        twice += x * nextY - nextX * y;
      }
      return 100 * Math.abs(twice) / 2;
    }
  }

  /** Its area on a sphere, ha; for a paddock, not for a continent. */
  public double areaHa() {
    return polygons.stream().mapToDouble(Polygon::areaHa).sum();
  }
}
