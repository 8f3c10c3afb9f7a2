package swardcase.joining;

import java.util.Arrays;
import java.util.OptionalDouble;
import swardcase.joining.LinearProgramme.Solution;

/**
 * The linear programme that moves groups over paddocks.
 *
 * <pre>
 *   least   sum of cost(g, p, i) share(g, p, i) + price x need(g, p) x bought(g, p)
 *   under   sum over i of share(g, p, i) + bought(g, p) = 1          every group and half-month
 *           feed left (i, p) at least least(i, p)                    every paddock and half-month
 *           days on risky feed at most so many                       each limited group
 * </pre>
 *
 * <p>Feed left is written out from the start, so that it needs no variables of its own. Because
 * everything can be bought there is an answer unless feed to be left exceeds feed there is.
 */
final class GrazingPlan {

  private static final int NOWHERE = -1;

  private final GrazingProblem problem;
  private final int[][][] place;
  private final LinearProgramme programme;
  private final int[][] needRow;

  /**
   * @param cost money lost if the group takes all its pasture of a half-month from a paddock, by
   *     group, half-month, paddock; infinite where it must not go
   */
  GrazingPlan(GrazingProblem problem, double[][][] cost) {
    this.problem = problem;
    place = new int[problem.groups][problem.halfMonths][problem.paddocks + 1];
    double[] costs = new double[problem.groups * problem.halfMonths * (problem.paddocks + 1)];
    int count = 0;
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        for (int i = 0; i < problem.paddocks; i++) {
          boolean mayGo = Double.isFinite(cost[g][p][i]);
          place[g][p][i] = mayGo ? count : NOWHERE;
          if (mayGo) {
            costs[count++] = cost[g][p][i];
          }
        }
        place[g][p][problem.paddocks] = count;
        costs[count++] = problem.pricePerMj * problem.pastureNeedMj[g][p];
      }
    }
    costs = Arrays.copyOf(costs, count);
    programme = new LinearProgramme(costs);
    needRow = new int[problem.groups][problem.halfMonths];
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        needRow[g][p] = addNeed(g, p);
      }
    }
    for (int i = 0; i < problem.paddocks; i++) {
      addFeedLeft(i);
    }
    for (int g = 0; g < problem.groups; g++) {
      if (problem.isLimited(g)) {
        addRiskyDays(g);
      }
    }
  }

  private int addNeed(int g, int p) {
    int[] places = Arrays.stream(place[g][p]).filter(at -> at != NOWHERE).toArray();
    double[] ones = new double[places.length];
    Arrays.fill(ones, 1);
    return programme.exactly(places, ones, 1);
  }

  /** Rows of one paddock: what was there, less what all took, each spared by the decay since. */
  private void addFeedLeft(int i) {
    int[] places = new int[problem.groups * problem.halfMonths];
    double[] taken = new double[places.length];
    double left = problem.startKg[i];
    int used = 0;
    for (int p = 0; p < problem.halfMonths; p++) {
      left = problem.kept[p] * (left + problem.grownKg[p][i]);
      for (int g = 0; g < problem.groups; g++) {
        if (place[g][p][i] != NOWHERE) {
          places[used] = place[g][p][i];
          taken[used] = problem.takenKg(g, p);
          used++;
        }
      }
      for (int k = 0; k < used; k++) {
        taken[k] *= problem.kept[p];
      }
      programme.atMost(
          Arrays.copyOf(places, used),
          Arrays.copyOf(taken, used),
          Math.max(0, left - problem.leastKg[p][i]));
    }
  }

  private void addRiskyDays(int g) {
    int[] places = new int[problem.halfMonths * problem.paddocks];
    double[] days = new double[places.length];
    int used = 0;
    for (int p = 0; p < problem.halfMonths; p++) {
      for (int i = 0; i < problem.paddocks; i++) {
        if (place[g][p][i] != NOWHERE && problem.riskyDays[p][i] > 0) {
          places[used] = place[g][p][i];
          days[used] = problem.riskyDays[p][i];
          used++;
        }
      }
    }
    programme.atMost(
        Arrays.copyOf(places, used), Arrays.copyOf(days, used), problem.mostRiskyDays[g]);
  }

  int variables() {
    return programme.variables();
  }

  int rows() {
    return programme.rows();
  }

  Solution solve() {
    return programme.solve();
  }

  /** The shares of an answer; what is lost in rounding is left out. */
  Grazing grazing(Solution solution) {
    double[][][] share = new double[problem.groups][problem.halfMonths][problem.paddocks];
    for (int g = 0; g < problem.groups; g++) {
      for (int p = 0; p < problem.halfMonths; p++) {
        for (int i = 0; i < problem.paddocks; i++) {
          int at = place[g][p][i];
          double value = at == NOWHERE ? 0 : solution.at()[at];
          share[g][p][i] = value < 1e-9 ? 0 : Math.min(1, value);
        }
      }
    }
    return new Grazing(share);
  }

  /**
   * What one more MJ of safe feed for a mob in a half-month is worth; empty if it cannot be said.
   */
  OptionalDouble worthOfSafeMj(int mob, int halfMonth) {
    double needMj = problem.pastureNeedMj[mob][halfMonth];
    if (needMj <= 0) {
      return OptionalDouble.empty();
    }
    double step = 0.01;
    OptionalDouble price = programme.shadowPrice(needRow[mob][halfMonth], -step);
    return price.isPresent()
        ? OptionalDouble.of(price.getAsDouble() / needMj)
        : OptionalDouble.empty();
  }
}
