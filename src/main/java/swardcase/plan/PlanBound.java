package swardcase.plan;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A value that no pick among some choices can pass, by Lagrangean relaxation.
 *
 * <p>The value of a pick is a sum over years of a function of the year's {@link YearSums}. Suppose
 * the sums could be named freely, and each unit by which the choices fail to add up to them were
 * paid at a price m: the best of that is the best choice of every paddock alone at those prices,
 * plus the best sums of every year alone, less what the limits are worth. For any prices it is at
 * least the best value, so the least of many trials is taken (subgradient steps of Polyak's
 * length). Prices that prove a choice worse than the plan in hand take it out of the game.
 */
final class PlanBound {

  private static final int PATIENCE = 6;

  private final PlanTable table;
  private final int size;
  private final YearCeiling[] year;
  private final Reach[] reach;
  private final double[] lowest;
  private final double[] highest;
  private final double[] low;
  private final double[] high;
  private final double[] price;
  private final double[] slope;
  private final double[] bestPrice;
  private final double[] alone;
  private final double[] worth;
  private final double[] bestWorth;
  private final int[] pick;
  private final int[] bestPick;
  private final int[] picked;
  private final double[] state;
  private double bound;
  private double inHand;

  PlanBound(PlanTable table) {
    this.table = table;
    size = table.years() * table.sums();
    year = new YearCeiling[table.years()];
    reach = new Reach[year.length];
    for (int t = 0; t < year.length; t++) {
      year[t] = new YearCeiling(table, t);
      reach[t] = new Reach(table);
    }
    lowest = new double[size];
    highest = new double[size];
    Arrays.fill(lowest, Double.NEGATIVE_INFINITY);
    Arrays.fill(highest, Double.POSITIVE_INFINITY);
    low = new double[size];
    high = new double[size];
    price = new double[size];
    slope = new double[size];
    bestPrice = new double[size];
    state = new double[size];
    worth = new double[table.choices()];
    bestWorth = new double[table.choices()];
    pick = new int[table.paddocks()];
    picked = new int[table.choices()];
    bestPick = new int[table.paddocks()];
    alone = new double[table.choices()];
    for (int c = 0; c < alone.length; c++) {
      alone[c] = table.own(c);
      for (int t = 0; t < table.years(); t++) {
        int at = t * table.sums();
        double margin = table.added(c, at + YearSums.MARGIN);
        alone[c] += table.discount(t) * (margin - table.added(c, at + YearSums.COST));
      }
    }
  }

  /**
   * Prices at which a pick looks best to first order: the slopes of its value.
   *
   * @param sums of the pick
   */
  double[] slopes(double[] sums) {
    double[] slopes = new double[size];
    double[] moved = sums.clone();
    double value = table.value(sums);
    for (int k = 0; k < size; k++) {
      int sum = k % table.sums();
      if (sum == YearSums.COST || sum == YearSums.MARGIN || sum == YearSums.OUT) {
        continue;
      }
      double step = 1e-3 * Math.max(1, Math.abs(sums[k]));
      moved[k] = sums[k] + step;
      double slope = (table.value(moved) - value) / step;
      moved[k] = sums[k];
      int mob = YearSums.mob(sum);
      int ofFirst =
          mob < 0 ? k : k - YearSums.at(mob, 0) + YearSums.at(table.run().firstAlike(mob), 0);
      slopes[ofFirst] += slope;
    }
    return slopes;
  }

  /**
   * Lowers the bound from the given prices.
   *
   * @param open choices still in the game, at least one for each paddock
   * @param from prices to start from; not changed
   * @param inHand value that is sought to be proved best
   * @param sumsInHand sums of that plan, near which the bound is made tight
   * @param trials how many prices to try
   * @param first whether these are all choices still in the game, so that what is found of their
   *     reach holds for later calls too
   * @param again whether the call before had the same open choices or more, so that its prices can
   *     narrow the reach: a better pick cannot lose at them more than the bound lies above the
   *     value
   */
  double of(
      boolean[] open,
      double[] from,
      double inHand,
      double[] sumsInHand,
      int trials,
      boolean first,
      boolean again) {
    setReach(open, first, again);
    for (YearCeiling ceiling : year) {
      ceiling.setRanges(low, high);
      ceiling.clearWeights(sumsInHand);
    }
    for (YearCeiling ceiling : year) {
      ceiling.shareOut(year);
    }
    for (YearCeiling ceiling : year) {
      ceiling.setLevel();
    }
    System.arraycopy(from, 0, price, 0, size);
    project();
    Arrays.fill(picked, 0);
    this.inHand = inHand;
    bound = Double.POSITIVE_INFINITY;
    double length = 1;
    int stalled = 0;
    for (int trial = 0; trial < trials; trial++) {
      double tried = tryPrices(open);
      if (2 * trial >= trials) {
        for (int c : pick) {
          picked[c]++;
        }
      }
      if (tried < bound) {
        boolean clearly = !(bound - tried < 1e-3 * Math.max(1, bound - inHand));
        stalled = clearly ? 0 : stalled + 1;
        keepBest(tried);
      } else {
        stalled++;
      }
      if (stalled > PATIENCE) {
        stalled = 0;
        length /= 2;
        System.arraycopy(bestPrice, 0, price, 0, size);
        tryPrices(open);
      }
      if (bound <= inHand || !step(length * (tried - inHand))) {
        break;
      }
    }
    return bound;
  }

