package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.UseRule;
import swardcase.grazing.InOrder;
import swardcase.grazing.JoiningWindow;
import swardcase.reproduction.DryEweSale;
import swardcase.sward.StandingClover;

/**
 * What a choice for a paddock, or that of a rule of the farm, adds to the {@link YearSums} of each
 * year, in one run.
 */
final class ChoiceSums {

  static final String COST_OF_RULE = "management.use-rule";
  static final String COST_OF_ORDER = "management.grazing-in-order";

  private final UseRules rules;
  private final StandingClover stands;
  private final ActionPaths paths;
  private final Sowings sowings;
  private final JoiningWindow window;
  private final InOrder inOrder;
  private final DryEweSale[] dryEweSale;
  private final int years;
  private final int keep;
  private final int ewesJoined;
  private final double winterShare;
  private final int mobs;
  private final int sums;
  private final double[] area;
  private final double[] weight;
  private final double[] keptTaken;
  private final double[] kept;
  private final double[] keptOf;
  private final boolean[][] grazes;
  private final boolean[] moves;
  private final double[][] partOf;
  private final int[] base;
  private final Off[] off;
  private final int costOfRule;
  private final int costOfOrder;
  private double[] x;
  private double weightSum;
  private double winterNow;

  ChoiceSums(
      FarmModel model,
      StandingClover stands,
      ActionPaths paths,
      Sowings sowings,
      JoiningWindow window,
      InOrder inOrder,
      DryEweSale[] dryEweSale) {
    this.stands = stands;
    this.paths = paths;
    this.sowings = sowings;
    this.window = window;
    this.inOrder = inOrder;
    this.dryEweSale = dryEweSale;
    rules = model.rules();
    years = model.years();
    keep = model.keep();
    winterShare = model.year().winterShare();
    Farm farm = model.farm();
    ewesJoined = farm.ewesJoined();
    List<Mob> flock = farm.mobs();
    mobs = flock.size();
    sums = YearSums.size(mobs);
    kept = new double[sums];
    area = farm.paddocks().stream().mapToDouble(Paddock::areaHa).toArray();
    keptOf = new double[area.length * sums];
    weight = new double[area.length];
    keptTaken = new double[area.length];
    grazes = new boolean[mobs][area.length];
    moves = new boolean[mobs];
    for (int g = 0; g < mobs; g++) {
      moves[g] = flock.get(g).mayMove();
      for (int i = 0; i < area.length; i++) {
        grazes[g][i] = farm.paddocks().get(i).isGrazedBy(flock.get(g));
      }
    }
    partOf = new double[mobs][area.length];
    for (int i = 0; i < area.length; i++) {
      setParts(i);
    }
    base = new int[model.actions().size()];
    off = new Off[base.length];
    for (int a = 0; a < base.length; a++) {
      base[a] = rules.base(a);
      off[a] = model.actions().get(a).use().map(rule -> new Off(rule, mobs)).orElse(null);
    }
    costOfRule = model.inputs().place(COST_OF_RULE);
    costOfOrder = model.inputs().place(COST_OF_ORDER);
  }

  /** Who is kept off by a rule. */
  private static final class Off {

    private final boolean[] mob;
    private final boolean whileGreen;
    private final boolean all;

    Off(UseRule rule, int mobs) {
      mob = new boolean[mobs];
      rule.mobs().forEach(g -> mob[g] = true);
      whileGreen = rule.when() == UseRule.When.WHILE_GREEN;
      all = rule.mobs().size() == mobs;
    }
  }

  /** Each mob's part of a paddock among the mobs that graze it. */
  private void setParts(int paddock) {
    double all = 0;
    for (int g = 0; g < mobs; g++) {
      all += grazes[g][paddock] ? window.weightKg(g) : 0;
    }
    for (int g = 0; g < mobs; g++) {
      partOf[g][paddock] = grazes[g][paddock] ? window.weightKg(g) / all : 0;
    }
  }

  /**
   * Takes a run, whose paths must have been set before.
   *
   * @return the sums of growth with every paddock kept
   */
  double[] set(double[] assumptions) {
    x = assumptions;
    weightSum = 0;
    double grown = 0;
    Arrays.fill(kept, 0);
    for (int i = 0; i < area.length; i++) {
      int at = paths.at(i, keep, 0);
      weight[i] = area[i] * stands.growthIndex(x, i);
      weightSum += weight[i];
      grown += weight[i] * paths.winter(at);
      keptTaken[i] = taken(i, at);
      addGrowth(kept, 0, i, at, keptTaken[i]);
    }
    winterNow = grown / weightSum;
    return kept;
  }

  /** Sums up a year with every paddock kept; the feed of the joining weeks must be known. */
  double[] setKept() {
    Arrays.fill(kept, 0);
    Arrays.fill(keptOf, 0);
    for (int i = 0; i < area.length; i++) {
      addPath(keptOf, i * sums, 0, i, keep, 0, true);
      addKept(kept, 0, i, sums);
    }
    return kept;
  }

