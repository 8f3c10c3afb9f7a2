package swardcase.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Narrows a {@link Span} to what open choices can reach within a limit. A limit is given a price r
 * >= 0; for any price
 *
 * <pre>
 * least sum of v  >=  sum over paddocks of min (v + r use) - r capacity
 * </pre>
 *
 * <p>and the price is sought that makes this highest: it is concave in r and made of straight
 * lines, so the next price is where the lines of the two last ones meet. Every answer lies at or
 * beyond the truth.
 */
final class Reach {

  private static final int PRICES = 5;
  private static final int HALVINGS = 5;

  /** A limit: the use of each choice, and how much there is. */
  record Limit(double[] use, double capacity) {}

  private final PlanTable table;
  private final PricedSums sums;
  private final double[] low;
  private final double[] high;
  private final double[] lowest;
  private final double[] highest;
  private final double[] value;
  private final double[] use;
  private Open open;
  private double capacity;
  private double mostUse;
  private double slope;

  Reach(PlanTable table, PricedSums sums) {
    this.table = table;
    this.sums = sums;
    low = new double[sums.size()];
    high = new double[low.length];
    lowest = new double[low.length];
    highest = new double[low.length];
    value = new double[table.choices()];
    use = new double[table.choices()];
  }

  /**
   * Narrows the span of every sum to what these choices can reach; false if nothing is left of it.
   */
  boolean narrow(Open choices, Span span) {
    open = choices;
    Arrays.fill(lowest, 0);
    Arrays.fill(highest, 0);
    for (int i = 0; i < open.paddocks(); i++) {
      Arrays.fill(low, Double.POSITIVE_INFINITY);
      Arrays.fill(high, Double.NEGATIVE_INFINITY);
      for (int k = open.first(i); k < open.first(i + 1); k++) {
        sums.widen(open.choice(k), low, high);
      }
      for (int j = 0; j < low.length; j++) {
        lowest[j] += low[j];
        highest[j] += high[j];
      }
    }
    for (int j = 0; j < low.length; j++) {
      int k = sums.place(j);
      span.low()[k] = Math.max(span.low()[k], lowest[j]);
      span.high()[k] = Math.min(span.high()[k], highest[j]);
    }
    return isLeft(span);
  }

  private boolean isLeft(Span span) {
    for (int j = 0; j < low.length; j++) {
      int k = sums.place(j);
      double slack = 1e-6 * (1 + Math.abs(span.high()[k]));
      if (!sums.isLimit(j) && span.low()[k] > span.high()[k] + slack) {
        return false;
      }
    }
    return true;
  }

  /** Narrows a span to what these choices can reach within the limits of the farm. */
  void narrowToLimits(Open choices, Span span) {
    for (int t = 0; t < table.years(); t++) {
      for (Limit limit : limits(t)) {
        if (Double.isFinite(limit.capacity())) {
          narrow(choices, limit, t, span);
        }
      }
    }
  }

  /** What is out of grazing, money spent (or area worked) so far, and the mobs' safe feed. */
  private List<Limit> limits(int t) {
    boolean free = Double.isInfinite(table.most(t * table.sums() + YearSums.COST));
    List<Limit> limits = new ArrayList<>();
    limits.add(limit(t, t, YearSums.OUT, 1));
    limits.add(limit(0, t, free ? YearSums.OUT : YearSums.COST, 1));
    for (int g = 0; g < table.run().mobs(); g++) {
      if (table.run().firstAlike(g) == g) {
        limits.add(limit(t, t, YearSums.at(g, YearSums.SAFE), -1));
      }
    }
    return limits;
  }

  private Limit limit(int from, int to, int sum, double sign) {
    double[] uses = new double[table.choices()];
    double most = 0;
    for (int t = from; t <= to; t++) {
      int k = t * table.sums() + sum;
      most += sign > 0 ? table.most(k) : -table.least(k);
      for (int c = 0; c < uses.length; c++) {
        uses[c] += sign * table.added(c, k);
      }
    }
    return new Limit(uses, most);
  }

  /** Narrows a span to one side of a value of one sum; false if nothing is left of it. */
  boolean narrowToSide(Open choices, int k, double value, boolean below, Span span) {
    if (below) {
      span.high()[k] = Math.min(span.high()[k], value);
    } else {
      span.low()[k] = Math.max(span.low()[k], value);
    }
    double[] uses = new double[table.choices()];
    Arrays.setAll(uses, c -> below ? table.added(c, k) : -table.added(c, k));
    return narrow(choices, new Limit(uses, below ? value : -value), span);
  }

