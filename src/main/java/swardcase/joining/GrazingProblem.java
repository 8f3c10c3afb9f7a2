package swardcase.joining;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import swardcase.check.Check;
import swardcase.grazing.GrazingOrder;
import swardcase.grazing.GrazingSeason;

/**
 * Feed of the paddocks and need of the groups over the half-months of a plan. Groups are the ewe
 * mobs first, then other stock. Arrays are the caller's and are not written to.
 *
 * <pre>
 *   feed left (i, p) = kept(p) x (feed left (i, p-1) + grown(i, p) - sum over groups of taken)
 *   taken by g       = share(g, p, i) x pasture need(g, p) / energy(p)                    kg DM
 *   feed left (i, p) at least least(i, p)
 * </pre>
 *
 * <p>100 kg left, 50 grown, a group of 600 MJ on feed of 10 MJ/kg that takes half of its need here,
 * nine tenths kept: 0.9 x (100 + 50 - 30) = 108 kg left.
 */
final class GrazingProblem {

  final int ewes;
  final int groups;
  final int halfMonths;
  final int paddocks;
  final double[] weight;
  final double[] startKg;
  final double[][] grownKg;
  final double[][] leastKg;
  final double[] kept;
  final double[] energyMjPerKg;
  final double[][] pastureNeedMj;
  final double pricePerMj;
  final double[][] riskyDays;
  final double[] mostRiskyDays;

  /**
   * @param ewes groups that are ewe mobs; the first ones
   * @param weight feed that each paddock gives relative to others
   * @param startKg feed on each paddock before the first half-month, kg DM
   * @param grownKg growth by half-month and paddock, kg DM
   * @param leastKg feed to be left by half-month and paddock, kg DM
   * @param kept share of what is left that the half-month's decay spares
   * @param energyMjPerKg energy of feed eaten in each half-month
   * @param pastureNeedMj what each group takes from pasture, by group and half-month, MJ
   * @param pricePerMj money for one MJ bought instead
   * @param riskyDays days of the half-month if the paddock is then risky, else 0
   * @param mostRiskyDays days over the whole plan that each group may be on risky feed; infinite
   *     where they are not limited
   */
  GrazingProblem(
      int ewes,
      double[] weight,
      double[] startKg,
      double[][] grownKg,
      double[][] leastKg,
      double[] kept,
      double[] energyMjPerKg,
      double[][] pastureNeedMj,
      double pricePerMj,
      double[][] riskyDays,
      double[] mostRiskyDays) {
    this.ewes = ewes;
    groups = pastureNeedMj.length;
    halfMonths = kept.length;
    paddocks = startKg.length;
    Check.that(ewes <= groups && mostRiskyDays.length == groups, "groups must be ewes and others");
    Check.that(grownKg.length == halfMonths && leastKg.length == halfMonths, "half-months differ");
    this.weight = weight;
    this.startKg = startKg;
    this.grownKg = grownKg;
    this.leastKg = leastKg;
    this.kept = kept;
    this.energyMjPerKg = energyMjPerKg;
    this.pastureNeedMj = pastureNeedMj;
    this.pricePerMj = Check.notNegative(pricePerMj, "price of energy");
    this.riskyDays = riskyDays;
    this.mostRiskyDays = mostRiskyDays;
  }

  /**
   * The problem with paddocks taken together, their feed added up.
   *
   * @param together for each paddock the place of those it goes with; they are risky alike
   * @param count how many places there are
   */
  GrazingProblem joined(int[] together, int count) {
    double[][] grown = new double[halfMonths][];
    double[][] least = new double[halfMonths][];
    double[][] risky = new double[halfMonths][count];
    for (int p = 0; p < halfMonths; p++) {
      grown[p] = sums(grownKg[p], together, count);
      least[p] = sums(leastKg[p], together, count);
      for (int i = 0; i < paddocks; i++) {
        risky[p][together[i]] = riskyDays[p][i];
      }
    }
    return new GrazingProblem(
        ewes,
        sums(weight, together, count),
        sums(startKg, together, count),
        grown,
        least,
        kept,
        energyMjPerKg,
        pastureNeedMj,
        pricePerMj,
        risky,
        mostRiskyDays);
  }

  private static double[] sums(double[] numbers, int[] together, int count) {
    double[] sums = new double[count];
    for (int i = 0; i < numbers.length; i++) {
      sums[together[i]] += numbers[i];
    }
    return sums;
  }

  /** What a group takes in a half-month if it lives on pasture, kg DM. */
  double takenKg(int group, int halfMonth) {
    return energyMjPerKg[halfMonth] > 0
        ? pastureNeedMj[group][halfMonth] / energyMjPerKg[halfMonth]
        : 0;
  }

  /**
   * The way of grazing that gives the cleanest paddocks to those whom it helps most.
   *
   * @param cost money lost if the group takes all its pasture of a half-month from a paddock, by
   *     group, half-month, paddock; infinite where it must not go
   * @param strength formononetin of each paddock's green feed, % of intake
   * @param apart whether groups are kept apart where that is cheap
   */
  Grazing inOrder(double[][][] cost, double[] strength, boolean apart) {
    double[] price = Arrays.stream(energyMjPerKg).map(mj -> mj * pricePerMj).toArray();
    double[][] need = new double[groups][halfMonths];
    double[][][] lossPerKg = new double[groups][halfMonths][paddocks];
    for (int g = 0; g < groups; g++) {
      for (int p = 0; p < halfMonths; p++) {
        double all = takenKg(g, p);
        need[g][p] = all;
        Arrays.setAll(lossPerKg[g][p], all > 0 ? by(cost[g][p], all) : i -> 0);
      }
    }
    double[][] feed = new double[paddocks][halfMonths];
    double[][] keptSince = new double[paddocks][halfMonths];
    for (int i = 0; i < paddocks; i++) {
      feedAtStart(i, feed[i], keptSince[i]);
    }
    GrazingSeason season =
        new GrazingSeason(
            feed, keptSince, need, lossPerKg, price, strength, mostRiskyDays, riskyDays);
    double[][][] share = apart ? GrazingOrder.eatenApartKg(season) : GrazingOrder.eatenKg(season);
    for (int g = 0; g < groups; g++) {
      for (int p = 0; p < halfMonths; p++) {
        double all = need[g][p];
        double[] eaten = share[g][p];
        Arrays.setAll(eaten, i -> all > 0 ? Math.min(1, eaten[i] / all) : 0);
      }
    }
    return new Grazing(share);
  }

  private static IntToDoubleFunction by(double[] cost, double kg) {
    return i -> cost[i] / kg;
  }

  /** Feed of one paddock at the measure of the first half-month, and what decay leaves of a kg. */
  private void feedAtStart(int i, double[] feed, double[] keptSince) {
    double left = startKg[i];
    double decayed = 1;
    for (int p = 0; p < halfMonths; p++) {
      keptSince[p] = decayed;
      decayed *= kept[p];
      left = kept[p] * (left + grownKg[p][i]);
      feed[p] = Math.max(0, left - leastKg[p][i]) / decayed;
    }
  }

  /** Energy bought because of a way of grazing, MJ, beyond what the feed budget buys anyway. */
  double boughtMj(Grazing grazing) {
    double sum = 0;
    for (int p = 0; p < halfMonths; p++) {
      sum += boughtMj(grazing, p);
    }
    return sum;
  }

  /** The same in one half-month. */
  double boughtMj(Grazing grazing, int halfMonth) {
    double sum = 0;
    for (int g = 0; g < groups; g++) {
      sum += grazing.bought(g, halfMonth) * pastureNeedMj[g][halfMonth];
    }
    return sum;
  }
}
