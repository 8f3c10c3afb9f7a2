package swardcase.feed;

/**
 * A pool of feed over years that are run until one repeats, kg DM/ha.
 *
 * <p>With c(s) the change over a year that starts at s, the year that repeats starts where c is 0.
 * The slope of c is q - 1, where q is the share of an error at the start that a year leaves. The
 * next year starts at s + c / (1 - q), with q from the last two years once there are two: the
 * secant method. A q outside 0 to 0.3 is not trusted and taken as 0, which is to go on from where
 * the year ended. Of starts within a gram of each other nothing is learnt.
 *
 * <p>Pools that start at 2,000 and 1,900 and end at 1,906 and 1,900 have q = 0.06, and the second
 * repeats.
 */
final class YearPool {

  private static final double MOST_LEFT = 0.3;
  private static final double LEAST_MOVE_KG = 1e-3;

  /** What there is now. */
  double kg;

  private double start;
  private double startBefore;
  private double changeBefore;
  private double left;
  private boolean second;

  /** Begins the first year. */
  void begin(double kgAtStart, double leftOfError) {
    kg = kgAtStart;
    start = kgAtStart;
    left = leftOfError;
    second = false;
  }

  /** Begins the first year where another ended. */
  void beginFrom(YearPool other) {
    begin(other.kg, other.left);
  }

  /** Whether the year ended where it began. */
  boolean repeats(double toleranceKg) {
    return Math.abs(kg - start) <= toleranceKg;
  }

  /** Begins the next year. */
  void goOn() {
    double change = kg - start;
    if (second && Math.abs(start - startBefore) > LEAST_MOVE_KG) {
      double q = 1 + (change - changeBefore) / (start - startBefore);
      left = q > 0 && q < MOST_LEFT ? q : 0;
    }
    second = true;
    startBefore = start;
    changeBefore = change;
    kg = Math.max(0, start + change / (1 - left));
    start = kg;
  }
}
