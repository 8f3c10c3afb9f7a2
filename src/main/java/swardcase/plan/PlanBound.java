package swardcase.plan;

import java.util.Arrays;

/**
 * A value that no pick among open choices can pass, by Lagrangean relaxation.
 *
 * <p>The value of a pick is a sum over years of a function of the year's {@link YearSums}. Suppose
 * the sums could be named freely, and each unit by which the choices fail to add up to them were
 * paid at a price m: the best of that is the best choice of every paddock alone at those prices,
 * plus the best sums of every year alone, less what the limits are worth. For any prices it is at
 * least the best value, so the least of many trials is taken: subgradient steps of Polyak's length,
 * each partly in the direction of the one before. Prices that prove a choice worse than the plan in
 * hand take it out of the game.
 */
final class PlanBound {

  /** Trials without a clearly lower bound after which steps become shorter. */
  private static final int PATIENCE = 20;

  private static final double SHORTER = 0.7;

  /** The part of a step that is the newest slope; the rest keeps the direction before. */
  private static final double NEWEST = 0.3;

  private final PlanTable table;
  private final PricedSums sums;
  private final Reach reach;
  private final Room room;
  private final YearCeiling[] year;
  private final double[] alone;
  private final double[] price;
  private final double[] bestPrice;
  private final double[] compact;
  private final double[] slope;
  private final double[] range;
  private final double[] direction;
  private final double[] state;
  private final double[] worth;
  private final double[] bestWorth;
  private final int[] pick;
  private final int[] bestPick;
  private final int[] picked;
  private double bound;
  private double length;

  PlanBound(PlanTable table) {
    this.table = table;
    sums = new PricedSums(table);
    reach = new Reach(table, sums);
    room = new Room(table, sums);
    year = new YearCeiling[table.years()];
    Arrays.setAll(year, t -> new YearCeiling(table, t));
    int size = table.years() * table.sums();
    price = new double[size];
    bestPrice = new double[size];
    state = new double[size];
    compact = new double[sums.size()];
    slope = new double[sums.size()];
    direction = new double[sums.size()];
    range = new double[sums.size()];
    worth = new double[table.choices()];
    bestWorth = new double[table.choices()];
    pick = new int[table.paddocks()];
    bestPick = new int[table.paddocks()];
    picked = new int[table.choices()];
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
    double[] slopes = new double[sums.length];
    double[] moved = sums.clone();
    double value = table.value(sums);
    for (int k = 0; k < sums.length; k++) {
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

  /** Narrows spans by limits. */
  Reach reach() {
    return reach;
  }

  /** Closes what passes a limit. */
  Room room() {
    return room;
  }

  /** What each open choice loses at the best prices, and what a better pick may lose. */
  Reach.Limit loss(Open open, double inHand) {
    double[] loss = new double[table.choices()];
    for (int i = 0; i < open.paddocks(); i++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int k = open.first(i); k < open.first(i + 1); k++) {
        most = Math.max(most, bestWorth[open.choice(k)]);
      }
      for (int k = open.first(i); k < open.first(i + 1); k++) {
        loss[open.choice(k)] = most - bestWorth[open.choice(k)];
      }
    }
    return new Reach.Limit(loss, bound - inHand);
  }

  /**
   * Lowers the bound from the given prices.
   *
   * @param open choices still in the game
   * @param span between what values the sums are sought
   * @param from prices to start from; not changed
   * @param inHand value that is sought to be proved best
   * @param about sums near which the bound is made tight
   * @param trials how many prices to try
   * @param step part of Polyak's step to start with
   */
  double of(
      Open open, Span span, double[] from, double inHand, double[] about, int trials, double step) {
    setCeilings(span, about);
    System.arraycopy(from, 0, price, 0, price.length);
    project();
    Arrays.fill(picked, 0);
    bound = Double.POSITIVE_INFINITY;
    length = step;
    int stalled = 0;
    Arrays.fill(direction, 0);
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
        length *= SHORTER;
        System.arraycopy(bestPrice, 0, price, 0, price.length);
        tryPrices(open);
        Arrays.fill(direction, 0);
      }
      if (bound <= inHand || !step(length * (tried - inHand))) {
        break;
      }
    }
    return bound;
  }

  private void setCeilings(Span span, double[] about) {
    for (YearCeiling ceiling : year) {
      ceiling.setRanges(span);
      ceiling.clearWeights(about);
    }
    for (YearCeiling ceiling : year) {
      ceiling.shareOut(year);
    }
    for (YearCeiling ceiling : year) {
      ceiling.setLevel();
    }
    for (int j = 0; j < range.length; j++) {
      range[j] = span.high()[sums.place(j)] - span.low()[sums.place(j)];
    }
  }

  private void keepBest(double tried) {
    bound = tried;
    System.arraycopy(price, 0, bestPrice, 0, price.length);
    System.arraycopy(worth, 0, bestWorth, 0, worth.length);
    System.arraycopy(pick, 0, bestPick, 0, pick.length);
  }

  private double tryPrices(Open open) {
    for (int j = 0; j < compact.length; j++) {
      compact[j] = price[sums.place(j)];
    }
    double sum = 0;
    Arrays.fill(slope, 0);
    for (int i = 0; i < open.paddocks(); i++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int k = open.first(i); k < open.first(i + 1); k++) {
        int c = open.choice(k);
        worth[c] = alone[c] + sums.priced(c, compact);
        if (worth[c] > most) {
          most = worth[c];
          pick[i] = c;
        }
      }
      sum += most;
      sums.add(pick[i], slope);
    }
    for (YearCeiling ceiling : year) {
      sum += ceiling.most(price, state);
    }
    for (int j = 0; j < slope.length; j++) {
      int k = sums.place(j);
      if (sums.sign(j) != 0) {
        state[k] = sums.sign(j) < 0 ? table.most(k) : table.least(k);
        sum -= price[k] * state[k];
      }
      slope[j] -= state[k];
    }
    return sum;
  }

  /** A step against the slope; false if there is nowhere to go. */
  private boolean step(double length) {
    double square = 0;
    for (int j = 0; j < slope.length; j++) {
      direction[j] = NEWEST * slope[j] + (1 - NEWEST) * direction[j];
    }
    for (int j = 0; j < slope.length; j++) {
      if (range[j] > 0) {
        square += direction[j] / range[j] * (direction[j] / range[j]);
      }
    }
    if (square < 1e-18) {
      return false;
    }
    for (int j = 0; j < slope.length; j++) {
      if (range[j] > 0) {
        price[sums.place(j)] -= length / square * direction[j] / range[j] / range[j];
      }
    }
    project();
    return true;
  }

  /** A limit's price has one sign: what uses it up can only cost. */
  private void project() {
    int j = 0;
    for (int k = 0; k < price.length; k++) {
      if (j >= sums.size() || sums.place(j) != k) {
        price[k] = 0;
        continue;
      }
      if (sums.sign(j) < 0) {
        price[k] = Math.min(0, price[k]);
      } else if (sums.sign(j) > 0) {
        price[k] = Math.max(0, price[k]);
      }
      j++;
    }
  }

  /** The prices of the lowest bound. */
  double[] prices() {
    return bestPrice.clone();
  }

  /** The part of Polyak's step that was taken last. */
  double step() {
    return length;
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
