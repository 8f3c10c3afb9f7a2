package swardcase.feed;

import swardcase.check.Check;
import swardcase.farm.Farm;
import swardcase.tables.Tables;

/**
 * The uncertain numbers of one run of the feed budget.
 *
 * @param conditionDeficit share of daily need the stock may take from their backs: 10 % is 0.10
 * @param leafAreaPenalty share of growth lost on bare ground: 0.5 halves it
 * @param leafAreaBoundKgDmPerHa green feed at and above which growth is full, kg DM/ha
 * @param demandMultiplier factor on energy need, for the disagreement between energy systems
 * @param dryLossMultiplier factor on the monthly loss of dry feed
 */
public record FeedParameters(
    double conditionDeficit,
    double leafAreaPenalty,
    double leafAreaBoundKgDmPerHa,
    double demandMultiplier,
    double dryLossMultiplier) {

  /** Checks ranges. */
  public FeedParameters {
    Check.inRange(conditionDeficit, 0, 0.5, "deficit carried by the ewes");
    Check.inRange(leafAreaPenalty, 0, 1, "leaf-area penalty");
    Check.positive(leafAreaBoundKgDmPerHa, "leaf-area bound");
    Check.inRange(demandMultiplier, 0, 3, "multiplier of demand");
    Check.inRange(dryLossMultiplier, 0, 5, "multiplier of dry loss");
  }

  /** The likely values of farm and tables. */
  public static FeedParameters likely(Farm farm, Tables tables) {
    return new FeedParameters(
        farm.management().conditionDeficit().likely(),
        tables.parameter("feed.leaf-area-penalty").likely(),
        tables.parameter("feed.leaf-area-bound").likely(),
        tables.parameter("feed.demand-multiplier").likely(),
        tables.parameter("feed.dry-loss-multiplier").likely());
  }
}
