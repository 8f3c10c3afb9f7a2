package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.CostLine.Phase;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.feed.GrowthYear;
import swardcase.sward.Composition;
import swardcase.sward.Dose;
import swardcase.sward.StandingClover;
import swardcase.sward.WinterGrowth;
import swardcase.tables.Tables;

/**
 * Works out what an action makes of the stand of a paddock, year by year from its start, and writes
 * it into the {@link ActionPaths}: the stand as it is, with grass drilled in, cropped, or sown.
 */
final class StandYears {

  private static final String WATERLOGGED_FACTOR = "dose.waterlogged-factor";
  private static final String LEAF_SHARE = "dose.leaf-share";
  private static final String SOWN_CLOVER = "sowing.clover-share";
  private static final String SOWN_CLOVER_YEAR_ONE = "sowing.clover-year-one";
  private static final String SOWN_CLOVER_YEARS = "sowing.clover-years";
  private static final String CROP_ON_WET_GROUND = "crop.waterlogged-factor";
  private static final String CLOVER_AFTER_CROP = "crop.clover-first-year";
  static final String THINNED_CLOVER = "thin.clover-share";
  static final String THINNED_YEARS = "thin.clover-years";
  private static final String THINNED_WINTER = "thin.winter-growth";
  private static final String THINNED_OTHER = "thin.other-growth";
  private static final int NONE = -1;

  private final ActionPaths paths;
  private final Farm farm;
  private final StandingClover stands;
  private final ActionInputs[] actions;
  private final SeedPaths seed;
  private final ThinStands thin;
  private final int years;
  private final int waterlogged;
  private final int leafShare;
  private final int sownClover;
  private final int sownCloverYearOne;
  private final int sownCloverYears;
  private final int cropOnWetGround;
  private final int cloverAfterCrop;
  private final int thinnedClover;
  private final int thinnedYears;
  private final int thinnedWinter;
  private final int thinnedOther;
  private final double[] winterOpen;
  private final double[] otherOpen;
  private final double[] plantShare;
  private final double[] sown = new double[ActionPaths.NUMBERS];
  private final double[] lossOf;
  private final double[] leafOf;
  private final double[] oldOf;
  private final double[] yieldIn;
  private final double[] leafIn;
  private final double[] oldIn;
  private final double[] cloverIn;
  private final double[] settledIn;
  private final double[] denseIn;
  private final double[] ownYieldIn;
  private final double[] ownLeafIn;

  /** Enters the uncertain numbers of actions, of the dose and of the seed bank. */
  static void enter(
      UncertainNumbers.Builder numbers, Farm farm, Tables tables, List<Composition> compositions) {
    farm.actions().forEach(action -> ActionInputs.enter(numbers, action));
    numbers.add(WATERLOGGED_FACTOR, tables.parameter(WATERLOGGED_FACTOR));
    numbers.add(LEAF_SHARE, tables.parameter(LEAF_SHARE));
    if (farm.actions().stream().anyMatch(Action::sows)) {
      for (String key : List.of(SOWN_CLOVER, SOWN_CLOVER_YEAR_ONE, SOWN_CLOVER_YEARS)) {
        numbers.add(key, tables.parameter(key));
      }
    }
    boolean isWet = farm.paddocks().stream().anyMatch(Paddock::waterlogged);
    if (isWet && farm.actions().stream().anyMatch(Action::cropped)) {
      numbers.add(CROP_ON_WET_GROUND, tables.parameter(CROP_ON_WET_GROUND));
    }
    if (farm.actions().stream().anyMatch(action -> action.kind() == ActionKind.CROP)) {
      numbers.add(CLOVER_AFTER_CROP, tables.parameter(CLOVER_AFTER_CROP));
    }
    if (farm.actions().stream().anyMatch(action -> action.kind() == ActionKind.THIN)) {
      for (String key : List.of(THINNED_CLOVER, THINNED_YEARS, THINNED_WINTER, THINNED_OTHER)) {
        numbers.add(key, tables.parameter(key));
      }
    }
    SeedPaths.enter(numbers, farm, tables, compositions);
    ThinStands.enter(numbers, farm, tables);
  }

