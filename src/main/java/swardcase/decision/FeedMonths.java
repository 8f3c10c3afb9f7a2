package swardcase.decision;

import swardcase.farm.HalfMonths;
import swardcase.feed.EnergyMethod;
import swardcase.feed.FeedBudget;
import swardcase.feed.FeedResult;
import swardcase.feed.FeedSurface;
import swardcase.feed.StockDemand;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * The feed budget by month, likely values, mean over season types: as the stands are, with current
 * cultivars in the same paddocks, and as the stands are with the second energy method. Each array
 * has twelve values, January to December, per hectare of farm.
 */
public final class FeedMonths {

  private static final int MONTHS = 12;

  private final double[] demandMj = new double[MONTHS];
  private final double[] eatenMj = new double[MONTHS];
  private final double[] boughtMj = new double[MONTHS];
  private final double[] boughtWithCurrentMj = new double[MONTHS];
  private final double[] boughtAfrcMj = new double[MONTHS];
  private final double[] growthKgDm = new double[MONTHS];
  private final double[] growthWithCurrentKgDm = new double[MONTHS];
  private final double[] greenKgDm = new double[MONTHS];
  private final double[] dryKgDm = new double[MONTHS];

  private FeedMonths() {}

  /** Runs the budget three ways. */
  public static FeedMonths of(FarmModel model) {
    FeedMonths months = new FeedMonths();
    OutcomeFunction run = model.newRun();
    double[] x = model.inputs().likely();
    double now = run.winterGrowthNow();
    StockDemand need = model.demand(EnergyMethod.AFRC_1993);
    FeedBudget budget = new FeedBudget(model.farm(), need, model.tables());
    FeedSurface afrc =
        new FeedSurface(
            model.farm(), model.tables(), model.year(), model.inputs(), need, budget, false);
    afrc.set(x, now);
    FeedResult result = new FeedResult();
    for (int season = 0; season < model.farm().feedYear().seasons().size(); season++) {
      double chance = model.farm().feedYear().seasons().get(season).chance().likely();
      run.feedYear(season, now, result);
      add(months.demandMj, result.demandMjPerHa, chance);
      add(months.eatenMj, result.eatenMjPerHa, chance);
      add(months.boughtMj, result.boughtMjPerHa, chance);
      add(months.growthKgDm, result.growthKgDmPerHa, chance);
      addEnds(months.greenKgDm, result.greenKgDmPerHa, chance);
      addEnds(months.dryKgDm, result.dryKgDmPerHa, chance);
      run.feedYear(season, 1, result);
      add(months.boughtWithCurrentMj, result.boughtMjPerHa, chance);
      add(months.growthWithCurrentKgDm, result.growthKgDmPerHa, chance);
      afrc.run(season, now, 1, result);
      add(months.boughtAfrcMj, result.boughtMjPerHa, chance);
    }
    return months;
  }

  private static void add(double[] into, double[] halfMonths, double chance) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      into[p / 2] += chance * halfMonths[p];
    }
  }

  private static void addEnds(double[] into, double[] halfMonths, double chance) {
    for (int month = 0; month < MONTHS; month++) {
      into[month] += chance * halfMonths[2 * month + 1];
    }
  }

  /** Energy the stock need, MJ/ha. */
  public double demandMj(int month) {
    return demandMj[month];
  }

  /** Energy they find, MJ/ha. */
  public double eatenMj(int month) {
    return eatenMj[month];
  }

  /** Energy bought, MJ/ha. */
  public double boughtMj(int month) {
    return boughtMj[month];
  }

  /** Energy bought with current cultivars, MJ/ha. */
  public double boughtWithCurrentMj(int month) {
    return boughtWithCurrentMj[month];
  }

  /** Energy bought by the second energy method, MJ/ha. */
  public double boughtAfrcMj(int month) {
    return boughtAfrcMj[month];
  }

  /** Pasture growth, kg dry matter per ha in the month. */
  public double growthKgDm(int month) {
    return growthKgDm[month];
  }

  /** Pasture growth with current cultivars, kg dry matter per ha in the month. */
  public double growthWithCurrentKgDm(int month) {
    return growthWithCurrentKgDm[month];
  }

  /** Green feed on offer at the end of the month, kg dry matter per ha. */
  public double greenKgDm(int month) {
    return greenKgDm[month];
  }

  /** Dry feed on offer at the end of the month, kg dry matter per ha. */
  public double dryKgDm(int month) {
    return dryKgDm[month];
  }
}
