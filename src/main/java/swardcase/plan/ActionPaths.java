package swardcase.plan;

import java.util.Arrays;
import java.util.List;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.CostLine.Phase;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.sward.Dose;
import swardcase.sward.WinterGrowth;
import swardcase.tables.Tables;

/**
 * What every action does to every paddock, year by year from its start: growth in winter and in the
 * other months relative to a current stand, strength of the clover, cost and margin per ha, and the
 * share of old cultivars. Paths do not depend on the start year, so each is computed once per run.
 *
 * <p>A sowing that fails is sown again the year after and then takes. A path is the mean of the
 * two, weighted by the chance of establishment.
 */
final class ActionPaths {

  private final Farm farm;
  private final Stands stands;
  private final GrowthYear year;
  private final ActionInputs[] actions;
  private final SeedPaths seed;
  private final boolean[] allowed;
  private final int years;
  private final int waterlogged;
  private final int leafShare;

  private final double[] winter;
  private final double[] other;
  private final double[] strength;
  private final double[] cost;
  private final double[] margin;
  private final double[] oldShare;
  private final double[] plantShare;

  ActionPaths(Farm farm, Tables tables, Inputs inputs, Stands stands, GrowthYear year) {
    this.farm = farm;
    this.stands = stands;
    this.year = year;
    years = farm.finance().horizonYears();
    List<Action> list = farm.actions();
    actions = list.stream().map(a -> new ActionInputs(a, inputs)).toArray(ActionInputs[]::new);
    waterlogged = inputs.add(tables.parameter("dose.waterlogged-factor"));
    leafShare = inputs.add(tables.parameter("dose.leaf-share"));
    seed = new SeedPaths(farm, tables, inputs, stands, years);
    int paths = stands.size() * actions.length;
    allowed = new boolean[paths];
    int mostSpecies = 0;
    for (int i = 0; i < stands.size(); i++) {
      Paddock paddock = farm.paddocks().get(i);
      mostSpecies = Math.max(mostSpecies, stands.species(i));
      for (int a = 0; a < actions.length; a++) {
        allowed[i * actions.length + a] = paddock.arable() || !list.get(a).needsArable();
      }
    }
    winter = new double[paths * years];
    other = new double[paths * years];
    strength = new double[paths * years];
    cost = new double[paths * years];
    margin = new double[paths * years];
    oldShare = new double[paths * years];
    plantShare = new double[years * mostSpecies];
  }

  /** Computes every path for a run; the stands must have been set before. */
  void set(double[] x) {
    seed.set(x);
    for (int i = 0; i < stands.size(); i++) {
      for (int a = 0; a < actions.length; a++) {
        if (!allowed(i, a)) {
          continue;
        }
        if (actions[a].action().sows()) {
          setSowing(x, i, a);
        } else {
          setStanding(x, i, a);
        }
      }
    }
  }

  /** The stand stays as it is: every year alike. */
  private void setStanding(double[] x, int i, int a) {
    double clover = stands.cloverShare(x, i);
    double[] shares = stands.shares(i);
    double growth = WinterGrowth.factor(clover, meanYield(x, i, shares, 0));
    double clovers = strength(x, i, clover, shares, 0);
    double old = oldShare(i, shares, 0);
    double yearly = actions[a].costPerHa(x, Phase.YEARLY);
    for (int k = 0; k < years; k++) {
      put(at(i, a) + k, growth, 1, clovers, yearly, 0, old);
    }
  }

  private void setSowing(double[] x, int i, int a) {
    ActionInputs inputs = actions[a];
    Action action = inputs.action();
    int sowing = action.runDownYears();
    int n = stands.species(i);
    seed.run(x, i, inputs, plantShare);
    double chance = inputs.establishmentChance(x);
    double[] standing = stands.shares(i);
    double cloverNow = stands.cloverShare(x, i);
    double target = inputs.targetCloverShare(x);
    double winterOpen = 1 - year.winterShareAfterBreak(action.monthsUngrazed());
    double otherOpen = 1 - year.otherShareAfterBreak(action.monthsUngrazed());
    for (int k = 0; k < years; k++) {
      int slot = at(i, a) + k;
      if (k < sowing) {
        double growth = inputs.runDownGrowth(x);
        double clover = WinterGrowth.factor(cloverNow, meanYield(x, i, standing, 0));
        put(
            slot,
            growth * clover,
            growth,
            strength(x, i, cloverNow, standing, 0),
            inputs.costPerHa(x, Phase.RUN_DOWN) + inputs.costPerHa(x, Phase.YEARLY),
            inputs.cropMarginPerHa(x),
            oldShare(i, standing, 0));
        continue;
      }
      // Taken at first sowing: k - sowing years old. Failed and sown again: one year younger.
      double takenGrowth = standGrowth(x, inputs, k - sowing);
      double againGrowth = standGrowth(x, inputs, Math.max(0, k - sowing - 1));
      boolean shut = k == sowing;
      boolean shutAgain = k <= sowing + 1;
      int now = k * n;
      int before = (k == sowing ? k : k - 1) * n;
      double taken = cloverShare(action, cloverNow, target, plantShare[now + n - 1]);
      double again = cloverShare(action, cloverNow, target, plantShare[before + n - 1]);
      double takenClover =
          WinterGrowth.factor(taken, meanYield(x, i, plantShare, now)) * takenGrowth;
      double againClover =
          WinterGrowth.factor(again, meanYield(x, i, plantShare, before)) * againGrowth;
      double sowingCost =
          shut
              ? inputs.costPerHa(x, Phase.SOWING)
              : k == sowing + 1 ? (1 - chance) * inputs.costPerHa(x, Phase.SOWING) : 0;
      put(
          slot,
          chance * takenClover * (shut ? winterOpen : 1)
              + (1 - chance) * againClover * (shutAgain ? winterOpen : 1),
          chance * takenGrowth * (shut ? otherOpen : 1)
              + (1 - chance) * againGrowth * (shutAgain ? otherOpen : 1),
          chance * strength(x, i, taken, plantShare, now)
              + (1 - chance) * strength(x, i, again, plantShare, before),
          sowingCost + inputs.costPerHa(x, Phase.YEARLY),
          0,
          chance * oldShare(i, plantShare, now) + (1 - chance) * oldShare(i, plantShare, before));
    }
  }

