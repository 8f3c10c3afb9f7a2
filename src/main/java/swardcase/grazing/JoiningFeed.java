package swardcase.grazing;

import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.reproduction.FlockEffect;

/**
 * How much feed each mob must find in the weeks before and during joining, on paddocks it is not
 * held off.
 *
 * <pre>
 * feed on offer when the weeks start + growth in them, on open paddocks >= what the mob eats then
 * </pre>
 *
 * <p>All three are those of the feed budget as the farm stands, mean over season types. Feed lies
 * spread over the paddocks as growth does. Ewes and other stock share what is eaten by appetite,
 * mobs by liveweight, and mobs share a paddock that several graze in the same way. Nothing is set
 * aside for a stubble that should be left, nor for a poor season, so this is the least that is
 * needed, not what is comfortable. A mob that finds less as things are need not find more.
 */
public final class JoiningFeed {

  private final int[] ewes;
  private final double[] liveweightKg;
  private final double[][] part;
  private final double[] needed;

  /** For a farm whose mob g grazes paddock i where {@code grazes[g][i]}. */
  public JoiningFeed(Farm farm, boolean[][] grazes) {
    ewes = farm.mobs().stream().mapToInt(Mob::ewes).toArray();
    liveweightKg = farm.mobs().stream().mapToDouble(mob -> mob.liveweightKg().likely()).toArray();
    needed = new double[ewes.length];
    part = new double[ewes.length][];
    for (int g = 0; g < part.length; g++) {
      part[g] = new double[grazes[g].length];
      for (int i = 0; i < part[g].length; i++) {
        part[g][i] = part(grazes, g, i);
      }
    }
  }

  /** A mob's part of a paddock among the mobs that graze it. */
  public double part(int mob, int paddock) {
    return part[mob][paddock];
  }

  private double part(boolean[][] grazes, int mob, int paddock) {
    double all = 0;
    for (int g = 0; g < ewes.length; g++) {
      all += grazes[g][paddock] ? weight(g) : 0;
    }
    return grazes[mob][paddock] ? weight(mob) / all : 0;
  }

  private double weight(int mob) {
    return ewes[mob] * liveweightKg[mob];
  }

  /**
   * Takes the feed year of a run, each array by half-month and per ha of farm.
   *
   * @param effect the mob, which knows its weeks
   * @param onOffer feed on offer at the end
   * @param growth growth
   * @param eatenByEwes what the ewes eat
   * @param taken feed of all paddocks, in hectares of ordinary growth
   * @param openNow feed of the mob's paddocks as things are, in that unit
   */
  public void set(
      int mob,
      FlockEffect effect,
      double[] onOffer,
      double[] growth,
      double[] eatenByEwes,
      double taken,
      double openNow) {
    double there = 0;
    double eaten = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      if (!effect.isHeld(p)) {
        continue;
      }
      int before = Math.floorMod(p - 1, HalfMonths.COUNT);
      there += growth[p] + (effect.isHeld(before) ? 0 : onOffer[before]);
      eaten += eatenByEwes[p];
    }
    double all = 0;
    for (int g = 0; g < ewes.length; g++) {
      all += weight(g);
    }
    needed[mob] = there > 0 ? Math.min(openNow, taken * eaten * weight(mob) / all / there) : 0;
  }

  /** Feed that a mob must find open, in hectares of ordinary growth. */
  public double needed(int mob) {
    return needed[mob];
  }
}