  /**
   * Narrows the span of every year to what open choices can reach within a limit; false if nothing
   * is left of it.
   */
  boolean narrow(Open choices, Limit limit, Span span) {
    for (int t = 0; t < table.years(); t++) {
      narrow(choices, limit, t, span);
    }
    return isLeft(span);
  }

  private void narrow(Open choices, Limit limit, int t, Span span) {
    setLimit(choices, limit);
    int from = t * table.sums();
    for (int sum : new int[] {YearSums.WINTER, YearSums.OTHER, YearSums.HELD}) {
      narrowSum(from + sum, span);
    }
    for (int g = 0; g < table.run().mobs(); g++) {
      if (table.run().firstAlike(g) != g) {
        continue;
      }
      int at = g * table.years() + t;
      int dose = from + YearSums.at(g, YearSums.DOSE);
      int grazed = from + YearSums.at(g, YearSums.GRAZED);
      narrowSum(grazed, span);
      narrowRatio(dose, grazed, span.least(), span.most(), at);
      dose = from + YearSums.at(g, YearSums.DOSE_HELD);
      grazed = from + YearSums.at(g, YearSums.GRAZED_HELD);
      narrowSum(grazed, span);
      narrowRatio(dose, grazed, span.leastHeld(), span.mostHeld(), at);
    }
  }

  private void setLimit(Open choices, Limit limit) {
    open = choices;
    capacity = limit.capacity();
    mostUse = 0;
    for (int k = 0; k < open.size(); k++) {
      use[k] = limit.use()[open.choice(k)];
      mostUse = Math.max(mostUse, Math.abs(use[k]));
    }
  }

  private void narrowSum(int at, Span span) {
    for (int k = 0; k < open.size(); k++) {
      value[k] = table.added(open.choice(k), at);
    }
    span.low()[at] = Math.max(span.low()[at], least(Double.POSITIVE_INFINITY));
    for (int k = 0; k < open.size(); k++) {
      value[k] = -value[k];
    }
    span.high()[at] = Math.min(span.high()[at], -least(Double.POSITIVE_INFINITY));
  }

  private void narrowRatio(int dose, int grazed, double[] least, double[] most, int at) {
    double from = least[at];
    double to = most[at];
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (from + to) / 2;
      if (least(dose, 1, grazed, -middle) < 0) {
        to = middle;
      } else {
        from = middle;
      }
    }
    least[at] = from;
    to = most[at];
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (from + to) / 2;
      if (least(dose, -1, grazed, middle) < 0) {
        from = middle;
      } else {
        to = middle;
      }
    }
    most[at] = to;
  }

  private double least(int one, double factor, int two, double factorTwo) {
    for (int k = 0; k < open.size(); k++) {
      int c = open.choice(k);
      value[k] = factor * table.added(c, one) + factorTwo * table.added(c, two);
    }
    return least(0);
  }

  /** The price is sought no further once a bound of {@code enough} is found. */
  private double least(double enough) {
    double best = at(0);
    if (best >= enough || slope <= 0 || mostUse == 0) {
      return best;
    }
    double left = 0;
    double atLeft = best;
    double slopeLeft = slope;
    double size = 0;
    for (int k = 0; k < open.size(); k++) {
      size = Math.max(size, Math.abs(value[k]));
    }
    double right = 8 * size / mostUse;
    double atRight = at(right);
    double slopeRight = slope;
    best = Math.max(best, atRight);
    for (int step = 0; step < PRICES && slopeRight < 0; step++) {
      double r =
          (atLeft - slopeLeft * left - atRight + slopeRight * right) / (slopeRight - slopeLeft);
      double here = at(r);
      best = Math.max(best, here);
      if (best >= enough) {
        return best;
      }
      if (slope > 0) {
        left = r;
        atLeft = here;
        slopeLeft = slope;
      } else {
        right = r;
        atRight = here;
        slopeRight = slope;
      }
    }
    return best;
  }

  private double at(double price) {
    double sum = 0;
    double used = -capacity;
    int k = 0;
    for (int i = 0; i < open.paddocks(); i++) {
      int end = open.first(i + 1);
      double least = Double.POSITIVE_INFINITY;
      int where = k;
      for (; k < end; k++) {
        double here = value[k] + price * use[k];
        if (here < least) {
          least = here;
          where = k;
        }
      }
      sum += least;
      used += use[where];
    }
    slope = used;
    return sum - price * capacity;
  }
}
