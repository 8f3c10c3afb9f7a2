package swardcase.feed;

/**
 * How much a unit more of something adds to what is bought in a year, by how much is bought
 * already: known at one point for each season type, read between them by straight lines, held
 * beyond them. The shorter a year, the more half-months of it there are in which what is needed has
 * to be bought. Mutable, for one thread.
 */
final class ShortageSlope {

  private final double[] boughtMj;
  private final double[] slope;
  private final double[] spare;
  private int count;

  /** For so many season types. */
  ShortageSlope(int seasons) {
    boughtMj = new double[seasons];
    slope = new double[seasons];
    spare = new double[seasons + 1];
  }

  void forget() {
    count = 0;
  }

  boolean isKnown() {
    return count == boughtMj.length;
  }

  /**
   * Puts in the next season type.
   *
   * @param bought MJ/ha in the year as the farm stands
   * @param boughtMore MJ/ha that a unit adds to it
   * @param spareMore kg/ha that a unit adds to the feed nobody eats
   */
  void put(int season, double bought, double boughtMore, double spareMore) {
    int at = count++;
    while (at > 0 && boughtMj[at - 1] > bought) {
      boughtMj[at] = boughtMj[at - 1];
      slope[at] = slope[at - 1];
      at--;
    }
    boughtMj[at] = bought;
    slope[at] = boughtMore;
    spare[season] = spareMore;
  }

  /** Works out the mean of the season types, which stands after the last of them. */
  void finish(double[] chance) {
    int mean = chance.length;
    spare[mean] = 0;
    for (int season = 0; season < mean; season++) {
      spare[mean] += chance[season] * spare[season];
    }
  }

  /** MJ/ha that a unit adds where so much is bought, MJ/ha. */
  double at(double bought) {
    int last = boughtMj.length - 1;
    if (bought <= boughtMj[0]) {
      return slope[0];
    }
    for (int k = 1; k <= last; k++) {
      if (bought < boughtMj[k]) {
        double share = (bought - boughtMj[k - 1]) / (boughtMj[k] - boughtMj[k - 1]);
        return slope[k - 1] + share * (slope[k] - slope[k - 1]);
      }
    }
    return slope[last];
  }

  /** Kg dry matter per ha that a unit adds to what nobody eats, in a season type or their mean. */
  double spare(int season) {
    return spare[season];
  }
}
