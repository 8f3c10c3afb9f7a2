package swardcase.plan;

import java.util.Arrays;

/**
 * The most a year of a plan can be worth at given prices of its sums, over all sums that the open
 * choices could reach.
 *
 * <p>The feed part is read from a grid by straight lines in both directions, so between grid lines
 * it is highest at a corner. So is the flock part, even with the feed taken as a further factor of
 * the price and with squares added. Corners are therefore all that is looked at.
 *
 * <p>Sterility couples years: ewes in lamb are fertile x whole, f u, and u is a mean over ages of
 * exp(-E) with E a sum of past seasons e. About the plan in hand, marked *, with d = E - E*,
 *
 * <pre>
 * f u  = u* f + f* (u - u*) + (f - f*)(u - u*)
 * exp(-E) <= exp(-E*) (1 - d + b d^2 / 2)            b the most of (exp(-d) - 1 + d) / (d^2 / 2)
 * (f - f*)(u - u*) <= r (f - f*)^2 / 2 + (u - u*)^2 / (2 r)            for any r > 0
 * d^2 <= n x sum over the n seasons of (e - e*)^2
 * </pre>
 *
 * <p>which leaves a sum over years that is exact at the plan in hand.
 */
final class YearCeiling {

  private final PlanTable table;
  private final Run run;
  private final int t;
  private final int from;
  private final MobCeiling[] mob;
  private final int[] first;

  private double[] wPoints = {};
  private double[] oPoints = {};
  private double[] sure = {};
  private double[] saved = {};
  private double heldLow;
  private double heldHigh;
  private double bestW;
  private double bestO;

  YearCeiling(PlanTable table, int t) {
    this.table = table;
    this.t = t;
    run = table.run();
    from = t * table.sums();
    mob = new MobCeiling[run.mobs()];
    first = new int[mob.length];
    for (int g = 0; g < mob.length; g++) {
      mob[g] = new MobCeiling(table, t, g);
      first[g] = run.firstAlike(g);
    }
  }

  MobCeiling mob(int g) {
    return mob[g];
  }

  /** Takes the reach of every sum. */
  void setRanges(Span span) {
    double[] low = span.low();
    double[] high = span.high();
    double whole = run.weightSum();
    heldLow = low[from + YearSums.HELD] / whole;
    heldHigh = high[from + YearSums.HELD] / whole;
    double lostLeast = run.held().lost(heldLow);
    double lostMost = run.held().lost(heldHigh);
    wPoints =
        points(
            run.feed().winterNodes(),
            low[from + YearSums.WINTER] / whole - lostMost,
            high[from + YearSums.WINTER] / whole - lostLeast);
    oPoints =
        points(
            FeedSurface.otherNodes(),
            low[from + YearSums.OTHER] / whole - lostMost,
            high[from + YearSums.OTHER] / whole - lostLeast);
    sure = new double[wPoints.length * oPoints.length];
    saved = new double[sure.length];
    boolean more = run.runsMoreEwes();
    double discount = table.discount(t);
    for (int a = 0; a < wPoints.length; a++) {
      for (int b = 0; b < oPoints.length; b++) {
        double w = wPoints[a];
        double o = oPoints[b];
        int k = a * oPoints.length + b;
        double ewes = more ? Math.max(0, run.moreEwes(w, o)) : 0;
        sure[k] = discount * (run.spareFeedGain(w, o) + ewes);
        saved[k] = discount * run.saved(w, o);
      }
    }
    for (int g = 0; g < mob.length; g++) {
      if (first[g] == g) {
        mob[g].setRanges(span);
      }
      mob[g].readOn(mob[first[g]]);
    }
  }

  /** The ends and the nodes between them. */
  static double[] points(double[] nodes, double low, double high) {
    double[] points = new double[nodes.length + 2];
    int count = 0;
    points[count++] = low;
    for (double node : nodes) {
      if (node > low && node < high) {
        points[count++] = node;
      }
    }
    if (high > low) {
      points[count++] = high;
    }
    return Arrays.copyOf(points, count);
  }

  void clearWeights(double[] about) {
    for (MobCeiling ceiling : mob) {
      ceiling.clearWeights(about);
    }
  }

  /** Shares the year's ewes in lamb out to this year and those before it. */
  void shareOut(YearCeiling[] years) {
    for (MobCeiling ceiling : mob) {
      ceiling.shareOut(years);
    }
  }

  /** Mobs on the same paddocks share their strengths, so that their ceilings are one. */
  void setLevel() {
    for (int g = 0; g < mob.length; g++) {
      mob[g].setLevel();
      if (first[g] != g) {
        mob[first[g]].addLevel(mob[g]);
      }
    }
  }

  /** The most at these prices; writes the sums at which it is reached. */
  double most(double[] price, double[] state) {
    double sum = ofFeed(price, state);
    for (int g = 0; g < mob.length; g++) {
      sum += first[g] == g ? mob[g].most(price, state) : 0;
    }
    return sum;
  }

  private double ofFeed(double[] price, double[] state) {
    double whole = run.weightSum();
    double alpha = price[from + YearSums.WINTER] * whole;
    double beta = price[from + YearSums.OTHER] * whole;
    double eta = price[from + YearSums.HELD] * whole;
    double held = bestHeld(alpha + beta, eta);
    double lost = run.held().lost(held);
    double sum = -(alpha + beta) * lost - eta * held + mostFeed(alpha, beta);
    state[from + YearSums.WINTER] = (bestW + lost) * whole;
    state[from + YearSums.OTHER] = (bestO + lost) * whole;
    state[from + YearSums.HELD] = held * whole;
    return sum;
  }

  private double bestHeld(double perLost, double perHeld) {
    double kink = Math.max(heldLow, Math.min(heldHigh, run.held().shareWithoutLoss()));
    double best = heldLow;
    for (double held : new double[] {kink, heldHigh}) {
      double gain = -perLost * run.held().lost(held) - perHeld * held;
      if (gain > -perLost * run.held().lost(best) - perHeld * best) {
        best = held;
      }
    }
    return best;
  }

  private double mostFeed(double alpha, double beta) {
    double most = Double.NEGATIVE_INFINITY;
    int columns = oPoints.length;
    if (!run.runsMoreEwes()) {
      for (int a = 0; a < wPoints.length; a++) {
        for (int b = 0; b < columns; b++) {
          double value =
              sure[a * columns + b]
                  + saved[a * columns + b]
                  - alpha * wPoints[a]
                  - beta * oPoints[b];
          if (value > most) {
            most = value;
            bestW = wPoints[a];
            bestO = oPoints[b];
          }
        }
      }
      return most;
    }
    // Feed saved counts only as a loss, min(0, saved), which lies below 0 and below saved.
    for (int a = 0; a < Math.max(1, wPoints.length - 1); a++) {
      for (int b = 0; b < Math.max(1, columns - 1); b++) {
        double without = Double.NEGATIVE_INFINITY;
        double with = Double.NEGATIVE_INFINITY;
        int at = 0;
        for (int corner = 0; corner < 4; corner++) {
          int row = Math.min(wPoints.length - 1, a + corner / 2);
          int column = Math.min(columns - 1, b + corner % 2);
          int k = row * columns + column;
          double value = sure[k] - alpha * wPoints[row] - beta * oPoints[column];
          without = Math.max(without, value);
          if (value + saved[k] > with) {
            with = value + saved[k];
            at = k;
          }
        }
        if (Math.min(without, with) > most) {
          most = Math.min(without, with);
          bestW = wPoints[at / columns];
          bestO = oPoints[at % columns];
        }
      }
    }
    return most;
  }
}
