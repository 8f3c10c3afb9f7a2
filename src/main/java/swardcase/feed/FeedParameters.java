package swardcase.feed;

import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.tables.Tables;

/**
 * The uncertain numbers of a run of the feed budget. Reusable by one thread: set anew for each
 * draw, which allocates nothing.
 */
public final class FeedParameters {

  private static final FeedNumber[] NUMBERS = FeedNumber.values();

  private final double[] values = new double[NUMBERS.length];

  private FeedParameters() {}

  /** The likely values of farm and tables. */
  public static FeedParameters likely(Farm farm, Tables tables) {
    FeedParameters likely = new FeedParameters();
    for (FeedNumber number : NUMBERS) {
      likely.set(
          number,
          number == FeedNumber.CONDITION_DEFICIT
              ? farm.management().conditionDeficit().likely()
              : tables.parameter(number.key()).likely());
    }
    return likely;
  }

  /** Takes one number, refused outside its limits. */
  public FeedParameters set(FeedNumber number, double value) {
    values[number.ordinal()] = Check.inRange(value, number.least(), number.most(), number.words());
    return this;
  }

  /** One number. */
  public double get(FeedNumber number) {
    return values[number.ordinal()];
  }
}
