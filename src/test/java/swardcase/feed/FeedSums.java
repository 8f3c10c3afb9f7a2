package swardcase.feed;

import java.util.Arrays;

/** Sums over a year of the feed budget, per hectare of farm. */
public final class FeedSums {

  private FeedSums() {}

  /** Energy bought, MJ ME/ha. */
  public static double bought(FeedResult result) {
    return result.year.boughtMjPerHa();
  }

  /** Energy bought in the half-months marked true, MJ ME/ha. */
  public static double bought(FeedResult result, boolean[] halfMonths) {
    double sum = 0;
    for (int p = 0; p < halfMonths.length; p++) {
      sum += halfMonths[p] ? result.boughtMjPerHa[p] : 0;
    }
    return sum;
  }

  /** Feed nobody ate: all dry feed that decayed, kg DM/ha. */
  public static double uneaten(FeedResult result) {
    return result.year.uneatenKgDmPerHa();
  }

  /** Pasture grown, kg DM/ha. */
  static double grown(FeedResult result) {
    return Arrays.stream(result.growthKgDmPerHa).sum();
  }

  /** Pasture eaten, green and dry, kg DM/ha. */
  static double eaten(FeedResult result) {
    return Arrays.stream(result.eatenGreenKgDmPerHa).sum()
        + Arrays.stream(result.eatenDryKgDmPerHa).sum();
  }

  /** Green and dry feed on offer on 31 December, kg DM/ha. */
  static double carriedOut(FeedResult result) {
    int last = result.greenKgDmPerHa.length - 1;
    return result.greenKgDmPerHa[last] + result.dryKgDmPerHa[last];
  }
}
