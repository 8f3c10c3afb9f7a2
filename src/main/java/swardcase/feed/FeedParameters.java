package swardcase.feed;

import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
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
  private final double[] inLamb;
  private double legumeShare;

  private FeedParameters(int mobs) {
    inLamb = new double[mobs];
  }

  /** The likely values of farm and tables. */
  public static FeedParameters likely(Farm farm, Tables tables) {
    FeedParameters likely = new FeedParameters(farm.mobs().size());
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
    for (int mob = 0; mob < likely.inLamb.length; mob++) {
      likely.setInLamb(mob, farm.mobs().get(mob).pregnantPercent().likely() / 100);
    }
    double clover = 0;
    double weights = 0;
    for (Paddock paddock : farm.paddocks()) {
      double weight = paddock.areaHa() * paddock.growthIndex().likely();
      clover += weight * paddock.cloverShare().likely();
      weights += weight;
    }
    return likely.setLegumeShare(clover / weights);
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

  /** Takes the share of a mob's ewes that are in lamb, of those joined. */
  public void setInLamb(int mob, double share) {
    inLamb[mob] = Check.notNegative(share, "share of ewes in lamb");
  }

  /** Copies the shares of all mobs. */
  void keepInLamb(double[] into) {
    System.arraycopy(inLamb, 0, into, 0, inLamb.length);
  }

  /** Share of a mob's ewes that are in lamb, of those joined. */
  public double inLamb(int mob) {
    return inLamb[mob];
  }

  /** Takes the clover share of what the farm's stock eat, from 0 to 1. */
  public FeedParameters setLegumeShare(double share) {
    legumeShare = Check.inRange(Math.min(1, share), 0, 1, "legume share");
    return this;
  }

  /** Clover share of what the farm's stock eat. */
  public double legumeShare() {
    return legumeShare;
  }
}