  /**
   * Clover share of the green feed: the action's target in a new stand. Where seed is drilled into
   * a living stand, that stand keeps its own share, and the target holds only for the part that the
   * newcomer has won: 2 % won brings 50 % clover to 0.98 x 50 + 0.02 x 30 = 49.6 %.
   */
  private static double cloverShare(Action action, double now, double target, double won) {
    return action.kind() == ActionKind.OVERSOW ? now + (target - now) * won : target;
  }

  private static double standGrowth(double[] x, ActionInputs inputs, int yearsOld) {
    return switch (yearsOld) {
      case 0 -> inputs.growthYearOne(x);
      case 1 -> inputs.growthYearTwo(x);
      default -> 1;
    };
  }

  private void put(int slot, double w, double o, double s, double c, double m, double old) {
    winter[slot] = w;
    other[slot] = o;
    strength[slot] = s;
    cost[slot] = c;
    margin[slot] = m;
    oldShare[slot] = old;
  }

  /** Summed as losses, so that current cultivars alone give exactly 1. */
  private double meanYield(double[] x, int i, double[] shares, int from) {
    double loss = 0;
    for (int c = 0; c < stands.species(i); c++) {
      loss += shares[from + c] * (1 - stands.winterYield(x, i, c));
    }
    return 1 - loss;
  }

  private double strength(double[] x, int i, double clover, double[] shares, int from) {
    double leaf = 0;
    for (int c = 0; c < stands.species(i); c++) {
      leaf += shares[from + c] * stands.formononetin(x, i, c);
    }
    double stress = farm.paddocks().get(i).waterlogged() ? x[waterlogged] : 1;
    return Dose.percentOfIntake(stress, 1, clover, x[leafShare], leaf);
  }

  private double oldShare(int i, double[] shares, int from) {
    double sum = 0;
    for (int c = 0; c < stands.species(i); c++) {
      sum += stands.cultivar(i, c).isOld() ? shares[from + c] : 0;
    }
    return sum;
  }

  private int at(int i, int a) {
    return (i * actions.length + a) * years;
  }

  /** Whether the action can be done on the paddock at all. */
  boolean allowed(int i, int a) {
    return allowed[i * actions.length + a];
  }

  /** Whether the action keeps joining ewes off. */
  boolean holdsOff(int a) {
    return actions[a].action().kind() == ActionKind.HOLD_OFF;
  }

  int establishmentInput(int a) {
    return actions[a].establishmentInput();
  }

  /** Whether the paddock is out of grazing for a part of year {@code k} or all of it. */
  boolean isShut(int a, int k) {
    Action action = actions[a].action();
    return action.sows()
        && (k == action.runDownYears() || (k < action.runDownYears() && action.cropped()));
  }

  double winter(int i, int a, int k) {
    return winter[at(i, a) + k];
  }

  double other(int i, int a, int k) {
    return other[at(i, a) + k];
  }

  /** Formononetin, per cent of intake, if all that is eaten were this paddock's green feed. */
  double strength(int i, int a, int k) {
    return strength[at(i, a) + k];
  }

  /** The strongest clover of any path. */
  double strongest() {
    double strongest = 0;
    for (double value : strength) {
      strongest = Math.max(strongest, value);
    }
    return strongest;
  }

  double costPerHa(int i, int a, int k) {
    return cost[at(i, a) + k];
  }

  double marginPerHa(int i, int a, int k) {
    return margin[at(i, a) + k];
  }

  /** Shares of the species of a paddock in each year of a sowing, at {@code year * species + c}. */
  double[] plantShares(double[] x, int i, int a) {
    seed.run(x, i, actions[a], plantShare);
    return Arrays.copyOf(plantShare, years * stands.species(i));
  }

  double oldShare(int i, int a, int k) {
    return oldShare[at(i, a) + k];
  }
}
