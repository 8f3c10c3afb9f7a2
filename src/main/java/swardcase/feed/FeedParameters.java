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

  private double conditionDeficit;
  private double leafAreaPenalty;
  private double leafAreaBoundKgDmPerHa;
  private double demandMultiplier;
  private double dryLossMultiplier;
  private final double[] breakLater = new double[SeasonType.values().length];

  /** Takes five numbers, as {@link #set} does; every season has the break of a usual year. */
  public FeedParameters(
      double conditionDeficit,
      double leafAreaPenalty,
      double leafAreaBoundKgDmPerHa,
      double demandMultiplier,
      double dryLossMultiplier) {
    set(
        conditionDeficit,
        leafAreaPenalty,
        leafAreaBoundKgDmPerHa,
        demandMultiplier,
        dryLossMultiplier);
  }

  /** The likely values of farm and tables. */
  public static FeedParameters likely(Farm farm, Tables tables) {
    FeedParameters likely = of(farm, tables);
    for (SeasonGrowth season : farm.feedYear().seasons()) {
      likely.setBreak(season.type().ordinal(), season.breakLater());
    }
    return likely;
  }

  private static FeedParameters of(Farm farm, Tables tables) {
    return new FeedParameters(
        farm.management().conditionDeficit().likely(),
        tables.parameter("feed.leaf-area-penalty").likely(),
        tables.parameter("feed.leaf-area-bound").likely(),
        tables.parameter("feed.demand-multiplier").likely(),
        tables.parameter("feed.dry-loss-multiplier").likely());
  }

  /**
   * Takes five numbers.
   *
   * @param conditionDeficit share of daily need the stock may take from their backs: 10 % is 0.10
   * @param leafAreaPenalty share of growth lost on bare ground: 0.5 halves it
   * @param leafAreaBoundKgDmPerHa green feed at and above which growth is full, kg DM/ha
   * @param demandMultiplier factor on energy need, for the disagreement between energy systems
   * @param dryLossMultiplier factor on the monthly loss of dry feed
   */
  public void set(
      double conditionDeficit,
      double leafAreaPenalty,
      double leafAreaBoundKgDmPerHa,
      double demandMultiplier,
      double dryLossMultiplier) {
    this.conditionDeficit = Check.inRange(conditionDeficit, 0, 1, "deficit carried by the ewes");
    this.leafAreaPenalty = Check.inRange(leafAreaPenalty, 0, 1, "leaf-area penalty");
    this.leafAreaBoundKgDmPerHa = Check.positive(leafAreaBoundKgDmPerHa, "leaf-area bound");
    this.demandMultiplier = Check.inRange(demandMultiplier, 0, 10, "multiplier of demand");
    this.dryLossMultiplier = Check.inRange(dryLossMultiplier, 0, 10, "multiplier of dry loss");
  }

  /** Share of daily need the stock may take from their backs. */
  public double conditionDeficit() {
    return conditionDeficit;
  }

  /** Share of growth lost on bare ground. */
  public double leafAreaPenalty() {
    return leafAreaPenalty;
  }

  /** Green feed at and above which growth is full, kg DM/ha. */
  public double leafAreaBoundKgDmPerHa() {
    return leafAreaBoundKgDmPerHa;
  }

  /** Factor on energy need. */
  public double demandMultiplier() {
    return demandMultiplier;
  }

  /** Factor on the monthly loss of dry feed. */
  public double dryLossMultiplier() {
    return dryLossMultiplier;
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
