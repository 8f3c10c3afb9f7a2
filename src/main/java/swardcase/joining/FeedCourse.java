package swardcase.joining;

import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.feed.FeedResult;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/** The farm's own feed budget by half-month, per hectare, mean over season types, likely values. */
final class FeedCourse {

  private final double[] grown = new double[HalfMonths.COUNT];
  private final double[] end = new double[HalfMonths.COUNT];
  private final double[] eaten = new double[HalfMonths.COUNT];
  private final double[] decayed = new double[HalfMonths.COUNT];
  private final double[] eatenMj = new double[HalfMonths.COUNT];
  private final double[] needMj = new double[HalfMonths.COUNT];
  private final double[] boughtMj = new double[HalfMonths.COUNT];
  private final double metShare;

  FeedCourse(FarmModel model, OutcomeFunction run) {
    Farm farm = model.farm();
    metShare = 1 - farm.management().conditionDeficit().likely();
    FeedResult result = new FeedResult();
    for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
      double chance = farm.feedYear().seasons().get(season).chance().likely();
      run.feedYear(season, run.winterGrowthNow(), result);
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        grown[p] += chance * result.growthKgDmPerHa[p];
        end[p] += chance * (result.greenKgDmPerHa[p] + result.dryKgDmPerHa[p]);
        eaten[p] += chance * (result.eatenGreenKgDmPerHa[p] + result.eatenDryKgDmPerHa[p]);
        decayed[p] += chance * result.decayedKgDmPerHa[p];
        eatenMj[p] += chance * result.eatenMjPerHa[p];
        needMj[p] += chance * result.demandMjPerHa[p];
        boughtMj[p] += chance * result.boughtMjPerHa[p];
      }
    }
  }

  /** Pasture grown, kg DM/ha. */
  double grownKg(int p) {
    return grown[p];
  }

  /** Feed on offer, green and dry, at the end, kg DM/ha. */
  double endKg(int p) {
    return end[p];
  }

  /** Share of what is left after grazing that decay spares. */
  double kept(int p) {
    double left = end[p] + decayed[p];
    return left > 0 ? end[p] / left : 1;
  }

  /** Energy of what is eaten, MJ/kg DM; 0 where nothing is. */
  double energyMjPerKg(int p) {
    return eaten[p] > 0 ? eatenMj[p] / eaten[p] : 0;
  }

  /** Share of need that pasture meets; the rest is bought or, up to the deficit, borne. */
  double pastureShare(int p) {
    double met = needMj[p] * metShare;
    return met > 0 ? metShare * Math.max(0, 1 - boughtMj[p] / met) : 0;
  }
}
