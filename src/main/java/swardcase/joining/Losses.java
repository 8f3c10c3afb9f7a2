package swardcase.joining;

import java.util.List;
import swardcase.farm.HalfMonths;
import swardcase.outcome.OutcomeFunction;

/**
 * What a way of grazing costs, by the whole dose-response and not by the straight lines it is found
 * by: dose of each half-month, its building up and wearing off, conception by cycles.
 *
 * <p>A mob's dose in a half-month is the sum over paddocks of share x strength x green share.
 * Supplement bought on top dilutes it. Half-months outside the plan are grazed as now.
 */
final class Losses {

  private final OutcomeFunction run;
  private final List<Integer> halfMonths;
  private final int[] joiningDay;
  private final int[] ewes;
  private final double[] strength;
  private final double[] dose = new double[HalfMonths.COUNT];

  /**
   * @param halfMonths those of the plan, in order
   * @param joiningDay day of the year the rams go in, by mob
   * @param ewes ewes joined, by mob
   * @param strength formononetin of each paddock's green feed, % of intake
   */
  Losses(
      OutcomeFunction run,
      List<Integer> halfMonths,
      int[] joiningDay,
      int[] ewes,
      double[] strength) {
    this.run = run;
    this.halfMonths = halfMonths;
    this.joiningDay = joiningDay;
    this.ewes = ewes;
    this.strength = strength;
  }

  /** Fills {@code into}, 24 values, with a mob's doses under a way of grazing. */
  void doses(int mob, Grazing grazing, double[] into) {
    outsideAsNow(mob, into);
    for (int k = 0; k < halfMonths.size(); k++) {
      double sum = 0;
      for (int i = 0; i < strength.length; i++) {
        sum += grazing.share(mob, k, i) * strength[i];
      }
      into[halfMonths.get(k)] = sum * run.greenShare(halfMonths.get(k));
    }
  }

  private void outsideAsNow(int mob, double[] into) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      into[p] = run.flock(mob).doseNow(p);
    }
  }

  /** Ewes not in lamb because of a way of grazing, of a mob. */
  double ewesNotInLamb(int mob, Grazing grazing) {
    doses(mob, grazing, dose);
    return ewes[mob] * run.flock(mob).lossOfJoining(dose, joiningDay[mob]);
  }

  /** Lambs not marked because of it, all mobs. */
  double lambs(Grazing grazing) {
    double sum = 0;
    for (int g = 0; g < ewes.length; g++) {
      sum += ewesNotInLamb(g, grazing) * run.lambsPerPregnantEwe(g);
    }
    return sum;
  }

  /** Their worth, dry ewes' cost counted. */
  double money(Grazing grazing) {
    double sum = 0;
    for (int g = 0; g < ewes.length; g++) {
      sum += ewesNotInLamb(g, grazing) * run.valuePerPregnantEwe(g);
    }
    return sum;
  }

  /**
   * Money lost if a mob takes all feed of one half-month from one paddock rather than from safe
   * feed, its other half-months at the doses {@code base}: by half-month of the plan and paddock.
   */
  double[][] chords(int mob, double[] base) {
    double[][] cost = new double[halfMonths.size()][strength.length];
    double[] doses = base.clone();
    double worth = ewes[mob] * run.valuePerPregnantEwe(mob);
    for (int k = 0; k < cost.length; k++) {
      int p = halfMonths.get(k);
      doses[p] = 0;
      double safe = run.flock(mob).lossOfJoining(doses, joiningDay[mob]);
      for (int i = 0; i < strength.length; i++) {
        doses[p] = strength[i] * run.greenShare(p);
        double lost = run.flock(mob).lossOfJoining(doses, joiningDay[mob]) - safe;
        cost[k][i] = worth * Math.max(0, lost);
      }
      doses[p] = base[p];
    }
    return cost;
  }

  /** Doses of a mob on safe feed through the whole plan. */
  double[] safe(int mob) {
    double[] doses = new double[HalfMonths.COUNT];
    outsideAsNow(mob, doses);
    halfMonths.forEach(p -> doses[p] = 0);
    return doses;
  }

  /** A mob's doses under a way of grazing, as an array of its own. */
  double[] doses(int mob, Grazing grazing) {
    double[] doses = new double[HalfMonths.COUNT];
    doses(mob, grazing, doses);
    return doses;
  }

  /** Points of ewes in lamb (per 100 joined) lost to these doses alone, 24 or 365 of them. */
  static double points(OutcomeFunction run, int mob, double[] doses, int joiningDay) {
    return 100 * run.flock(mob).lossOfJoining(doses, joiningDay);
  }

  /** No dose on any day. */
  static double[] noDoseByDay() {
    return new double[HalfMonths.DAYS];
  }
}
