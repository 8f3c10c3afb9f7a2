package swardcase.decision;

import java.util.Arrays;
import swardcase.chance.CountedRandom;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.draws.RecordsFit;
import swardcase.farm.Mob;

/**
 * One more year of scanning, mob by mob: what the scan of the coming joining would say in each
 * draw, the farm grazed as now, chance of the year counted in. Picking the choice by it ({@link
 * swardcase.chance.Payoffs}) tells what it is worth to scan before choosing.
 */
final class ScanningWorth {

  private final Decision decision;
  private final RecordsFit fit;

  ScanningWorth(Decision decision) {
    this.decision = decision;
    fit = new RecordsFit(decision.model());
  }

  /** Share of a mob's ewes that a scan would find in lamb, in each draw. */
  double[] result(int mob) {
    Mob of = decision.model().farm().mobs().get(mob);
    long seed = decision.simulation().draws().seed();
    long stream = CountedRandom.part("one more scan of " + of.name());
    CountedRandom random = new CountedRandom(seed);
    double[] expected = decision.drawn(mob, OfMob.PREGNANT_PERCENT);
    double[] scanned = new double[expected.length];
    Arrays.setAll(
        scanned,
        d -> {
          random.restart(seed, d, stream);
          return fit.seen(of.ewes(), expected[d] / 100, random);
        });
    return scanned;
  }

  /** What scanning a mob costs. */
  double price(int mob) {
    var farm = decision.model().farm();
    return farm.mobs().get(mob).ewes() * farm.management().scanPerEwe().likely();
  }
}
