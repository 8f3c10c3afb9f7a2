package swardcase.plan;

import java.util.Arrays;

/**
 * Improves a pick by changes of one paddock and then of two together, the best change each time,
 * until none gains. A pick that passes limits is first brought inside them. Deterministic.
 */
class LocalSearch {

  private static final int FEW_CHOICES = 200;
  private static final int TRIED_IN_PAIRS = 3;
  private static final double GAIN = 1e-3;

  private final PlanTable table;
  private final double[] sums;
  private final double[] moved;
  private final double[] movedTwice;
  private final double[] single;
  private final boolean[] closed;

  LocalSearch(PlanTable table) {
    this.table = table;
    sums = new double[table.years() * table.sums()];
    moved = new double[sums.length];
    movedTwice = new double[sums.length];
    single = new double[table.choices()];
    closed = new boolean[table.choices()];
  }

  /** Leaves an action of a paddock out of what is tried. */
  void close(int paddock, int action) {
    for (int c = table.first(paddock); c < table.first(paddock + 1); c++) {
      closed[c] |= table.action(c) == action;
    }
  }

  /** Tries everything again. */
  void openAll() {
    Arrays.fill(closed, false);
  }

  /** Improves {@code pick} in place and gives its value; minus infinity if it passes limits. */
  double improve(int[] pick) {
    return improve(pick, true);
  }

  /** The same with changes of one paddock only. */
  double improveSingly(int[] pick) {
    return improve(pick, false);
  }

  private double improve(int[] pick, boolean pairs) {
    double value = table.value(pick, sums);
    double excess = table.excess(sums);
    while (excess > 0) {
      double before = excess;
      value = reduceExcess(pick, excess);
      excess = table.excess(sums);
      if (excess >= before) {
        return Double.NEGATIVE_INFINITY;
      }
    }
    for (int round = 0; round < 20 * pick.length; round++) {
      double gained = improveOne(pick, value);
      if (gained <= GAIN && pairs) {
        gained = improveTwo(pick, value);
      }
      if (gained <= GAIN) {
        break;
      }
      value = table.value(pick, sums);
    }
    return value;
  }

  private double reduceExcess(int[] pick, double excess) {
    double least = excess;
    double best = Double.NEGATIVE_INFINITY;
    int change = -1;
    for (int c = 0; c < table.choices(); c++) {
      double tried = move(sums, pick, c, moved) ? table.excess(moved) : excess;
      if (tried < least - 1e-9 || (tried <= least + 1e-9 && tried < excess)) {
        double value = worth(pick, c);
        if (tried < least - 1e-9 || value > best) {
          least = Math.min(least, tried);
          best = value;
          change = c;
        }
      }
    }
    if (change >= 0) {
      pick[table.paddock(change)] = change;
    }
    return table.value(pick, sums);
  }

  private boolean move(double[] from, int[] pick, int choice, double[] into) {
    int now = pick[table.paddock(choice)];
    if (now == choice || closed[choice]) {
      return false;
    }
    System.arraycopy(from, 0, into, 0, from.length);
    table.exchange(now, choice, into);
    return true;
  }

  private double worth(int[] pick, int choice) {
    return table.value(moved)
        + table.own(pick)
        - table.own(pick[table.paddock(choice)])
        + table.own(choice);
  }

  private double improveOne(int[] pick, double value) {
    double most = value + GAIN;
    int change = -1;
    for (int c = 0; c < table.choices(); c++) {
      if (!move(sums, pick, c, moved)) {
        single[c] = closed[c] ? Double.NEGATIVE_INFINITY : value;
        continue;
      }
      single[c] = worth(pick, c);
      if (single[c] > most && table.excess(moved) == 0) {
        most = single[c];
        change = c;
      }
    }
    if (change < 0) {
      return 0;
    }
    pick[table.paddock(change)] = change;
    return most - value;
  }

  private double improveTwo(int[] pick, double value) {
    int[][] tried = new int[pick.length][];
    for (int i = 0; i < pick.length; i++) {
      tried[i] = bestOf(i);
    }
    double most = value + GAIN;
    int one = -1;
    int two = -1;
    for (int i = 0; i < pick.length; i++) {
      for (int c : tried[i]) {
        if (!move(sums, pick, c, moved)) {
          continue;
        }
        double own = table.own(pick) - table.own(pick[i]) + table.own(c);
        for (int j = i + 1; j < pick.length; j++) {
          for (int d : tried[j]) {
            if (!move(moved, pick, d, movedTwice)) {
              continue;
            }
            if (table.excess(movedTwice) > 0) {
              continue;
            }
            double both = table.value(movedTwice) + own - table.own(pick[j]) + table.own(d);
            if (both > most) {
              most = both;
              one = c;
              two = d;
            }
          }
        }
      }
    }
    if (one < 0) {
      return 0;
    }
    pick[table.paddock(one)] = one;
    pick[table.paddock(two)] = two;
    return most - value;
  }

  /** Choices of a paddock worth trying together with others: all on a small farm, else the best. */
  private int[] bestOf(int paddock) {
    int from = table.first(paddock);
    int count = table.first(paddock + 1) - from;
    int[] all = new int[count];
    Arrays.setAll(all, k -> from + k);
    if (table.choices() <= FEW_CHOICES) {
      return all;
    }
    return Arrays.stream(all)
        .boxed()
        .sorted((a, b) -> Double.compare(single[b], single[a]))
        .limit(TRIED_IN_PAIRS + 1)
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