  /** The stands of a farm, whose years are written into these paths. */
  StandYears(
      ActionPaths paths,
      Farm farm,
      UncertainNumbers numbers,
      StandingClover stands,
      GrowthYear year,
      ActionInputs[] actions) {
    this.paths = paths;
    this.actions = actions;
    this.farm = farm;
    this.stands = stands;
    years = farm.finance().horizonYears();
    waterlogged = numbers.place(WATERLOGGED_FACTOR);
    leafShare = numbers.place(LEAF_SHARE);
    sownClover = numbers.find(SOWN_CLOVER).orElse(NONE);
    sownCloverYearOne = numbers.find(SOWN_CLOVER_YEAR_ONE).orElse(NONE);
    sownCloverYears = numbers.find(SOWN_CLOVER_YEARS).orElse(NONE);
    cropOnWetGround = numbers.find(CROP_ON_WET_GROUND).orElse(NONE);
    cloverAfterCrop = numbers.find(CLOVER_AFTER_CROP).orElse(NONE);
    thinnedClover = numbers.find(THINNED_CLOVER).orElse(NONE);
    thinnedYears = numbers.find(THINNED_YEARS).orElse(NONE);
    thinnedWinter = numbers.find(THINNED_WINTER).orElse(NONE);
    thinnedOther = numbers.find(THINNED_OTHER).orElse(NONE);
    seed = new SeedPaths(farm, numbers, stands, years);
    thin = new ThinStands(farm, numbers, stands, seed, year.earlyWinterShare());
    int mostSpecies = 0;
    for (int i = 0; i < stands.size(); i++) {
      mostSpecies = Math.max(mostSpecies, stands.species(i));
    }
    winterOpen = new double[actions.length];
    otherOpen = new double[actions.length];
    for (int a = 0; a < actions.length; a++) {
      double ungrazed = actions[a].action().monthsUngrazed();
      winterOpen[a] = 1 - year.winterShareAfterBreak(ungrazed);
      otherOpen[a] = 1 - year.otherShareAfterBreak(ungrazed);
    }
    plantShare = new double[years * mostSpecies];
    lossOf = new double[mostSpecies];
    leafOf = new double[mostSpecies];
    oldOf = new double[mostSpecies];
    yieldIn = new double[years];
    leafIn = new double[years];
    oldIn = new double[years];
    cloverIn = new double[years];
    settledIn = new double[years];
    denseIn = new double[years];
    ownYieldIn = new double[years];
    ownLeafIn = new double[years];
  }

  /** Takes what all paddocks of a run share. */
  void set(double[] x) {
    if (sownClover >= 0) {
      double missing = 1 - x[sownCloverYearOne];
      double left = Math.exp(-1 / x[sownCloverYears]);
      for (int k = 0; k < years; k++) {
        settledIn[k] = 1 - missing;
        missing *= left;
      }
    }
  }

  /** Writes the path of an action on a paddock. */
  void fill(double[] x, int i, int a) {
    seed.set(x, i);
    thin.set(x, i);
    setSpecies(x, i);
    if (actions[a].action().kind() == ActionKind.THIN) {
      setThinned(x, i, a);
    } else if (actions[a].action().changesStand()) {
      setChanged(x, i, a);
    } else {
      setStanding(x, i, a);
    }
  }

  /** No path of a paddock is stronger: that of the stand, or of one all of its strongest name. */
  double strongest(double[] x, int i) {
    setSpecies(x, i);
    double cloverNow = stands.cloverShare(x, i);
    int n = stands.species(i);
    double leaf = 0;
    for (int c = 0; c < n; c++) {
      leaf = Math.max(leaf, leafOf[c]);
    }
    double clover = 0;
    for (int a = 0; a < actions.length; a++) {
      Action action = actions[a].action();
      if (paths.allowed(i, a) && action.kind() == ActionKind.CROP) {
        clover = Math.max(clover, cloverNow);
      } else if (paths.allowed(i, a) && action.sows()) {
        double target = settledCloverShare(x, i, a);
        boolean keepsStand = action.kind() == ActionKind.OVERSOW;
        clover = Math.max(clover, keepsStand ? Math.max(cloverNow, target) : target);
      }
    }
    double standing = strength(x, i, cloverNow, sum(leafOf, stands.shares(i), 0, n));
    return Math.max(standing, strength(x, i, clover, leaf));
  }

