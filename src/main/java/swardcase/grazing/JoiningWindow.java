package swardcase.grazing;

import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.feed.FeedSurface;
import swardcase.feed.GrowthYear;
import swardcase.reproduction.FlockEffect;

/**
 * Feed of the weeks before and during joining, taken together: what a mob needs then, what stock
 * leave of what is there, and what nobody eats where ewes are kept off.
 *
 * <pre>
 *   needed = feed of all paddocks x what the mob eats in its weeks / (feed on offer when they start + growth in them)
 *   used   = what all stock eat in them / that feed
 *   lost   = max(0, share closed to a mob x growth in its weeks - appetite of all others then) / growth of the year
 * </pre>
 *
 * <p>The first two are those of the feed budget as the farm stands, mean over season types; feed
 * lies spread over the paddocks as growth does, ewes and other stock share what is eaten by
 * appetite, mobs by liveweight. Weeks count for the third by the share of all ewes that are kept
 * off in them. A mob that eats 20 kg in its weeks of 200 that are there needs a tenth of the farm's
 * feed.
 */
public final class JoiningWindow {

  private final int[] ewes;
  private final double[] weight;
  private final double[] needed;
  private final double[] used;
  private double weightOfAll;
  private final boolean[] winter = new boolean[HalfMonths.COUNT];
  private double usedInWinter;
  private double grownInYear;
  private final double[] grownInWeeks;
  private final double[] appetiteInWeeks;
  private final double[] appetiteInYear;

  /** For a farm with these mobs, each with its own weeks. */
  public JoiningWindow(Farm farm, GrowthYear year, FeedSurface feed, FlockEffect[] flock) {
    int mobs = flock.length;
    boolean othersMove = farm.otherStock().stream().allMatch(OtherStock::mayMove);
    ewes = new int[mobs];
    weight = new double[mobs];
    needed = new double[mobs];
    used = new double[mobs];
    for (int p = 0; p < winter.length; p++) {
      winter[p] = farm.feedYear().winterMonths().contains(HalfMonths.month(p));
    }
    grownInWeeks = new double[mobs + 1];
    appetiteInWeeks = new double[mobs + 1];
    appetiteInYear = new double[mobs + 1];
    double all = 0;
    for (int g = 0; g < mobs; g++) {
      Mob mob = farm.mobs().get(g);
      ewes[g] = mob.ewes();
      weight[g] = mob.ewes() * mob.liveweightKg().likely();
      weightOfAll += weight[g];
      all += ewes[g];
    }
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      grownInYear += year.growthKgDmPerHa(p);
    }
    for (int kept = 0; kept <= mobs; kept++) {
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        double weeks = 0;
        double staying = 0;
        for (int g = 0; g < mobs; g++) {
          boolean isOff = kept == mobs || kept == g;
          double share = kept == mobs ? ewes[g] / all : 1;
          weeks += isOff && flock[g].isHeld(p) ? share : 0;
          staying += isOff ? 0 : part(g);
        }
        double appetite =
            staying * feed.eweAppetiteKgDmPerHa(p)
                + (othersMove ? feed.otherAppetiteKgDmPerHa(p) : 0);
        double grown = year.growthKgDmPerHa(p);
        grownInWeeks[kept] += weeks * grown;
        appetiteInWeeks[kept] += weeks * appetite;
        appetiteInYear[kept] += grown > 0 ? appetite : 0;
      }
    }
  }

  /**
   * Takes the feed year of a run, each array by half-month and per ha of farm.
   *
   * @param onOffer feed on offer at the end
   * @param growth growth
   * @param eaten what all stock eat
   * @param eatenByEwes what the ewes eat
   * @param taken feed of all paddocks, in hectares of ordinary growth
   */
  public void set(
      FlockEffect[] flock,
      double[] onOffer,
      double[] growth,
      double[] eaten,
      double[] eatenByEwes,
      double taken) {
    double thereInWinter = there(null, onOffer, growth);
    usedInWinter = thereInWinter > 0 ? Math.min(1, sum(null, eaten) / thereInWinter) : 1;
    for (int g = 0; g < flock.length; g++) {
      double there = there(flock[g], onOffer, growth);
      needed[g] = there > 0 ? taken * sum(flock[g], eatenByEwes) * part(g) / there : 0;
      used[g] = there > 0 ? Math.min(1, sum(flock[g], eaten) / there) : 1;
    }
  }

  /** Feed on offer when the weeks of a mob start, or winter does, and growth in them. */
  private double there(FlockEffect effect, double[] onOffer, double[] growth) {
    double there = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      if (isIn(effect, p)) {
        int before = Math.floorMod(p - 1, HalfMonths.COUNT);
        there += growth[p] + (isIn(effect, before) ? 0 : onOffer[before]);
      }
    }
    return there;
  }

  private double sum(FlockEffect effect, double[] of) {
    double sum = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      sum += isIn(effect, p) ? of[p] : 0;
    }
    return sum;
  }

  private boolean isIn(FlockEffect effect, int halfMonth) {
    return effect == null ? winter[halfMonth] : effect.isHeld(halfMonth);
  }

  /** A mob's part of what all ewes eat. */
  public double part(int mob) {
    return weight[mob] / weightOfAll;
  }

  /** Liveweight of a mob, kg, by which mobs share a paddock. */
  public double weightKg(int mob) {
    return weight[mob];
  }

  /** Feed that a mob needs in its weeks, in hectares of ordinary growth. */
  public double needed(int mob) {
    return needed[mob];
  }

  /**
   * Feed to spare for a mob in its weeks on paddocks it does not use, as a share of theirs: its
   * part of what all stock leave.
   */
  public double spare(int mob) {
    return (1 - used[mob]) * part(mob);
  }

  /** What all stock eat in a mob's weeks of what is there, as a share of it. */
  public double used(int mob) {
    return used[mob];
  }

  /** The same in the winter months, when green feed is shortest. */
  public double usedInWinter() {
    return usedInWinter;
  }

  /** {@link #spare} in winter. */
  public double spareInWinter(int mob) {
    return (1 - usedInWinter) * part(mob);
  }

  /**
   * Growth that nobody eats, as a share of the farm's in a year, where paddocks of these shares of
   * its feed are closed to a mob.
   *
   * @param mob the mob; the number of mobs for all of them together
   */
  public double lost(int mob, double beforeJoining, double whileGreen) {
    return (Math.max(0, beforeJoining * grownInWeeks[mob] - appetiteInWeeks[mob])
            + Math.max(0, whileGreen * grownInYear - appetiteInYear[mob]))
        / grownInYear;
  }
}
