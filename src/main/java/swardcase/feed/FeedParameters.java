package swardcase.feed;

import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.tables.Tables;

/**
 * The uncertain numbers of a run of the feed budget. Reusable by one thread: set anew for each
 * draw, which allocates nothing.
 */
public final class FeedParameters {

  private static final FeedNumber[] NUMBERS = FeedNumber.values();

  private final double[] values = new double[NUMBERS.length];
  private final double[] breakLater = new double[SeasonType.values().length];

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
    for (SeasonGrowth season : farm.feedYear().seasons()) {
      likely.setBreak(season.type().ordinal(), season.breakLater());
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

  /** Takes by how many half-months the break of a season comes later; negative is earlier. */
  public void setBreak(int season, double halfMonthsLater) {
    breakLater[season] =
        Check.inRange(halfMonthsLater, -24, 24, "half-months by which the break moves");
  }

  /** Half-months by which the break of a season comes later than usual; negative is earlier. */
  public double breakLater(int season) {
    return breakLater[season];
  }
}