  /** What each species of a paddock is like, read once for all its paths. */
  private void setSpecies(double[] x, int i) {
    for (int c = 0; c < stands.species(i); c++) {
      lossOf[c] = 1 - stands.winterYield(x, i, c);
      leafOf[c] = stands.formononetin(x, i, c);
      oldOf[c] = stands.cultivar(i, c).isOld() ? 1 : 0;
    }
  }

  /** The stand stays as it is: every year alike. */
  private void setStanding(double[] x, int i, int a) {
    double clover = stands.cloverShare(x, i);
    double[] shares = stands.shares(i);
    int n = stands.species(i);
    double cultivars = WinterGrowth.factor(clover, 1 - sum(lossOf, shares, 0, n));
    double clovers = strength(x, i, clover, sum(leafOf, shares, 0, n));
    double old = sum(oldOf, shares, 0, n);
    double paid = actions[a].costPerHa(x, Phase.YEARLY, false);
    double labour = actions[a].costPerHa(x, Phase.YEARLY, true);
    for (int k = 0; k < years; k++) {
      paths.put(i, a, k, 1, clovers, paid, labour, 0, old);
      paths.putWinter(i, a, k, 1, cultivars, thin.now(i));
    }
  }

  /**
   * Grass drilled into the stand, which keeps its names. Of the clover share L and of what the
   * grass adds to growth, with e = exp(-k/T) k years after the drilling,
   *
   * <pre>
   *   clover  L (1 - e (1 - s))        growth  1 + e (g - 1)
   * </pre>
   *
   * 60 % clover with s 0.62 and T of three years: 37 % in the year of drilling, 44 % two years
   * later, 57 % after six.
   */
  private void setThinned(double[] x, int i, int a) {
    ActionInputs inputs = actions[a];
    double[] standing = stands.shares(i);
    int n = stands.species(i);
    double loss = sum(lossOf, standing, 0, n);
    double leaf = sum(leafOf, standing, 0, n);
    double old = sum(oldOf, standing, 0, n);
    double cloverNow = stands.cloverShare(x, i);
    double left = Math.exp(-1 / x[thinnedYears]);
    double grass = 1;
    for (int k = 0; k < years; k++) {
      boolean first = k == 0;
      double clover = cloverNow * (1 - grass * (1 - x[thinnedClover]));
      double stand = first ? inputs.growthYearOne(x) : 1;
      double winter = stand * (1 + grass * (x[thinnedWinter] - 1)) * (first ? winterOpen[a] : 1);
      double other = stand * (1 + grass * (x[thinnedOther] - 1)) * (first ? otherOpen[a] : 1);
      paths.put(
          i,
          a,
          k,
          other,
          strength(x, i, clover, leaf),
          costPerHa(inputs, x, first, false),
          costPerHa(inputs, x, first, true),
          0,
          old);
      paths.putWinter(i, a, k, winter, WinterGrowth.factor(clover, 1 - loss), thin.now(i));
      paths.putClover(i, a, k, clover);
      grass *= left;
    }
  }

  private static double costPerHa(ActionInputs inputs, double[] x, boolean sown, boolean labour) {
    return inputs.costPerHa(x, Phase.YEARLY, labour)
        + (sown ? inputs.costPerHa(x, Phase.SOWING, labour) : 0);
  }

