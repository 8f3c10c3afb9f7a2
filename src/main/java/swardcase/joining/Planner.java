package swardcase.joining;

import java.util.Arrays;
import java.util.stream.Stream;

/**
 * The three ways of grazing that are compared: as now, simple avoidance, and the plan.
 *
 * <p>The plan starts from the order whose cost of a paddock is the loss of a mob that spends that
 * half-month there and is on safe feed otherwise. The costs are then drawn again around the answer,
 * up to {@value #ROUNDS} times, because days on clover add up otherwise than in straight lines.
 * Every answer, and the two other ways, are put through the whole dose-response; the cheapest is
 * the plan. So the plan never costs more than the other two.
 */
final class Planner {

  private static final int ROUNDS = 4;

  /** Preference for weaker clover where nothing else decides, as a share of the price of feed. */
  private static final double TIE = 1e-4;

  /** What a plan that is easier to keep to may cost, as a share of what grazing as now costs. */
  static final double MOST_FOR_PRACTICE = 0.05;

  private final JoiningCase setting;
  private final GrazingProblem problem;
  private final Losses losses;
  private final double[] strength;
  private final double[][][] linear;

  /** A planner for the farm with paddocks of these strengths. */
  Planner(JoiningCase setting, double[] strength) {
    this.setting = setting;
    this.strength = strength;
    problem = setting.problem(strength);
    losses = setting.losses(strength);
    linear = new double[problem.groups][problem.halfMonths][problem.paddocks];
  }

  GrazingProblem problem() {
    return problem;
  }

  Losses losses() {
    return losses;
  }

  /** Loss of lambs and feed bought, in money, by the whole dose-response. */
  double cost(Grazing grazing) {
    return losses.money(grazing) + problem.boughtMj(grazing) * problem.pricePerMj;
  }

  /** Each mob on the paddocks it grazes now, other stock on all that are not shut. */
  Grazing asNow() {
    return EvenGrazing.of(
        problem,
        open((g, k, i) -> setting.farm.paddocks().get(i).isGrazedBy(setting.farm.mobs().get(g))));
  }

  /** Ewes evenly over whatever is not rated keep off for them then. */
  Grazing avoiding(JoiningCalendar calendar) {
    return EvenGrazing.of(
        problem,
        open((g, k, i) -> !calendar.isKeptOff(g, at(k), i) && !setting.isClosed(g, at(k), i)));
  }

  private interface Open {
    boolean is(int mob, int halfMonth, int paddock);
  }

  private boolean[][][] open(Open rule) {
    boolean[][][] open = new boolean[problem.groups][problem.halfMonths][problem.paddocks];
    for (int g = 0; g < problem.groups; g++) {
      for (int k = 0; k < problem.halfMonths; k++) {
        for (int i = 0; i < problem.paddocks; i++) {
          open[g][k][i] = !setting.coming.isShut(i) && (g >= problem.ewes || rule.is(g, k, i));
        }
      }
    }
    return open;
  }

  private int at(int k) {
    return setting.halfMonths.get(k);
  }

  /** The cheapest way found; the other two ways are among the candidates. */
  Grazing plan(Grazing... others) {
    return plan(ROUNDS, others);
  }

  /** The same with a limit on how often costs are drawn. */
  Grazing plan(int rounds, Grazing... others) {
    Grazing best = null;
    for (Grazing other : others) {
      boolean may = keepsTheRules(other);
      best = may && (best == null || cost(other) < cost(best)) ? other : best;
    }
    for (int g = 0; g < problem.ewes; g++) {
      linear[g] = losses.chords(g, losses.safe(g));
    }
    for (int round = 0; round < rounds; round++) {
      Grazing found = inOrder(withTies(linear), false);
      boolean better = best == null || cost(found) < cost(best) - 1e-9;
      if (better) {
        best = found;
      } else if (round > 0) {
        break;
      }
      for (int g = 0; g < problem.ewes; g++) {
        average(linear[g], losses.chords(g, losses.doses(g, found)));
      }
    }
    return best;
  }

