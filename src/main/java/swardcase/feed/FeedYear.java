package swardcase.feed;

/**
 * A year of the feed budget under way, per hectare of farm: the pools, what the half-month in hand
 * did, and what the year has come to. Mutable, for one thread; a run begins by overwriting it.
 */
public final class FeedYear {

  private static final int MOST_YEARS = 100;

  final YearPool green = new YearPool();
  final YearPool dry = new YearPool();

  // Of the half-month in hand, kg DM/ha and MJ/ha.
  double grownKg;
  double eatenGreenKg;
  double eatenDryKg;
  double diedKg;
  double decayedKg;
  double eatenMj;
  double boughtMj;

  private double toleranceKg;
  private double boughtInYearMj;
  private double uneatenInYearKg;
  private int years;
  private boolean repeats;

  void begin(double greenKgDmPerHa, double dryKgDmPerHa, double tolerance) {
    green.begin(greenKgDmPerHa, 0);
    dry.begin(dryKgDmPerHa, 0);
    beginFirst(tolerance);
  }

  void beginFrom(FeedYear other, double tolerance) {
    green.beginFrom(other.green);
    dry.beginFrom(other.dry);
    beginFirst(tolerance);
  }

  private void beginFirst(double tolerance) {
    toleranceKg = tolerance;
    years = 0;
    repeats = false;
    clearSums();
  }

  private void clearSums() {
    boughtInYearMj = 0;
    uneatenInYearKg = 0;
  }

  boolean goesOn() {
    return !repeats && years < MOST_YEARS;
  }

  void endHalfMonth() {
    boughtInYearMj += boughtMj;
    uneatenInYearKg += decayedKg;
  }

  void endYear() {
    years++;
    repeats = green.repeats(toleranceKg) && dry.repeats(toleranceKg);
    if (goesOn()) {
      green.goOn();
      dry.goOn();
      clearSums();
    }
  }

  /** Energy bought over the year, MJ ME/ha. */
  public double boughtMjPerHa() {
    return boughtInYearMj;
  }

  /** Feed nobody ate in the year, kg DM/ha: all dry feed that decayed. */
  public double uneatenKgDmPerHa() {
    return uneatenInYearKg;
  }

  /** Years run until the year repeated itself. */
  public int yearsToRepeat() {
    return years;
  }

  /** Whether the year repeats itself: the pools end within the tolerance of where they began. */
  public boolean repeats() {
    return repeats;
  }
}