  /** The sums of a year with every paddock kept. */
  double[] kept() {
    return kept;
  }

  /** Area of all paddocks by their growth, ha of ordinary growth. */
  double weightSum() {
    return weightSum;
  }

  /** Winter growth of the farm as it stands relative to current cultivars everywhere. */
  double winterNow() {
    return winterNow;
  }

  /** Sums of a year. */
  int sums() {
    return sums;
  }

  int years() {
    return years;
  }

  boolean isRule(int place) {
    return place >= area.length;
  }

  double areaHa(int paddock) {
    return area[paddock];
  }

  /**
   * Adds what a choice brings in a year; until it starts the paddock is kept.
   *
   * @param withBins whether the classes of strength are added too, which stand last
   */
  void add(double[] into, int to, int t, int place, int action, int start, boolean withBins) {
    if (isRule(place)) {
      addRule(into, to, place - area.length, action);
      return;
    }
    if (t < begins(place, action, start)) {
      addKept(into, to, place, withBins ? sums : YearSums.bins(mobs));
    } else {
      addPath(into, to, t, place, action, start, withBins);
    }
  }

  private void addPath(
      double[] into, int to, int t, int place, int action, int start, boolean withBins) {
    int a = t < start ? keep : base[action];
    int k = t < start ? 0 : t - start;
    int at = pathYear(t, place, action, start);
    double ha = area[place];
    Off rule = ruleIn(t, place, action, start);
    double taken = taken(place, at);
    addGrowth(into, to, place, at, taken);
    addGrazed(into, to, place, taken, paths.strength(at), rule, withBins);
    into[to + YearSums.LABOUR] += rule == null ? 0 : ha * x[costOfRule];
    into[to + YearSums.COST] += ha * paths.costPerHa(at);
    into[to + YearSums.LABOUR] += ha * paths.labourPerHa(at);
    into[to + YearSums.MARGIN] += ha * paths.marginPerHa(at);
    into[to + YearSums.OUT] += paths.isShut(a, k) ? ha : 0;
    into[to + YearSums.CROP] += paths.isCrop(a, k) ? ha : 0;
  }

  private void addKept(double[] into, int to, int place, int used) {
    int of = place * sums;
    for (int k = 0; k < used; k++) {
      into[to + k] += keptOf[of + k];
    }
  }

  /** The sums that a choice brings in every year: {@code [year * sums + sum]}. */
  void fill(double[] into, int place, int action, int start) {
    Arrays.fill(into, 0);
    for (int t = 0; t < years; t++) {
      add(into, t * sums, t, place, action, start, true);
    }
  }

  private void addGrowth(double[] into, int to, int i, int at, double taken) {
    into[to + YearSums.WINTER] += weight[i] * paths.winter(at);
    into[to + YearSums.OTHER] += weight[i] * paths.other(at);
    into[to + YearSums.CLOVER] += taken * paths.cloverShare(at);
  }

  /**
   * Fills in what a paddock is grazed for in the year of a choice, if it grew otherwise than its
   * path says: without what shuts it, so that ewes take what is open. Costs are left as they are.
   *
   * @param winter what cultivars and density make of its growth in winter
   * @param clover its clover share
   * @param strength strength of its clover
   * @param withBins whether the classes of strength are filled in too
   */
  void fillGrazed(
      double[] into,
      int t,
      int i,
      Course course,
      double winter,
      double clover,
      double strength,
      boolean withBins) {
    int to = t * sums;
    int at = pathYear(t, i, course.action(), course.start());
    double ofYear = winterShare * (paths.open(at) * winter) + (1 - winterShare) * paths.other(at);
    double taken = weight[i] * ofYear;
    into[to + YearSums.WINTER] = weight[i] * winter;
    into[to + YearSums.CLOVER] = taken * clover;
    into[to + YearSums.HELD] = 0;
    into[to + YearSums.HELD_GREEN] = 0;
    Arrays.fill(into, to + YearSums.at(0, 0), to + (withBins ? sums : YearSums.bins(mobs)), 0);
    Off rule = ruleIn(t, i, course.action(), course.start());
    addGrazed(into, to, i, taken, strength, rule, withBins);
  }

