package swardcase.joining;

/**
 * Who grazes where: for each group and half-month the share of its pasture that comes from each
 * paddock. What the shares leave is bought instead.
 */
final class Grazing {

  private final double[][][] share;

  /** Shares by group, half-month of the problem, paddock; not copied. */
  Grazing(double[][][] share) {
    this.share = share;
  }

  /** Share of a group's pasture in a half-month that comes from a paddock. */
  double share(int group, int halfMonth, int paddock) {
    return share[group][halfMonth][paddock];
  }

  /** Share of it that has to be bought on top of what the feed budget buys anyway. */
  double bought(int group, int halfMonth) {
    double sum = 0;
    for (double part : share[group][halfMonth]) {
      sum += part;
    }
    return Math.max(0, 1 - sum);
  }
}
