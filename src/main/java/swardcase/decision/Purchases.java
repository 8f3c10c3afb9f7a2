package swardcase.decision;

import java.util.ArrayList;
import java.util.List;
import swardcase.chance.CountedRandom;
import swardcase.chance.DrawnInformation;
import swardcase.chance.Payoffs;
import swardcase.draws.Simulation;
import swardcase.draws.Simulation.Kind;
import swardcase.farm.Farm;
import swardcase.farm.Prices;
import swardcase.sward.Composition;

/**
 * What two tests of a paddock are worth: the result is drawn together with everything else, and the
 * choice is then picked by the result ({@link Payoffs#partial}).
 *
 * <p>A leaf test gives the mean formononetin of the paddock's clover times 1 + e, e normal with the
 * relative standard error of the tables. Identifying n plants gives counts of old and of
 * high-oestrogen plants among n divided by the design effect; the choice is picked by whichever of
 * the two counts tells more. Only this paddock's choice is picked anew, so that what a test says of
 * the same cultivar elsewhere is left out.
 */
final class Purchases {

  /** Key of the relative standard error of a leaf test. */
  static final String LEAF_TEST_ERROR = "default.leaf-test-relative-error";

  private static final int[] PLANTS = {20, 50, 100, 200, 400};

  private final Simulation simulation;
  private final Prices prices;
  private final double leafError;
  private final long seed;
  private final int draws;

  Purchases(Simulation simulation) {
    this.simulation = simulation;
    var model = simulation.draws().model();
    prices = model.farm().prices();
    leafError = model.tables().parameter(LEAF_TEST_ERROR).likely();
    seed = simulation.draws().seed();
    draws = simulation.draws().count();
  }

  private long stream(String test, int paddock) {
    Farm farm = simulation.draws().model().farm();
    return CountedRandom.part(test + farm.paddocks().get(paddock).name());
  }

  Purchase leafTest(int paddock, Payoffs payoffs) {
    CountedRandom random = new CountedRandom(seed);
    long stream = stream("leaf test of ", paddock);
    double[] leaf = simulation.leaf(paddock);
    double[] result = new double[draws];
    for (int d = 0; d < draws; d++) {
      random.restart(seed, d, stream);
      result[d] = leaf[d] * (1 + leafError * random.nextGaussian());
    }
    DrawnInformation value = payoffs.partial(result);
    return new Purchase(0, value.value(), value.standardError(), prices.leafTest().likely());
  }

  List<Purchase> plants(int paddock, Payoffs payoffs) {
    Composition composition = simulation.draws().composition(paddock);
    if (!composition.lookedAt()) {
      return List.of();
    }
    double[][] old = new double[PLANTS.length][draws];
    double[][] high = new double[PLANTS.length][draws];
    count(paddock, composition.designEffect(), old, high);
    List<Purchase> purchases = new ArrayList<>();
    for (int k = 0; k < PLANTS.length; k++) {
      DrawnInformation ofOld = payoffs.partial(old[k]);
      DrawnInformation ofHigh = payoffs.partial(high[k]);
      DrawnInformation more = ofHigh.value() > ofOld.value() ? ofHigh : ofOld;
      double price = PLANTS[k] * prices.plantIdentification().likely();
      purchases.add(new Purchase(PLANTS[k], more.value(), more.standardError(), price));
    }
    return purchases;
  }

  /** Counts among the first plants of one long walk in each draw. */
  private void count(int paddock, double designEffect, double[][] old, double[][] high) {
    CountedRandom random = new CountedRandom(seed);
    long stream = stream("plants of ", paddock);
    double[] oldHigh = simulation.share(paddock, Kind.OLD_HIGH);
    double[] oldLow = simulation.share(paddock, Kind.OLD_LOW);
    double[] currentHigh = simulation.share(paddock, Kind.CURRENT_HIGH);
    for (int d = 0; d < draws; d++) {
      random.restart(seed, d, stream);
      int oldSeen = 0;
      int highSeen = 0;
      int seen = 0;
      for (int k = 0; k < PLANTS.length; k++) {
        int counted = (int) Math.round(PLANTS[k] / designEffect);
        for (; seen < counted; seen++) {
          double u = random.nextDouble();
          oldSeen += u < oldHigh[d] + oldLow[d] ? 1 : 0;
          boolean isHigh =
              u < oldHigh[d]
                  || u >= oldHigh[d] + oldLow[d] && u < oldHigh[d] + oldLow[d] + currentHigh[d];
          highSeen += isHigh ? 1 : 0;
        }
        old[k][d] = oldSeen;
        high[k][d] = highSeen;
      }
    }
  }
}
