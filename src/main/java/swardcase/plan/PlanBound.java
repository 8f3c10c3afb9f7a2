package swardcase.plan;

import java.util.Arrays;

/**
 * A value that no pick among open choices can pass, by Lagrangean relaxation.
 *
 * <p>The value of a pick is a sum over years of a function of the year's {@link YearSums}. Suppose
 * the sums could be named freely, and each unit by which the choices fail to add up to them were
 * paid at a price m: the best of that is the best choice of every paddock alone at those prices,
 * plus the best sums of every year alone, less what the limits are worth. For any prices it is at
 * least the best value, so the least of many trials is taken (subgradient steps of Polyak's
 * length). Prices that prove a choice worse than the plan in hand take it out of the game.
 */
final class PlanBound {

  static double DEFLECT = Double.parseDouble(System.getProperty("deflect", "1"));
  static int PATIENCE = Integer.getInteger("patience", 3);
  static double SHRINK = Double.parseDouble(System.getProperty("shrink", "0.5"));

  private final PlanTable table;
  private final PricedSums sums;
  private final Reach reach;
  private final YearCeiling[] year;
  private final double[] alone;
  private final double[] price;
  private final double[] bestPrice;
  private final double[] compact;
  private final double[] slope;
  private final double[] range;
  private final double[] direction;
  private final double[] mean;
  private final double[] state;
  private final double[] worth;
  private final double[] bestWorth;
  private final double[] mostWorth;
  private final int[] pick;
  private final int[] bestPick;
  private final int[] picked;
  private double bound;
  private double length;
  long work;
  static long TRIALS, CALLS;

  PlanBound(PlanTable table) {
    this.table = table;
    sums = new PricedSums(table);
    reach = new Reach(table, sums);
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
    mean = new double[sums.size()];
    worth = new double[table.choices()];
    bestWorth = new double[table.choices()];
    mostWorth = new double[table.paddocks()];
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

  /** Narrows a span to what open choices reach; false if there is nothing left in it. */
  boolean narrow(Open open, Span span) {
    reach.narrow(open, span);
    return !isEmpty(span);
  }

  private boolean isEmpty(Span span) {
    for (int j = 0; j < sums.size(); j++) {
      int k = sums.place(j);
      if (sums.sign(j) == 0 && span.low()[k] > span.high()[k] + 1e-6 * (1 + Math.abs(span.high()[k]))) {
        return true;
      }
    }
    return false;
  }

  /** Narrows a span by the limits of the farm. */
  void narrowByLimits(Open open, Span span) {
    for (int t = 0; t < year.length; t++) {
      for (Reach.Limit limit : limits(t)) {
        if (Double.isFinite(limit.capacity())) {
          reach.narrow(open, limit, t, span);
        }
      }
    }
  }

  private Iterable<Reach.Limit> limits(int t) {
    java.util.List<Reach.Limit> limits = new java.util.ArrayList<>();
    limits.add(limit(t, t, YearSums.OUT, 1));
    boolean free = Double.isInfinite(table.most(t * table.sums() + YearSums.COST));
    limits.add(limit(0, t, free ? YearSums.OUT : YearSums.COST, 1));
    for (int g = 0; g < table.run().mobs(); g++) {
      if (table.run().firstAlike(g) == g) {
        limits.add(limit(t, t, YearSums.at(g, YearSums.SAFE), -1));
      }
    }
    return limits;
  }

  private Reach.Limit limit(int from, int to, int sum, double sign) {
    double[] use = new double[table.choices()];
    double capacity = 0;
    for (int t = from; t <= to; t++) {
      int k = t * table.sums() + sum;
      capacity += sign > 0 ? table.most(k) : -table.least(k);
      for (int c = 0; c < use.length; c++) {
        use[c] += sign * table.added(c, k);
      }
    }
    return new Reach.Limit(use, capacity);
  }

  /** Narrows a span to what can be reached without losing the lead at the best prices. */
  boolean narrowByLoss(Open open, double inHand, Span span) {
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
    Reach.Limit limit = new Reach.Limit(loss, bound - inHand);
    for (int t = 0; t < year.length; t++) {
      reach.narrow(open, limit, t, span);
    }
    return !isEmpty(span);
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
   * @param firstLength part of Polyak's step to start with
   */
  double of(
      Open open,
      Span span,
      double[] from,
      double inHand,
      double[] about,
      int trials,
      double firstLength) {
    setCeilings(span, about);
    System.arraycopy(from, 0, price, 0, price.length);
    project();
    Arrays.fill(picked, 0);
    Arrays.fill(mean, 0);
    bound = Double.POSITIVE_INFINITY;
    length = firstLength;
    CALLS++;
    int stalled = 0;
    Arrays.fill(direction, 0);
    for (int trial = 0; trial < trials; trial++) {
      TRIALS++;
      double tried = tryPrices(open);
      if (2 * trial >= trials) {
        for (int c : pick) {
          picked[c]++;
        }
      }
      if (tried < bound) {
        boolean clearly = !(bound - tried < 1e-3 * Math.max(1, bound - inHand));
        stalled = clearly ? 0 : stalled + 1;
        keepBest(tried, open);
      } else {
        stalled++;
      }
      if (stalled > PATIENCE) {
        stalled = 0;
        length *= SHRINK;
        System.arraycopy(bestPrice, 0, price, 0, price.length);
        tryPrices(open);
        Arrays.fill(direction, 0);
        TRIALS++;
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

  private void keepBest(double tried, Open open) {
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
      direction[j] = DEFLECT * slope[j] + (1 - DEFLECT) * direction[j];
      slope[j] = direction[j];
    }
    for (int j = 0; j < slope.length; j++) {
      if (range[j] > 0) {
        square += slope[j] / range[j] * (slope[j] / range[j]);
      }
    }
    if (square < 1e-18) {
      return false;
    }
    for (int j = 0; j < slope.length; j++) {
      if (range[j] > 0) {
        price[sums.place(j)] -= length / square * slope[j] / range[j] / range[j];
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
  double length() {
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
