package swardcase.plan;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Shares scarce means out: one choice from every group, so that the sum of values is the most and
 * the use of each resource stays within its capacity (a multiple-choice knapsack with several
 * capacities). A knapsack of single items has groups of two: take it, or leave it.
 *
 * <p>Prices of the resources are lowered to a bound by subgradient steps; then groups are decided
 * in depth, each time the choice that is best at those prices first, and a branch is left when even
 * the best of the rest at those prices cannot pass what is in hand. Exact unless the number of
 * branches runs out, which {@link #isProved} tells.
 */
final class Rationing {

  private static final int TRIALS = 200;

  private final int[] first;
  private final double[] value;
  private final double[] use;
  private final double[] capacity;
  private final int resources;
  private final int groups;
  private final int[] order;
  private final int[][] ranked;
  private final double[] bestPrice;
  private final double[] reduced;
  private final double[] bestOfRest;
  private final double[][] leastOfRest;
  private final double[] used;
  private final int[] pick;
  private int[] best;
  private double bestValue = Double.NEGATIVE_INFINITY;
  private double atPrices;
  private long branchesLeft;

  /**
   * Solves.
   *
   * @param first place of each group's first choice, and at the end the number of choices
   * @param value of each choice
   * @param use of each resource by each choice
   * @param capacity of each resource
   * @param branches most branches to look at
   */
  Rationing(int[] first, double[] value, double[][] use, double[] capacity, long branches) {
    this.first = first;
    this.value = value;
    this.capacity = capacity;
    resources = capacity.length;
    groups = first.length - 1;
    this.use = byChoice(use);
    branchesLeft = branches;
    reduced = new double[value.length];
    used = new double[resources];
    pick = new int[groups];
    bestPrice = new double[resources];
    setReduced();
    order =
        IntStream.range(0, groups)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -spread(i)))
            .mapToInt(Integer::intValue)
            .toArray();
    ranked = new int[groups][];
    for (int i = 0; i < groups; i++) {
      ranked[i] =
          IntStream.range(first[i], first[i + 1])
              .boxed()
              .sorted(Comparator.comparingDouble(c -> -reduced[c]))
              .mapToInt(Integer::intValue)
              .toArray();
    }
    bestOfRest = new double[groups + 1];
    leastOfRest = new double[groups + 1][resources];
    for (int depth = groups - 1; depth >= 0; depth--) {
      int i = order[depth];
      bestOfRest[depth] = bestOfRest[depth + 1] + reduced[ranked[i][0]];
      for (int r = 0; r < resources; r++) {
        double least = Double.POSITIVE_INFINITY;
        for (int c = first[i]; c < first[i + 1]; c++) {
          least = Math.min(least, use(r, c));
        }
        leastOfRest[depth][r] = leastOfRest[depth + 1][r] + least;
      }
    }
    branch(0, 0, 0);
  }

  /** What each choice uses stands together, so that a choice is priced by one pass over memory. */
  private double[] byChoice(double[][] byResource) {
    double[] rows = new double[value.length * resources];
    for (int r = 0; r < resources; r++) {
      for (int c = 0; c < value.length; c++) {
        rows[c * resources + r] = byResource[r][c];
      }
    }
    return rows;
  }

  private double use(int r, int c) {
    return use[c * resources + r];
  }

  private double mostUse(int r) {
    double most = 0;
    for (int c = 0; c < value.length; c++) {
      most = Math.max(most, Math.abs(use(r, c)));
    }
    return most;
  }

  private double spread(int i) {
    double most = Double.NEGATIVE_INFINITY;
    double second = Double.NEGATIVE_INFINITY;
    for (int c = first[i]; c < first[i + 1]; c++) {
      if (reduced[c] > most) {
        second = most;
        most = reduced[c];
      } else {
        second = Math.max(second, reduced[c]);
      }
    }
    return most - second;
  }

  /** Finds prices of the resources at which the bound is low, and the values less what is used. */
  private void setReduced() {
    double[] price = new double[resources];
    double[] scale = new double[resources];
    double total = 1;
    for (double v : value) {
      total += Math.abs(v);
    }
    for (int r = 0; r < resources; r++) {
      scale[r] = Math.max(1e-9, mostUse(r) * groups);
    }
    double length = total / 10;
    double bound = Double.POSITIVE_INFINITY;
    double[] slope = new double[resources];
    for (int trial = 0; trial < TRIALS; trial++) {
      double sum = 0;
      for (int r = 0; r < resources; r++) {
        sum += price[r] * capacity[r];
        slope[r] = capacity[r];
      }
      for (int i = 0; i < groups; i++) {
        int at = first[i];
        double most = Double.NEGATIVE_INFINITY;
        for (int c = first[i]; c < first[i + 1]; c++) {
          double worth = worth(c, price);
          if (worth > most) {
            most = worth;
            at = c;
          }
        }
        sum += most;
        for (int r = 0; r < resources; r++) {
          slope[r] -= use(r, at);
        }
      }
      if (sum < bound) {
        bound = sum;
        System.arraycopy(price, 0, bestPrice, 0, resources);
      } else {
        length *= 0.9;
      }
      double norm = 1e-12;
      for (int r = 0; r < resources; r++) {
        norm += slope[r] / scale[r] * (slope[r] / scale[r]);
      }
      for (int r = 0; r < resources; r++) {
        double step = length / Math.sqrt(norm) * slope[r] / scale[r] / scale[r];
        price[r] = Math.max(0, price[r] - step);
      }
    }
    for (int c = 0; c < value.length; c++) {
      reduced[c] = worth(c, bestPrice);
    }
    atPrices = 0;
    for (int r = 0; r < resources; r++) {
      atPrices += bestPrice[r] * capacity[r];
    }
  }

  private double worth(int c, double[] price) {
    double worth = value[c];
    int from = c * resources;
    for (int r = 0; r < price.length; r++) {
      worth -= price[r] * use[from + r];
    }
    return worth;
  }

  private void branch(int depth, double sumReduced, double sumValue) {
    if (depth == groups) {
      if (sumValue > bestValue) {
        bestValue = sumValue;
        best = pick.clone();
      }
      return;
    }
    int i = order[depth];
    for (int c : ranked[i]) {
      double bound = atPrices + sumReduced + reduced[c] + bestOfRest[depth + 1];
      if (bound <= bestValue + 1e-9 * Math.abs(bestValue) || --branchesLeft < 0) {
        return;
      }
      if (fits(c, depth)) {
        for (int r = 0; r < used.length; r++) {
          used[r] += use(r, c);
        }
        pick[i] = c;
        branch(depth + 1, sumReduced + reduced[c], sumValue + value[c]);
        for (int r = 0; r < used.length; r++) {
          used[r] -= use(r, c);
        }
      }
    }
  }

  private boolean fits(int c, int depth) {
    for (int r = 0; r < used.length; r++) {
      double slack = 1e-9 * Math.max(1, Math.abs(capacity[r]));
      if (used[r] + use(r, c) + leastOfRest[depth + 1][r] > capacity[r] + slack) {
        return false;
      }
    }
    return true;
  }

  /** The best pick found, by group; empty if none fits. */
  int[] pick() {
    return best == null ? new int[0] : best.clone();
  }

  /** Its value. */
  double value() {
    return bestValue;
  }

  /** What no pick can pass: the bound at the prices found, before anything is decided. */
  double bound() {
    return atPrices + bestOfRest[0];
  }

  /** What one more of a resource is worth at that bound. */
  double price(int resource) {
    return bestPrice[resource];
  }

  /** Whether nothing better exists. */
  boolean isProved() {
    return branchesLeft >= 0;
  }
}