  private void setChanged(double[] x, int i, int a) {
    ActionInputs inputs = actions[a];
    Action action = inputs.action();
    int sowing = action.runDownYears();
    int n = stands.species(i);
    seed.run(x, i, inputs, plantShare);
    double cloverNow = stands.cloverShare(x, i);
    if (sowing > 0) {
      double[] standing = stands.shares(i);
      double growth = inputs.runDownGrowth(x);
      double cultivars = WinterGrowth.factor(cloverNow, 1 - sum(lossOf, standing, 0, n));
      double strength = strength(x, i, cloverNow, sum(leafOf, standing, 0, n));
      double old = sum(oldOf, standing, 0, n);
      double paid =
          inputs.costPerHa(x, Phase.RUN_DOWN, false) + inputs.costPerHa(x, Phase.YEARLY, false);
      double labour =
          inputs.costPerHa(x, Phase.RUN_DOWN, true) + inputs.costPerHa(x, Phase.YEARLY, true);
      double margin = inputs.cropMarginPerHa(x) * onWetGround(x, i);
      for (int k = 0; k < Math.min(sowing, years); k++) {
        paths.put(i, a, k, growth, strength, paid, labour, margin, old);
        double density =
            action.cropped() ? thin.now(i) : thin.factor(i, cloverNow, thin.plantsPerM2(i, k, 0));
        paths.putWinter(i, a, k, growth, cultivars, density);
      }
    }
    double target = action.sows() ? settledCloverShare(x, i, a) : cloverNow;
    double stress = stress(x, i);
    double leafOfClover = x[leafShare];
    boolean sowsOther = action.sows() && !stands.isAllSown(i);
    double ownTarget = sowsOther ? inputs.targetCloverShare(x, cloverNow) : 0;
    double ownLoss = sum(lossOf, stands.shares(i), 0, n);
    double ownLeaf = sum(leafOf, stands.shares(i), 0, n);
    for (int k = sowing; k < years; k++) {
      double loss = 0;
      double leaf = 0;
      double old = 0;
      for (int c = 0; c < n; c++) {
        double share = plantShare[k * n + c];
        loss += share * lossOf[c];
        leaf += share * leafOf[c];
        old += share * oldOf[c];
      }
      double clover =
          switch (action.kind()) {
            case CROP -> k == sowing ? cloverNow * x[cloverAfterCrop] : cloverNow;
            case OVERSOW -> cloverNow + (target - cloverNow) * plantShare[k * n + n - 1];
            default -> target * settledIn[k - sowing];
          };
      yieldIn[k] = WinterGrowth.factor(clover, 1 - loss);
      leafIn[k] = Dose.percentOfIntake(stress, 1, clover, leafOfClover, leaf);
      oldIn[k] = old;
      cloverIn[k] = clover;
      ownYieldIn[k] = yieldIn[k];
      ownLeafIn[k] = leafIn[k];
      if (sowsOther) {
        double own =
            action.kind() == ActionKind.OVERSOW
                ? cloverNow + (ownTarget - cloverNow) * plantShare[k * n + n - 1]
                : ownTarget * settledIn[k - sowing];
        ownYieldIn[k] = WinterGrowth.factor(own, 1 - ownLoss);
        ownLeafIn[k] = Dose.percentOfIntake(stress, 1, own, leafOfClover, ownLeaf);
      }
      double newShare = action.sows() ? plantShare[k * n + n - 1] * (1 - stands.alreadySown(i)) : 0;
      denseIn[k] = thin.factor(i, clover, thin.plantsPerM2(i, k, newShare));
    }
    if (!action.sows()) {
      setBack(x, i, a);
      return;
    }
    double chance = inputs.establishmentChance(x);
    for (int f = 0; f <= ActionPaths.MOST_FAILURES && paths.isDrawn(); f++) {
      setSown(x, i, a, f, 1, f);
    }
    if (!paths.isDrawn()) {
      double left = 1;
      for (int f = 0; f <= ActionPaths.MOST_FAILURES; f++) {
        double share = f == ActionPaths.MOST_FAILURES ? left : left * chance;
        setSown(x, i, a, f, share, 0);
        left -= share;
      }
    }
  }

  /** The old stand back after its crops: grazed all year, thinner in its first year. */
  private void setBack(double[] x, int i, int a) {
    ActionInputs inputs = actions[a];
    int first = inputs.action().runDownYears();
    double paid = inputs.costPerHa(x, Phase.YEARLY, false);
    double labour = inputs.costPerHa(x, Phase.YEARLY, true);
    for (int k = first; k < years; k++) {
      double growth = k == first ? inputs.growthYearOne(x) : 1;
      paths.put(i, a, k, growth, leafIn[k], paid, labour, 0, oldIn[k]);
      paths.putWinter(i, a, k, growth, yieldIn[k], denseIn[k]);
    }
  }

  private double onWetGround(double[] x, int i) {
    return farm.paddocks().get(i).waterlogged() && cropOnWetGround != NONE ? x[cropOnWetGround] : 1;
  }

