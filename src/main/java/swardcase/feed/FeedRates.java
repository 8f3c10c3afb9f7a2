package swardcase.feed;

import swardcase.farm.HalfMonths;
import swardcase.farm.SeasonType;

/**
 * What a farm's half-months do with feed at one set of uncertain numbers and of ewe numbers, worked
 * out once for all the years that are run with them. Made and set by {@link FeedBudget}, for one
 * thread.
 */
public final class FeedRates {

  private static final int SEASONS = SeasonType.values().length;

  /** Numbers of a half-month stand side by side. */
  static final int NUMBERS = 8;

  static final int EATEN_GREEN_KG = 0;
  static final int EATEN_DRY_KG = 1;
  static final int DYING_SHARE = 2;
  static final int DECAYING_SHARE = 3;
  static final int NEED_MJ = 4;
  static final int NEED_MET_MJ = 5;
  static final int GREEN_MJ_PER_KG = 6;
  static final int DRY_MJ_PER_KG = 7;

  /** By season type: the numbers of every half-month. */
  final double[][] of = new double[SEASONS][HalfMonths.COUNT * NUMBERS];

  /** By season type: growth of every half-month before what holds it back, kg dry matter per ha. */
  final double[][] growthKg = new double[SEASONS][HalfMonths.COUNT];

  /** By season type: quality of the green feed that is eaten, its clover left out. */
  final double[][] greenQuality = new double[SEASONS][HalfMonths.COUNT];

  /** By season type: quality of the dry feed that is eaten, its clover left out. */
  final double[][] dryQuality = new double[SEASONS][HalfMonths.COUNT];

  // What the half-months of one season have, while they are worked out.
  final double[] greenDigestibility = new double[HalfMonths.COUNT];
  final double[] dryDigestibility = new double[HalfMonths.COUNT];
  final double[] dyingPerMonth = new double[HalfMonths.COUNT];
  final double[] dryLostPerMonth = new double[HalfMonths.COUNT];

  double leafAreaBoundKg;

  // Below the bound growth is this part of full growth, and so much more for each kg of green.
  double growthOnBareGround;
  double growthPerKg;

  FeedRates() {}
}
