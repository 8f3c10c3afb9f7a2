package swardcase.outcome;

import java.util.List;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.CostLine;
import swardcase.farm.CostLine.Phase;

/** Places of one action's numbers among the inputs, and its costs by phase. */
final class ActionInputs {

  private static final String RUN_DOWN_GROWTH = ".run-down-growth";
  private static final String GROWTH_YEAR_ONE = ".growth-year-one";
  private static final String GROWTH_YEAR_TWO = ".growth-year-two";
  private static final String SEED_SET = ".seed-set";
  private static final String SEEDLING_KILL = ".seedling-kill";
  private static final String BURIED_SEED = ".buried-seed";
  private static final String SOWN_SEED = ".sown-seed";
  private static final String CLOVER_SHARE = ".clover-share";
  private static final String ESTABLISHMENT_CHANCE = ".establishment-chance";
  private static final String CROP_MARGIN = ".crop-margin";
  private static final String COST = ".cost.";

  private final Action action;
  private final int runDownGrowth;
  private final int growthYearOne;
  private final int growthYearTwo;
  private final int seedSet;
  private final int seedlingKill;
  private final int buriedSeed;
  private final int sownKgPerHa;
  private final int targetCloverShare;
  private final int establishmentChance;
  private final int cropMarginPerHa;
  private final int[] costPlace;
  private final Phase[] costPhase;
  private final boolean[] ownLabour;

  /** Enters the numbers that this kind of action reads. */
  static void enter(UncertainNumbers.Builder numbers, Action action) {
    boolean runsDown = action.changesStand() && action.runDownYears() > 0;
    boolean crops = runsDown && action.cropped();
    enter(runsDown && !crops, numbers, action, RUN_DOWN_GROWTH, action.runDownGrowth());
    enter(action.changesStand(), numbers, action, GROWTH_YEAR_ONE, action.growthYearOne());
    enter(action.sows(), numbers, action, GROWTH_YEAR_TWO, action.growthYearTwo());
    enter(runsDown, numbers, action, SEED_SET, action.seedSet());
    enter(action.sows(), numbers, action, SEEDLING_KILL, action.seedlingKill());
    enter(action.buries(), numbers, action, BURIED_SEED, action.buriedSeed());
    enter(action.sows(), numbers, action, SOWN_SEED, action.sownKgPerHa());
    action
        .targetCloverShare()
        .ifPresent(share -> enter(action.sows(), numbers, action, CLOVER_SHARE, share));
    enter(action.sows(), numbers, action, ESTABLISHMENT_CHANCE, action.establishmentChance());
    enter(crops, numbers, action, CROP_MARGIN, action.cropMarginPerHa());
    for (CostLine line : action.costs()) {
      enter(true, numbers, action, COST + line.name(), line.costPerHa());
    }
  }

  /** A number that this kind of action never reads is not entered. */
  private static void enter(
      boolean read,
      UncertainNumbers.Builder numbers,
      Action action,
      String what,
      Assumption value) {
    if (read) {
      numbers.addOfAction(key(action, what), action.name(), value);
    }
  }

  static String costKey(Action action, CostLine line) {
    return key(action, COST + line.name());
  }

  private static String key(Action action, String what) {
    return "action." + action.key() + what;
  }

  ActionInputs(Action action, UncertainNumbers numbers) {
    this.action = action;
    runDownGrowth = place(numbers, RUN_DOWN_GROWTH);
    growthYearOne = place(numbers, GROWTH_YEAR_ONE);
    growthYearTwo = place(numbers, GROWTH_YEAR_TWO);
    seedSet = place(numbers, SEED_SET);
    seedlingKill = place(numbers, SEEDLING_KILL);
    buriedSeed = place(numbers, BURIED_SEED);
    sownKgPerHa = place(numbers, SOWN_SEED);
    targetCloverShare = place(numbers, CLOVER_SHARE);
    establishmentChance = place(numbers, ESTABLISHMENT_CHANCE);
    cropMarginPerHa = place(numbers, CROP_MARGIN);
    List<CostLine> costs = action.costs();
    costPlace = new int[costs.size()];
    costPhase = new Phase[costs.size()];
    ownLabour = new boolean[costs.size()];
    for (int k = 0; k < costs.size(); k++) {
      costPlace[k] = place(numbers, COST + costs.get(k).name());
      costPhase[k] = costs.get(k).phase();
      ownLabour[k] = costs.get(k).ownLabour();
    }
  }

  private int place(UncertainNumbers numbers, String what) {
    return numbers.find(key(action, what)).orElse(-1);
  }

  Action action() {
    return action;
  }

  /** A crop leaves nothing to graze. */
  double runDownGrowth(double[] x) {
    return action.cropped() ? 0 : x[runDownGrowth];
  }

  double growthYearOne(double[] x) {
    return x[growthYearOne];
  }

  double growthYearTwo(double[] x) {
    return x[growthYearTwo];
  }

  double seedSet(double[] x) {
    return seedSet < 0 ? 1 : x[seedSet];
  }

  double seedlingKill(double[] x) {
    return seedlingKill < 0 ? 0 : x[seedlingKill];
  }

  double buriedSeed(double[] x) {
    return buriedSeed < 0 ? 0 : x[buriedSeed];
  }

  double sownKgPerHa(double[] x) {
    return sownKgPerHa < 0 ? 0 : x[sownKgPerHa];
  }

  /**
   * Clover share of green feed that a new stand settles at, where the farm says so; else {@code
   * own}.
   */
  double targetCloverShare(double[] x, double own) {
    return targetCloverShare < 0 ? own : x[targetCloverShare];
  }

  double establishmentChance(double[] x) {
    return x[establishmentChance];
  }

  /** Place of the chance of establishment in the inputs; -1 for an action that does not sow. */
  int establishmentInput() {
    return establishmentChance;
  }

  double cropMarginPerHa(double[] x) {
    return cropMarginPerHa < 0 ? 0 : x[cropMarginPerHa];
  }

  /** Sum of the cost lines of one phase that are own labour, or of those that are not, per ha. */
  double costPerHa(double[] x, Phase phase, boolean labour) {
    double sum = 0;
    for (int k = 0; k < costPlace.length; k++) {
      if (costPhase[k] == phase && ownLabour[k] == labour) {
        sum += x[costPlace[k]];
      }
    }
    return sum;
  }
}