  /** Adds what ewes take from a paddock in a year, with the strength of its clover. */
  private void addGrazed(
      double[] into, int to, int i, double taken, double strength, Off rule, boolean withBins) {
    double strong = taken * strength;
    if (withBins) {
      int bin = to + YearSums.bins(mobs) + inOrder.bin(strength);
      into[bin] += taken;
      into[bin + InOrder.BINS] += strong;
    }
    double more = rule == null ? 1 : moreOf(rule, i);
    if (rule != null && rule.all) {
      into[to + (rule.whileGreen ? YearSums.HELD_GREEN : YearSums.HELD)] += taken;
    }
    for (int g = 0; g < mobs; g++) {
      int of = to + YearSums.at(g, 0);
      if (!grazes[g][i]) {
        if (moves[g]) {
          into[of + YearSums.DOSE_ELSE] += strong;
          into[of + YearSums.GRAZED_ELSE] += taken;
          into[of + YearSums.OPEN] += taken * window.spare(g);
          into[of + YearSums.OPEN_GREEN] += keptTaken[i] * window.spareInWinter(g);
        }
        continue;
      }
      if (rule != null && rule.mob[g] && !rule.all) {
        into[of + (rule.whileGreen ? YearSums.OFF_GREEN : YearSums.OFF)] += taken;
      }
      double part = partOf[g][i];
      if (rule == null || !rule.mob[g] || !rule.whileGreen) {
        double most = rule != null && rule.whileGreen ? more : 1;
        double times = 1 + window.usedInWinter() * (most - 1);
        into[of + YearSums.DOSE] += times * strong;
        into[of + YearSums.GRAZED] += times * taken;
        into[of + YearSums.SAFE_GREEN] += taken * part * most;
        into[of + YearSums.OPEN_GREEN] += keptTaken[i] * part * most;
      }
      if (rule == null || !rule.mob[g]) {
        double times = 1 + window.used(g) * (more - 1);
        into[of + YearSums.DOSE_HELD] += times * strong;
        into[of + YearSums.GRAZED_HELD] += times * taken;
        into[of + YearSums.SAFE] += taken * part * more;
        into[of + YearSums.OPEN] += taken * part * more;
      }
    }
  }

  /**
   * What falls to a mob that stays on a paddock others are kept off, as a multiple of what it took
   * there before: two mobs of one weight, one of which goes, leave twice as much to the other.
   * Where little of the feed is used it is not taken, so that the mob spreads as before.
   */
  private double moreOf(Off rule, int paddock) {
    double staying = 0;
    for (int g = 0; g < mobs; g++) {
      staying += rule.mob[g] ? 0 : partOf[g][paddock];
    }
    return staying > 0 ? 1 / staying : 1;
  }

  private void addRule(double[] into, int to, int rule, int choice) {
    if (choice > 0 && rule == FarmRule.IN_ORDER.ordinal()) {
      into[to + YearSums.IN_ORDER] += 1;
      into[to + YearSums.LABOUR] += costOfRulePerYear(rule);
    } else if (choice > 0) {
      into[to + YearSums.SELL_DRY] += choice;
      into[to + YearSums.COST] += costOfRulePerYear(rule);
    }
  }

  /** Own time of grazing in order; of selling dry ewes, what scanning them costs. */
  private double costOfRulePerYear(int rule) {
    double perEwe = rule == FarmRule.IN_ORDER.ordinal() ? x[costOfOrder] : dryEweSale[0].scanCost();
    return perEwe * ewesJoined;
  }

  /** Costs of a choice from start to end, own labour among them, undiscounted. */
  double cost(int place, int action, int start) {
    if (isRule(place)) {
      return action > 0 ? costOfRulePerYear(place - area.length) * years : 0;
    }
    double sum = 0;
    for (int t = 0; t < years; t++) {
      sum += labourOfRulePerHa(t, place, action, start);
    }
    for (int k = 0; k < years - start; k++) {
      int at = pathYear(start + k, place, action, start);
      sum += paths.costPerHa(at) + paths.labourPerHa(at);
    }
    return sum;
  }

  /** Own labour that the use rule of a choice takes in a year, if one holds then. */
  double labourOfRulePerHa(int t, int i, int action, int start) {
    return ruleIn(t, i, action, start) == null ? 0 : x[costOfRule];
  }

  /** The use rule that holds on a paddock in a year; null if none does. */
  private Off ruleIn(int t, int i, int action, int start) {
    if (off[action] == null) {
      return null;
    }
    boolean ends = base[action] != keep && t >= start + rules.years(i, action);
    return ends ? null : off[action];
  }

  /** The first year that a choice of a place changes; a rule holds from the coming year on. */
  int begins(int place, int action, int start) {
    if (isRule(place)) {
      return action > 0 ? 0 : years;
    }
    return action == keep ? years : off[action] != null ? 0 : start;
  }

  /** Where the year of a choice stands among the paths. */
  int pathYear(int t, int i, int action, int start) {
    int a = base[action];
    return t < start
        ? paths.at(i, keep, 0)
        : paths.at(i, a, sowings.failures(i, a, start), t - start);
  }

  /** Feed that is taken from a paddock in the year of a path, ha of ordinary growth. */
  double taken(int i, int at) {
    return weight[i] * (winterShare * paths.winter(at) + (1 - winterShare) * paths.other(at));
  }

  /** Feed of the farm in a year, ha of ordinary growth. */
  double taken(double[] of, int at) {
    return winterShare * of[at + YearSums.WINTER] + (1 - winterShare) * of[at + YearSums.OTHER];
  }
}
