package swardcase.feed;

import swardcase.farm.HalfMonths;

/**
 * One year of the feed budget per hectare of farm, by half-month. Mutable: made once, filled by
 * every run of {@link FeedBudget}, never shared between threads. A run begins by overwriting what
 * is in it, so a result does not depend on what was computed before.
 */
public final class FeedResult {

  final RepeatingYear year = new RepeatingYear();

  /** Pasture grown, kg DM/ha. */
  public final double[] growthKgDmPerHa = new double[HalfMonths.COUNT];

  /** Green feed on offer at the end of the half-month, kg DM/ha. */
  public final double[] greenKgDmPerHa = new double[HalfMonths.COUNT];

  /** Dry feed on offer at the end of the half-month, kg DM/ha. */
  public final double[] dryKgDmPerHa = new double[HalfMonths.COUNT];

  /** Green feed eaten, kg DM/ha. */
  public final double[] eatenGreenKgDmPerHa = new double[HalfMonths.COUNT];

  /** Dry feed eaten, kg DM/ha. */
  public final double[] eatenDryKgDmPerHa = new double[HalfMonths.COUNT];

  /** Green feed that died and became dry feed, kg DM/ha. */
  public final double[] diedKgDmPerHa = new double[HalfMonths.COUNT];

  /** Dry feed lost to decay, kg DM/ha. */
  public final double[] decayedKgDmPerHa = new double[HalfMonths.COUNT];

  /** Energy the stock need at constant condition, MJ ME/ha. */
  public final double[] demandMjPerHa = new double[HalfMonths.COUNT];

  /** Energy eaten from pasture, MJ ME/ha. */
  public final double[] eatenMjPerHa = new double[HalfMonths.COUNT];

  /** Energy bought as supplement, MJ ME/ha. */
  public final double[] boughtMjPerHa = new double[HalfMonths.COUNT];
}