  /**
   * Adds the years from sowing on of a path that failed so often, by its share, to those that stand
   * in a slot; the first one begins anew.
   */
  private void setSown(double[] x, int i, int a, int failures, double share, int slot) {
    ActionInputs inputs = actions[a];
    int sowing = inputs.action().runDownYears();
    double paid = inputs.costPerHa(x, Phase.YEARLY, false);
    double labour = inputs.costPerHa(x, Phase.YEARLY, true);
    double paidAtSowing = paid + inputs.costPerHa(x, Phase.SOWING, false);
    double labourAtSowing = labour + inputs.costPerHa(x, Phase.SOWING, true);
    for (int k = sowing; k < years; k++) {
      // A stand that was sown again is so many years younger.
      int as = Math.max(sowing, k - failures);
      double growth = standGrowth(x, inputs, as - sowing);
      boolean isShut = k <= sowing + failures;
      double open = growth * (isShut ? winterOpen[a] : 1);
      sown[ActionPaths.WINTER] = share * open * yieldIn[as] * denseIn[as];
      sown[ActionPaths.CULTIVARS] = share * yieldIn[as];
      sown[ActionPaths.DENSITY] = share * denseIn[as];
      sown[ActionPaths.OPEN] = share * open;
      sown[ActionPaths.OWN_CULTIVARS] = share * ownYieldIn[as];
      sown[ActionPaths.OWN_STRENGTH] = share * ownLeafIn[as];
      sown[ActionPaths.OTHER] = share * growth * (isShut ? otherOpen[a] : 1);
      sown[ActionPaths.STRENGTH] = share * leafIn[as];
      sown[ActionPaths.COST] = share * (isShut ? paidAtSowing : paid);
      sown[ActionPaths.LABOUR] = share * (isShut ? labourAtSowing : labour);
      sown[ActionPaths.OLD_SHARE] = share * oldIn[as];
      sown[ActionPaths.CLOVER] = share * cloverIn[as];
      paths.add(i, a, slot, k, sown, failures == slot);
    }
  }

  /**
   * Clover share of the green feed that a sown stand settles at: the farm's own target, else the
   * share L that the paddock has in this run, L (1 + (f - 1) (1 - e)), at most 1. f is what another
   * cultivar makes of it and e how much of the standing clover is the one sown already: the same
   * cultivar sown again changes nothing. 60 % clover, of which none is the cultivar sown, comes
   * back to 0.6 x 1.2 = 72 % with f 1.2, to 66 % if half of it is, and to 60 % if all is.
   *
   * <p>A new stand has s of it in the sowing year and 1 - (1 - s) exp(-k/T) of it k years later (s
   * and T from the tables, inferred): with s 0.6 and T of a year 60, 85 and 95 %. Seed drilled into
   * a living stand moves that stand's share only by the part that the newcomer has won: 2 % won of
   * the way from 50 to 30 % leaves 0.98 x 50 + 0.02 x 30 = 49.6 %.
   */
  private double settledCloverShare(double[] x, int i, int a) {
    double other = 1 - stands.alreadySown(i);
    double own = stands.cloverShare(x, i) * (1 + (x[sownClover] - 1) * other);
    return actions[a].targetCloverShare(x, Math.min(1, own));
  }

  private static double standGrowth(double[] x, ActionInputs inputs, int yearsOld) {
    return switch (yearsOld) {
      case 0 -> inputs.growthYearOne(x);
      case 1 -> inputs.growthYearTwo(x);
      default -> 1;
    };
  }

  /** Winter growth is summed as losses, so that current cultivars alone give exactly 1. */
  private static double sum(double[] ofSpecies, double[] shares, int from, int species) {
    double sum = 0;
    for (int c = 0; c < species; c++) {
      sum += shares[from + c] * ofSpecies[c];
    }
    return sum;
  }

  private double strength(double[] x, int i, double clover, double leaf) {
    return Dose.percentOfIntake(stress(x, i), 1, clover, x[leafShare], leaf);
  }

  private double stress(double[] x, int i) {
    return farm.paddocks().get(i).waterlogged() ? x[waterlogged] : 1;
  }

  /** Shares of the species of a paddock in each year of a sowing, at {@code year * species + c}. */
  double[] plantShares(double[] x, int i, int a) {
    seed.set(x, i);
    seed.run(x, i, actions[a], plantShare);
    return Arrays.copyOf(plantShare, years * stands.species(i));
  }
}
