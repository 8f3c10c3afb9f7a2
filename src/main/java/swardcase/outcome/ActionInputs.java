package swardcase.outcome;

import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;
import swardcase.farm.CostLine.Phase;

/** Places of one action's numbers among the inputs, and its costs by phase. */
final class ActionInputs {

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
    for (ActionNumber number : ActionNumber.values()) {
      if (reads(action, number)) {
        numbers.addOfAction(key(action, number), action.name(), action.number(number));
      }
    }
    for (CostLine line : action.costs()) {
      numbers.addOfAction(costKey(action, line), action.name(), line.costPerHa());
    }
  }

  /** A number that this kind of action never reads is not entered. */
  private static boolean reads(Action action, ActionNumber number) {
    boolean runsDown = action.changesStand() && action.runDownYears() > 0;
    boolean crops = runsDown && action.cropped();
    return switch (number) {
      case RUN_DOWN_GROWTH -> runsDown && !crops;
      case BURIED_SEED -> action.buries();
      case CLOVER_SHARE -> action.sows() && action.number(number) != null;
      default -> number.applies(action.kind(), runsDown, crops);
    };
  }

  static String costKey(Action action, CostLine line) {
    return key(action, COST + line.name());
  }

  private static String key(Action action, ActionNumber number) {
    return key(action, "." + number.label().replace(' ', '-'));
  }

  private static String key(Action action, String what) {
    return "action." + action.key() + what;
  }

  ActionInputs(Action action, UncertainNumbers numbers) {
    this.action = action;
    runDownGrowth = place(numbers, ActionNumber.RUN_DOWN_GROWTH);
    growthYearOne = place(numbers, ActionNumber.GROWTH_YEAR_ONE);
    growthYearTwo = place(numbers, ActionNumber.GROWTH_YEAR_TWO);
    seedSet = place(numbers, ActionNumber.SEED_SET);
    seedlingKill = place(numbers, ActionNumber.SEEDLING_KILL);
    buriedSeed = place(numbers, ActionNumber.BURIED_SEED);
    sownKgPerHa = place(numbers, ActionNumber.SOWN_SEED);
    targetCloverShare = place(numbers, ActionNumber.CLOVER_SHARE);
    establishmentChance = place(numbers, ActionNumber.ESTABLISHMENT_CHANCE);
    cropMarginPerHa = place(numbers, ActionNumber.CROP_MARGIN);
    List<CostLine> costs = action.costs();
    costPlace = new int[costs.size()];
    costPhase = new Phase[costs.size()];
    ownLabour = new boolean[costs.size()];
    for (int k = 0; k < costs.size(); k++) {
      costPlace[k] = numbers.place(costKey(action, costs.get(k)));
      costPhase[k] = costs.get(k).phase();
      ownLabour[k] = costs.get(k).ownLabour();
    }
  }

  private int place(UncertainNumbers numbers, ActionNumber number) {
    return numbers.find(key(action, number)).orElse(-1);
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