  /** Whether nobody is where the plan of the farm does not let him be. */
  private boolean keepsTheRules(Grazing grazing) {
    for (int g = 0; g < problem.ewes; g++) {
      for (int k = 0; k < problem.halfMonths; k++) {
        for (int i = 0; i < problem.paddocks; i++) {
          if (grazing.share(g, k, i) > 0 && setting.isClosed(g, at(k), i)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /**
   * The first of these that costs little more than the cheapest: groups apart, and ewes nowhere
   * that they are to be kept off; groups apart; the cheapest itself.
   */
  Grazing practical(JoiningCalendar calendar, Grazing cheapest, Grazing asNow) {
    double little = cost(cheapest) + MOST_FOR_PRACTICE * cost(asNow);
    double most = keepsTheRules(asNow) ? Math.min(cost(asNow), little) : little;
    return Stream.of(barred(linear, (g, k, i) -> !calendar.isKeptOff(g, at(k), i)), linear)
        .map(costs -> inOrder(withTies(costs), true))
        .filter(grazing -> cost(grazing) <= most)
        .findFirst()
        .orElse(cheapest);
  }

  /** Costs that are infinite for ewes where a rule does not open a paddock. */
  private double[][][] barred(double[][][] cost, Open rule) {
    double[][][] barred = new double[problem.groups][problem.halfMonths][];
    for (int g = 0; g < problem.groups; g++) {
      for (int k = 0; k < problem.halfMonths; k++) {
        barred[g][k] = cost[g][k].clone();
        for (int i = 0; i < problem.paddocks; i++) {
          if (g < problem.ewes && !rule.is(g, k, i)) {
            barred[g][k][i] = Double.POSITIVE_INFINITY;
          }
        }
      }
    }
    return barred;
  }

  /** Half-way between the old costs and those at the new answer, so that answers do not swing. */
  private static void average(double[][] into, double[][] next) {
    for (int k = 0; k < into.length; k++) {
      for (int i = 0; i < into[k].length; i++) {
        into[k][i] = (into[k][i] + next[k][i]) / 2;
      }
    }
  }

  private double[][][] withTies(double[][][] cost) {
    double strongest = Math.max(1e-9, Arrays.stream(strength).max().orElse(0));
    double[][][] with = new double[problem.groups][problem.halfMonths][];
    for (int g = 0; g < problem.groups; g++) {
      for (int k = 0; k < problem.halfMonths; k++) {
        with[g][k] = cost[g][k].clone();
        double full = problem.pricePerMj * problem.pastureNeedMj[g][k];
        for (int i = 0; i < problem.paddocks; i++) {
          double weaker = g < problem.ewes ? strength[i] : strongest - strength[i];
          with[g][k][i] +=
              setting.isClosed(g, at(k), i)
                  ? Double.POSITIVE_INFINITY
                  : TIE * full * weaker / strongest;
        }
      }
    }
    return with;
  }

  /** Whether a mob loses lambs or eats bought feed for its grazing of a half-month. */
  boolean isAtStake(int mob, int k, Grazing grazing) {
    double money = grazing.bought(mob, k) * problem.pastureNeedMj[mob][k] * problem.pricePerMj;
    for (int i = 0; i < problem.paddocks; i++) {
      money += grazing.share(mob, k, i) * linear[mob][k][i];
    }
    return money >= 1;
  }

  /**
   * What one more MJ of safe feed for a mob in a half-month would save: the dearest that it eats
   * there, or the price where it eats bought feed.
   */
  double worthOfSafeMj(int mob, int k, Grazing grazing) {
    double needMj = problem.pastureNeedMj[mob][k];
    if (needMj <= 0) {
      return 0;
    }
    double most = grazing.bought(mob, k) > 1e-9 ? problem.pricePerMj : 0;
    for (int i = 0; i < problem.paddocks; i++) {
      most = grazing.share(mob, k, i) > 1e-9 ? Math.max(most, linear[mob][k][i] / needMj) : most;
    }
    return most;
  }

  private Grazing inOrder(double[][][] cost, boolean apart) {
    AlikePaddocks alike = AlikePaddocks.of(problem, strength, cost);
    return alike.ofEach(
        alike
            .problem()
            .inOrder(alike.cost(), alike.strength(), apart && alike.problem() == problem));
  }

  /**
   * Safe feed that is missing, MJ by half-month of the plan: what must be bought if ewes go only
   * where the calendar is open to them without limit, beyond what {@code asNow} buys.
   */
  double[] shortMj(JoiningCalendar calendar, Grazing asNow) {
    double[][][] free = new double[problem.groups][problem.halfMonths][problem.paddocks];
    double[][][] cost = barred(free, (g, k, i) -> calendar.isOpen(g, at(k), i));
    Grazing grazing = inOrder(withTies(cost), false);
    double[] missing = new double[problem.halfMonths];
    for (int k = 0; k < missing.length; k++) {
      missing[k] = problem.boughtMj(grazing, k);
    }
    double already = problem.boughtMj(asNow);
    double all = Arrays.stream(missing).sum();
    double counted = all > 0 ? Math.max(0, all - already) / all : 0;
    for (int k = 0; k < missing.length; k++) {
      missing[k] *= counted;
    }
    return missing;
  }
}