  private void keepBest(double tried) {
    bound = tried;
    System.arraycopy(price, 0, bestPrice, 0, size);
    System.arraycopy(worth, 0, bestWorth, 0, worth.length);
    System.arraycopy(pick, 0, bestPick, 0, pick.length);
  }

  private void setReach(boolean[] open, boolean first, boolean again) {
    reach[0].of(open, low, high);
    for (int k = 0; k < size; k++) {
      low[k] = Math.max(low[k], lowest[k]);
      high[k] = Math.min(high[k], highest[k]);
    }
    Reach.Limit loss = loss();
    // A year has sums and a workspace of its own, so the years need not wait for one another.
    IntStream.range(0, year.length)
        .parallel()
        .forEach(
            t -> {
              year[t].startReach();
              if (first && !again) {
                year[t].limit(reach[t], open, low, high);
              }
              if (again) {
                year[t].limit(reach[t], loss, open, low, high);
              }
              if (first) {
                year[t].keepReach();
              }
            });
    if (first) {
      System.arraycopy(low, 0, lowest, 0, size);
      System.arraycopy(high, 0, highest, 0, size);
    }
  }

  /** What each choice loses at the best prices, and what a pick may lose and still be better. */
  private Reach.Limit loss() {
    double[] loss = new double[table.choices()];
    for (int c = 0; c < loss.length; c++) {
      loss[c] = bestWorth[bestPick[table.paddock(c)]] - bestWorth[c];
    }
    return new Reach.Limit(loss, bound - inHand);
  }

  private double tryPrices(boolean[] open) {
    double sum = 0;
    Arrays.fill(slope, 0);
    for (int i = 0; i < table.paddocks(); i++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        if (!open[c]) {
          continue;
        }
        worth[c] = alone[c] + table.priced(c, price);
        if (worth[c] > most) {
          most = worth[c];
          pick[i] = c;
        }
      }
      sum += most;
      table.add(pick[i], 1, slope);
    }
    for (int t = 0; t < year.length; t++) {
      sum += year[t].most(price, state);
      for (int k = t * table.sums(); k < (t + 1) * table.sums(); k++) {
        if (isLimit(k)) {
          state[k] = limit(k);
          sum -= price[k] * state[k];
        }
      }
    }
    for (int k = 0; k < size; k++) {
      slope[k] -= state[k];
    }
    return sum;
  }

  private boolean isLimit(int k) {
    int sum = k % table.sums();
    return sum == YearSums.COST || sum == YearSums.OUT || YearSums.isSafe(sum);
  }

  private double limit(int k) {
    double limit = YearSums.isSafe(k % table.sums()) ? table.least(k) : table.most(k);
    return Double.isInfinite(limit) ? 0 : limit;
  }

  /** A step against the slope; false if there is nowhere to go. */
  private boolean step(double length) {
    double square = 0;
    for (int k = 0; k < size; k++) {
      double range = high[k] - low[k];
      if (range > 0 && isPriced(k)) {
        square += slope[k] / range * (slope[k] / range);
      }
    }
    if (square < 1e-18) {
      return false;
    }
    for (int k = 0; k < size; k++) {
      double range = high[k] - low[k];
      if (range > 0 && isPriced(k)) {
        price[k] -= length / square * slope[k] / range / range;
      }
    }
    project();
    return true;
  }

  private boolean isPriced(int k) {
    int sum = k % table.sums();
    int mob = YearSums.mob(sum);
    boolean alike = mob >= 0 && !YearSums.isSafe(sum) && table.run().firstAlike(mob) != mob;
    return !alike
        && sum != YearSums.MARGIN
        && !(sum == YearSums.COST && Double.isInfinite(table.most(k)))
        && !(YearSums.isSafe(sum) && Double.isInfinite(table.least(k)));
  }

  /** A limit's price has one sign: what uses it up can only cost. */
  private void project() {
    for (int k = 0; k < size; k++) {
      int sum = k % table.sums();
      if (!isPriced(k)) {
        price[k] = 0;
      } else if (sum == YearSums.COST || sum == YearSums.OUT) {
        price[k] = Math.min(0, price[k]);
      } else if (YearSums.isSafe(sum)) {
        price[k] = Math.max(0, price[k]);
      }
    }
  }

  /** The prices of the lowest bound. */
  double[] prices() {
    return bestPrice.clone();
  }

  /** The pick of every paddock alone at those prices; it may pass limits. */
  int[] pick() {
    return bestPick.clone();
  }

  /** How often each choice looked best in the second half of the trials. */
  int[] picked() {
    return picked.clone();
  }

  /** What a choice is worth apart from feed and flock: margins less costs, end value, effort. */
  double alone(int choice) {
    return alone[choice];
  }

  /** A value that no pick with this choice can pass. */
  double boundWith(int choice) {
    return bound - bestWorth[bestPick[table.paddock(choice)]] + bestWorth[choice];
  }
}
