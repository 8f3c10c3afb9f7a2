package swardcase.feed;

import swardcase.check.Check;
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

  /** Years run until the year repeated itself. */
  public int yearsToRepeat() {
    return year.yearsToRepeat();
  }

  /** Whether the year repeats itself. */
  public boolean repeats() {
    return year.repeats();
  }

  /** Energy bought over the year, MJ ME/ha. */
  public double boughtMjPerHa() {
    return year.boughtMjPerHa();
  }

  /** Energy bought in the half-months marked true, MJ ME/ha. */
  public double boughtMjPerHa(boolean[] halfMonths) {
    Check.that(
        halfMonths.length == HalfMonths.COUNT,
        "marks must be %s, but were %s",
        HalfMonths.COUNT,
        halfMonths.length);
    double sum = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      if (halfMonths[p]) {
        sum += boughtMjPerHa[p];
      }
    }
    return sum;
  }

  /** Pasture grown over the year, kg DM/ha. */
  public double grownKgDmPerHa() {
    return sum(growthKgDmPerHa);
  }

  /** Pasture eaten over the year, green and dry, kg DM/ha. */
  public double eatenKgDmPerHa() {
    return sum(eatenGreenKgDmPerHa) + sum(eatenDryKgDmPerHa);
  }

  /**
   * Feed nobody ate in the year, kg DM/ha: all dry feed that decayed. In a year that repeats it is
   * what was grown less what was eaten.
   */
  public double uneatenKgDmPerHa() {
    return year.uneatenKgDmPerHa();
  }

  /**
   * Green feed that died uneaten in the year, kg DM/ha: the most that further stock could have
   * taken while it was green. Part of it is eaten later as dry feed, so it is more than {@link
   * #uneatenKgDmPerHa} in some years and no value of it should be counted twice.
   */
  public double spareGreenKgDmPerHa() {
    return sum(diedKgDmPerHa);
  }

  /** Green and dry feed on offer on 1 January, kg DM/ha. */
  public double carriedInKgDmPerHa() {
    return year.carriedInKgDmPerHa();
  }

  /** Green and dry feed on offer on 31 December, kg DM/ha. */
  public double carriedOutKgDmPerHa() {
    return greenKgDmPerHa[HalfMonths.COUNT - 1] + dryKgDmPerHa[HalfMonths.COUNT - 1];
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
