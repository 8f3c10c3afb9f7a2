package swardcase.plan;

import java.util.Arrays;

/**
 * How low and how high the sums of a year, and the ratios of two of them, can be among open choices
 * within a limit. A limit is given a price r >= 0; for any price
 *
 * <pre>
 * least sum of v  >=  sum over paddocks of min (v + r use) - r capacity
 * </pre>
 *
 * <p>and the price is sought that makes this highest. Every answer lies at or beyond the truth.
 */
final class Reach {

  private static final int PRICES = 14;
  private static final int HALVINGS = 10;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /** A limit on a year: the use of each choice, and how much there is. */
  record Limit(double[] use, double capacity) {}

  private final PlanTable table;
  private final double[] value;
  private final double[] lowest;
  private final double[] highest;

  Reach(PlanTable table) {
    this.table = table;
    value = new double[table.choices()];
    int size = table.years() * table.sums();
    lowest = new double[size];
    highest = new double[size];
  }

  /** Reach without limits of every sum. */
  void of(boolean[] open, double[] low, double[] high) {
    Arrays.fill(low, 0);
    Arrays.fill(high, 0);
    for (int i = 0; i < table.paddocks(); i++) {
      Arrays.fill(lowest, Double.POSITIVE_INFINITY);
      Arrays.fill(highest, Double.NEGATIVE_INFINITY);
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        if (open[c]) {
          table.widen(c, lowest, highest);
        }
      }
      for (int k = 0; k < low.length; k++) {
        low[k] += lowest[k];
        high[k] += highest[k];
      }
    }
  }

  /** What is out of grazing in a year. */
  Limit out(int t) {
    return limit(t, t, YearSums.OUT, 1);
  }

  /** Money spent to the end of a year; what is out of grazing by then if money has no limit. */
  Limit work(int t) {
    int cost = t * table.sums() + YearSums.COST;
    boolean free = Double.isInfinite(table.most(cost));
    return limit(0, t, free ? YearSums.OUT : YearSums.COST, 1);
  }

  /** Safe feed of a mob. */
  Limit safe(int t, int mob) {
    return limit(t, t, YearSums.at(mob, YearSums.SAFE), -1);
  }

  private Limit limit(int from, int to, int sum, double sign) {
    double[] use = new double[table.choices()];
    double capacity = 0;
    for (int t = from; t <= to; t++) {
      int k = t * table.sums() + sum;
      capacity += sign > 0 ? table.most(k) : -table.least(k);
      for (int c = 0; c < use.length; c++) {
        use[c] += sign * table.added(c, k);
      }
    }
    return new Limit(use, capacity);
  }

  /** Least value of a sum within the limit. */
  double least(boolean[] open, int k, Limit limit) {
    for (int c = 0; c < value.length; c++) {
      value[c] = table.added(c, k);
    }
    return least(open, limit, Double.POSITIVE_INFINITY);
  }

  /** Most of it. */
  double most(boolean[] open, int k, Limit limit) {
    for (int c = 0; c < value.length; c++) {
      value[c] = -table.added(c, k);
    }
    return -least(open, limit, Double.POSITIVE_INFINITY);
  }

  /** Least ratio of two sums within the limit, where it is known to lie between two values. */
  double leastRatio(boolean[] open, int d, int q, double from, double to, Limit limit) {
    double low = from;
    double high = to;
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (low + high) / 2;
      for (int c = 0; c < value.length; c++) {
        value[c] = table.added(c, d) - middle * table.added(c, q);
      }
      if (least(open, limit, 0) < 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /** Highest ratio, where it is known to lie between two values. */
  double mostRatio(boolean[] open, int d, int q, double from, double to, Limit limit) {
    double low = from;
    double high = to;
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (low + high) / 2;
      for (int c = 0; c < value.length; c++) {
        value[c] = middle * table.added(c, q) - table.added(c, d);
      }
      if (least(open, limit, 0) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** The price is sought no further once a bound of {@code enough} is found. */
  private double least(boolean[] open, Limit limit, double enough) {
    double best = at(open, limit, 0);
    if (best >= enough || Double.isInfinite(limit.capacity())) {
      return best;
    }
    double size = 0;
    double most = 0;
    for (int c = 0; c < value.length; c++) {
      size = Math.max(size, Math.abs(value[c]));
      most = Math.max(most, Math.abs(limit.use()[c]));
    }
    if (most == 0) {
      return best;
    }
    double left = 0;
    double right = 4 * size / most;
    double one = right - GOLDEN * (right - left);
    double two = left + GOLDEN * (right - left);
    double atOne = at(open, limit, one);
    double atTwo = at(open, limit, two);
    for (int step = 0; step < PRICES; step++) {
      best = Math.max(best, Math.max(atOne, atTwo));
      if (best >= enough) {
        return best;
      }
      if (atOne > atTwo) {
        right = two;
        two = one;
        atTwo = atOne;
        one = right - GOLDEN * (right - left);
        atOne = at(open, limit, one);
      } else {
        left = one;
        one = two;
        atOne = atTwo;
        two = left + GOLDEN * (right - left);
        atTwo = at(open, limit, two);
      }
    }
    return Math.max(best, Math.max(atOne, atTwo));
  }

  private double at(boolean[] open, Limit limit, double price) {
    double sum = -price * limit.capacity();
    if (price == 0) {
      sum = 0;
    }
    double[] use = limit.use();
    int paddocks = table.paddocks();
    int c = 0;
    for (int i = 0; i < paddocks; i++) {
      int end = table.first(i + 1);
      double least = Double.POSITIVE_INFINITY;
      for (; c < end; c++) {
        if (open[c]) {
          double here = value[c] + price * use[c];
          least = here < least ? here : least;
        }
      }
      sum += least;
    }
    return sum;
  }
}
