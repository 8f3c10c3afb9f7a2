package swardcase.outcome;

import java.util.List;
import swardcase.evidence.Assumption;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.CostLine;
import swardcase.farm.CostLine.Phase;

/** Places of one action's numbers among the inputs, and its costs by phase. */
final class ActionInputs {

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

  ActionInputs(Action action, UncertainNumbers inputs) {
    this.action = action;
    boolean sows = action.sows();
    boolean runsDown = sows && action.runDownYears() > 0;
    boolean crops = runsDown && action.cropped();
    runDownGrowth =
        place(runsDown && !crops, inputs, "growth left in a run-down year", action.runDownGrowth());
    growthYearOne = place(sows, inputs, "growth in the sowing year", action.growthYearOne());
    growthYearTwo = place(sows, inputs, "growth in the second year", action.growthYearTwo());
    seedSet = place(runsDown, inputs, "seed set in a run-down year", action.seedSet());
    seedlingKill = place(sows, inputs, "seedlings killed before sowing", action.seedlingKill());
    buriedSeed = place(action.buries(), inputs, "seed turned under", action.buriedSeed());
    sownKgPerHa = place(sows, inputs, "seed sown", action.sownKgPerHa());
    targetCloverShare =
        place(sows, inputs, "clover share of the new stand", action.targetCloverShare());
    establishmentChance =
        place(sows, inputs, "chance that the sowing takes", action.establishmentChance());
    cropMarginPerHa = place(crops, inputs, "margin of a crop year", action.cropMarginPerHa());
    List<CostLine> costs = action.costs();
    costPlace = new int[costs.size()];
    costPhase = new Phase[costs.size()];
    for (int k = 0; k < costs.size(); k++) {
      CostLine line = costs.get(k);
      costPlace[k] = place(true, inputs, "cost of " + line.name(), line.costPerHa());
      costPhase[k] = line.phase();
    }
  }

  /** Enters a number that this kind of action reads; one that it never reads has no place. */
  private int place(boolean read, UncertainNumbers inputs, String what, Assumption value) {
    return read ? inputs.addShared(value, what, action.name()) : -1;
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
    return x[seedlingKill];
  }

  double buriedSeed(double[] x) {
    return buriedSeed < 0 ? 0 : x[buriedSeed];
  }

  double sownKgPerHa(double[] x) {
    return x[sownKgPerHa];
  }

  double targetCloverShare(double[] x) {
    return x[targetCloverShare];
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

  /** Sum of the cost lines of one phase, per ha. */
  double costPerHa(double[] x, Phase phase) {
    double sum = 0;
    for (int k = 0; k < costPlace.length; k++) {
      if (costPhase[k] == phase) {
        sum += x[costPlace[k]];
      }
    }
    return sum;
  }
}
