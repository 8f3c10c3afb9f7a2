package swardcase.grazing;

import swardcase.farm.HalfMonths;
import swardcase.feed.FeedSurface;
import swardcase.feed.GrowthYear;
import swardcase.reproduction.FlockEffect;

/**
 * Feed that is lost on paddocks that ewes are held off, because other stock cannot take it. Other
 * stock are taken to eat their appetite from held paddocks in the held weeks.
 *
 * <pre>
 *   lost = max(0, held share x growth in the held weeks - appetite of other stock then) / growth of the year
 * </pre>
 *
 * <p>Weeks count by the share of all ewes that are held off in them; the rest may graze. It hangs
 * on nothing that is drawn.
 */
public final class HeldFeed {

  private double grownInYear;
  private double grownWhenHeld;
  private double appetiteWhenHeld;

  /** For a farm with these mobs, each with its own held weeks. */
  public HeldFeed(GrowthYear year, FeedSurface feed, FlockEffect[] flock) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      grownInYear += year.growthKgDmPerHa(p);
      double held = heldShareOfEwes(flock, p);
      grownWhenHeld += held * year.growthKgDmPerHa(p);
      appetiteWhenHeld += held * feed.otherAppetiteKgDmPerHa(p);
    }
  }

  private static double heldShareOfEwes(FlockEffect[] flock, int halfMonth) {
    double held = 0;
    double all = 0;
    for (FlockEffect effect : flock) {
      all += effect.mob().ewes();
      held += effect.isHeld(halfMonth) ? effect.mob().ewes() : 0;
    }
    return all > 0 ? held / all : 0;
  }

  /** Growth lost, as a share of the farm's, where paddocks of this share of its feed are held. */
  public double lost(double heldShare) {
    return Math.max(0, heldShare * grownWhenHeld - appetiteWhenHeld) / grownInYear;
  }
}
