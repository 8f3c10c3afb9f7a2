package swardcase.joining;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.feed.EnergyMethod;
import swardcase.feed.StockDemand;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.sward.StandingClover;

/** A farm at its likely values with the days of joining, ready for plans. */
final class JoiningCase {

  /**
   * A green dose from which feed counts as risky, % of intake: below it nothing could be told from
   * normal variation (inferred).
   */
  static final double RISKY_DOSE = 0.15;

  /**
   * Feed that must be left on a paddock relative to what the feed budget leaves on the average
   * paddock: half (inferred). Grazing harder than that would cost growth and ground cover.
   */
  static final double LEAST_LEFT = 0.5;

  final FarmModel model;
  final Farm farm;
  final OutcomeFunction run;
  final int[] joiningDay;
  final int[] ewes;
  final List<Integer> halfMonths;
  final double[] strength;
  final ComingYear coming;
  private final FeedCourse feed;
  private final StockDemand demand;
  private final double weightSum;
  private final double areaHa;
  private final boolean[][] matters;

  /**
   * @param run a run at likely values
   * @param strength formononetin of each paddock's green feed as it is planned with, % of intake
   * @param daysLater how much later than written all mobs are joined; may be negative
   * @param coming what the plan says of the coming year
   */
  JoiningCase(
      FarmModel model, OutcomeFunction run, double[] strength, int daysLater, ComingYear coming) {
    this.coming = coming;
    this.model = model;
    this.run = run;
    farm = model.farm();
    List<Mob> mobs = farm.mobs();
    joiningDay = new int[mobs.size()];
    ewes = new int[mobs.size()];
    matters = new boolean[ewes.length][];
    boolean[] any = new boolean[HalfMonths.COUNT];
    for (int g = 0; g < ewes.length; g++) {
      ewes[g] = mobs.get(g).ewes();
      joiningDay[g] =
          Math.floorMod(
              HalfMonths.dayOfYear(mobs.get(g).joiningStart()) + daysLater, HalfMonths.DAYS);
      matters[g] = Weeks.of(joiningDay[g], mobs.get(g).joiningWeeks().likely());
      for (int p = 0; p < any.length; p++) {
        any[p] |= matters[g][p];
      }
    }
    halfMonths = Weeks.run(any);
    areaHa = farm.areaHa();
    this.strength = strength;
    double sum = 0;
    for (int i = 0; i < strength.length; i++) {
      sum += run.feedWeight(i);
    }
    weightSum = sum;
    feed = new FeedCourse(model, run);
    double[] pregnant =
        mobs.stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    demand = StockDemand.of(farm, model.tables(), EnergyMethod.SCA_1990, pregnant);
  }

  /**
   * Strengths to plan with: the likely ones, but where too much of the clover is unknown the one it
   * would have if unknown clover held the most formononetin that is likely. What nobody has looked
   * at is not safe.
   */
  static double[] cautiousStrength(FarmModel model, OutcomeFunction likely) {
    double[] x = model.inputs().likely();
    OptionalInt unknown = model.inputs().find(StandingClover.UNKNOWN_FORMONONETIN);
    double[] strength = new double[model.farm().paddocks().size()];
    OutcomeFunction high = likely;
    if (unknown.isPresent()) {
      int place = unknown.getAsInt();
      x[place] = model.inputs().get(place).range().high();
      high = model.newRun();
      high.set(x);
    }
    for (int i = 0; i < strength.length; i++) {
      strength[i] = isUnknown(model, likely, i) ? high.greenDose(i) : likely.greenDose(i);
    }
    return strength;
  }

  /** Whether too much of a paddock's clover has a formononetin nobody knows. */
  static boolean isUnknown(FarmModel model, OutcomeFunction run, int paddock) {
    return run.composition(paddock).isOestrogenUnknown(model.farm().paddocks().get(paddock));
  }

  int mobs() {
    return ewes.length;
  }

  int paddocks() {
    return strength.length;
  }

  /** Whether a mob's own joining makes a half-month of the plan matter. */
  boolean matters(int mob, int halfMonth) {
    return matters[mob][halfMonth];
  }

  /** Whether a group must not use a paddock in a half-month, by the plan of the farm. */
  boolean isClosed(int group, int halfMonth, int paddock) {
    return coming.isShut(paddock)
        || group < ewes.length
            && coming.isOff(group, halfMonth, matters(group, halfMonth), paddock);
  }

  /** The true losses with paddocks of these strengths. */
  Losses losses(double[] strengths) {
    return new Losses(run, halfMonths, joiningDay, ewes, strengths);
  }

  /** Feed and needs, with paddocks of these strengths. */
  GrazingProblem problem(double[] strengths) {
    int count = halfMonths.size();
    int paddocks = strengths.length;
    List<OtherStock> others = farm.otherStock();
    int groups = ewes.length + others.size();
    double[] weight = new double[paddocks];
    double[] startKg = new double[paddocks];
    double[][] grownKg = new double[count][paddocks];
    double[][] leastKg = new double[count][paddocks];
    double[][] riskyDays = new double[count][paddocks];
    double[] kept = new double[count];
    double[] energy = new double[count];
    double[][] need = new double[groups][count];
    int before = Math.floorMod(halfMonths.get(0) - 1, HalfMonths.COUNT);
    for (int i = 0; i < paddocks; i++) {
      weight[i] = run.feedWeight(i);
      startKg[i] = feed.endKg(before) * part(i);
    }
    for (int k = 0; k < count; k++) {
      int p = halfMonths.get(k);
      kept[k] = feed.kept(p);
      energy[k] = feed.energyMjPerKg(p);
      double days = HalfMonths.days(p);
      for (int i = 0; i < paddocks; i++) {
        grownKg[k][i] = feed.grownKg(p) * part(i);
        leastKg[k][i] = LEAST_LEFT * feed.endKg(p) * part(i);
        riskyDays[k][i] = strengths[i] * run.greenShare(p) >= RISKY_DOSE ? days : 0;
      }
      double share = energy[k] > 0 ? feed.pastureShare(p) : 0;
      for (int g = 0; g < groups; g++) {
        need[g][k] = share * days * needMjPerDay(g, p);
      }
    }
    double[] mostRiskyDays = new double[groups];
    Arrays.fill(mostRiskyDays, Double.POSITIVE_INFINITY);
    for (int o = 0; o < others.size(); o++) {
      int group = ewes.length + o;
      others.get(o).mostRiskyDays().ifPresent(days -> mostRiskyDays[group] = days.likely());
    }
    return new GrazingProblem(
        ewes.length,
        weight,
        startKg,
        grownKg,
        leastKg,
        kept,
        energy,
        need,
        run.pricePerMj(),
        riskyDays,
        mostRiskyDays);
  }

  /** A paddock's part of the farm's feed, as hectares of the average. */
  private double part(int paddock) {
    return areaHa * run.feedWeight(paddock) / weightSum;
  }

  private double needMjPerDay(int group, int p) {
    if (group < ewes.length) {
      return demand.mobMjPerDay(group, p);
    }
    OtherStock stock = farm.otherStock().get(group - ewes.length);
    if (!stock.months().contains(HalfMonths.month(p))) {
      return 0;
    }
    double all = 0;
    for (OtherStock other : farm.otherStock()) {
      if (other.months().contains(HalfMonths.month(p))) {
        all += other.head() * other.dsePerHead().likely();
      }
    }
    double own = stock.head() * stock.dsePerHead().likely();
    return all > 0 ? demand.otherMjPerDay(p) * own / all : 0;
  }
}
