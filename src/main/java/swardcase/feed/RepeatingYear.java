package swardcase.feed;

/**
 * A year of the feed budget that is run until it repeats, per hectare of farm: its pools and what
 * it came to. Mutable, for one thread; a run begins by overwriting it.
 *
 * <p>Green feed begins a year where it ended the last one: hardly anything of an error is left
 * after a year. Dry feed that begins at d and ends at e, of which a year leaves the share q of an
 * error, begins the next at the root of Newton's method,
 *
 * <pre>
 *   d + (e - d) / (1 - q)            2,000 kg that end at 1,906 with q = 0.06: 1,900
 * </pre>
 *
 * <p>A year that is printed is run until both pools end it within 1e-6 kg/ha of where they began.
 * One of very many ends as soon as that root lies within {@value #CARRIED_KG} kg, and its sums are
 * carried to there by their own slopes.
 */
public final class RepeatingYear {

  private static final int MOST_YEARS = 100;
  private static final double CLOSE_KG = 1e-6;
  private static final double NEAR_KG = 1e-3;
  private static final double CARRIED_KG = 0.3;

  /** Dry feed that hardly decays is not trusted to have a root near by. */
  private static final double MOST_LEFT = 0.9;

  /** After so many years Newton's method is taken to go round a kink, and years go on plainly. */
  private static final int TRUSTED_YEARS = 20;

  private double greenKg;
  private double dryKg;
  private double greenStartKg;
  private double dryStartKg;
  private double boughtInYearMj;
  private double uneatenInYearKg;
  private boolean near;
  private int years;
  private boolean repeats;

  void begin(double greenKgDmPerHa, double dryKgDmPerHa) {
    near = false;
    years = 0;
    repeats = false;
    beginYear(greenKgDmPerHa, dryKgDmPerHa);
  }

  void beginFrom(RepeatingYear other) {
    begin(other.greenKg, other.dryKg);
  }

  /** Begins one of very many years. */
  void beginNear(RepeatingYear other) {
    beginFrom(other);
    near = true;
  }

  private void beginYear(double green, double dry) {
    greenKg = green;
    dryKg = dry;
    greenStartKg = green;
    dryStartKg = dry;
  }

  boolean goesOn() {
    return !repeats && years < MOST_YEARS;
  }

  /** Ends a year; what is told of a kg is the effect of one more kg of dry feed at its start. */
  void end(
      double green,
      double dry,
      double dryPerKg,
      double boughtMj,
      double boughtMjPerKg,
      double uneatenKg,
      double uneatenKgPerKg) {
    years++;
    greenKg = green;
    dryKg = dry;
    boughtInYearMj = boughtMj;
    uneatenInYearKg = uneatenKg;
    double left = dryPerKg < MOST_LEFT && years < TRUSTED_YEARS ? dryPerKg : 0;
    double move = (dry - dryStartKg) / (1 - left);
    double moveGreen = Math.abs(green - greenStartKg);
    if (near && moveGreen <= NEAR_KG && Math.abs(move) <= CARRIED_KG) {
      boughtInYearMj = Math.max(0, boughtMj + move * boughtMjPerKg);
      uneatenInYearKg = Math.max(0, uneatenKg + move * uneatenKgPerKg);
      repeats = true;
    } else if (moveGreen <= CLOSE_KG && Math.abs(dry - dryStartKg) <= CLOSE_KG) {
      repeats = true;
    } else if (goesOn()) {
      beginYear(green, Math.max(0, dryStartKg + move));
    }
  }

  double greenKg() {
    return greenKg;
  }

  double dryKg() {
    return dryKg;
  }

  /** Feed there was when the last year began, kg DM/ha. */
  double carriedInKgDmPerHa() {
    return greenStartKg + dryStartKg;
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
