package swardcase.outcome;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import swardcase.bench.NumpyFiles;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.feed.FeedBudget;
import swardcase.feed.FeedParameters;
import swardcase.feed.FeedRates;
import swardcase.feed.FeedResult;
import swardcase.feed.GrowthYear;
import swardcase.money.NetPresentValue;

/**
 * The plan at likely values, as a spreadsheet can hold it: the feed budget of every year and season
 * type worked out for that year's growth itself, not read from a grid, and the cash flow. What the
 * actions do to the paddocks, and the worth of lambs saved, are given to both sides.
 */
public final class LikelyCase {

  private static final int ROUNDS = 5;
  private static final int REPEATS = 1000;

  private final Farm farm;
  private final OutcomeFunction run;
  private final Plan plan;
  private final Outcome outcome;
  private final FeedResult feed = new FeedResult();
  private final FeedBudget budget;
  private final FeedRates rates;
  private final double[] multiplier = new double[HalfMonths.COUNT];
  private final GrowthYear year;
  private final double[] w;
  private final double[] o;
  private final double[] bought;
  private final double[] flows;

  private LikelyCase(FarmModel model, Plan plan) {
    this.plan = plan;
    farm = model.farm();
    run = model.newRun();
    outcome = model.newOutcome();
    year = model.year();
    budget = model.budget();
    rates = budget.rates(FeedParameters.likely(farm, model.tables()), 1);
    run.evaluate(plan, outcome);
    w = new double[model.years()];
    o = new double[w.length];
    bought = new double[w.length + 1];
    flows = new double[w.length];
  }

  /** Writes what the spreadsheet starts from, and what the program makes of it, with its time. */
  public static void write(FarmModel model, Plan plan, NumpyFiles files) {
    LikelyCase likely = new LikelyCase(model, plan);
    likely.addPaddocks(files);
    double npv = 0;
    double seconds = Double.POSITIVE_INFINITY;
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int round = 0; round < ROUNDS; round++) {
      long start = threads.getCurrentThreadCpuTime();
      for (int repeat = 0; repeat < REPEATS; repeat++) {
        npv = likely.npv();
      }
      long spent = threads.getCurrentThreadCpuTime() - start;
      seconds = Math.min(seconds, spent / 1e9 / REPEATS);
    }
    files.write("case_now", new double[] {likely.run.winterGrowthNow()});
    files.write("case_bought", likely.bought, likely.bought.length);
    files.write("case_flows", likely.flows, likely.flows.length);
    files.write("case_npv", new double[] {npv});
    files.write("case_seconds", new double[] {seconds});
    System.out.printf(
        Locale.ROOT,
        "Java, plan at likely values: net present value %.2f, %.2f if feed is read from the grid;"
            + " %.3f ms of processor time%n",
        npv,
        likely.outcome.npv(),
        1000 * seconds);
  }

  private void addPaddocks(NumpyFiles files) {
    int paddocks = farm.paddocks().size();
    int years = w.length;
    int size = YearSums.size(farm.mobs().size());
    double[] sums = new double[years * size];
    double[] of = new double[years * size];
    double[][] table = new double[5][paddocks * years];
    int[] sum = {YearSums.WINTER, YearSums.OTHER, YearSums.HELD, YearSums.COST, YearSums.MARGIN};
    for (int i = 0; i < paddocks; i++) {
      Arrays.fill(of, 0);
      run.addYears(i, plan.action(i), plan.start(i), of);
      for (int k = 0; k < of.length; k++) {
        sums[k] += of[k];
      }
      double area = farm.paddocks().get(i).areaHa();
      double weight = area * farm.paddocks().get(i).growthIndex().likely();
      for (int t = 0; t < years; t++) {
        for (int k = 0; k < sum.length; k++) {
          boolean perHa = sum[k] == YearSums.COST || sum[k] == YearSums.MARGIN;
          table[k][i * years + t] = of[t * size + sum[k]] / (perHa ? area : weight);
        }
      }
    }
    for (int t = 0; t < years; t++) {
      double lost = run.held().lost(sums[t * size + YearSums.HELD] / run.weightSum());
      w[t] = sums[t * size + YearSums.WINTER] / run.weightSum() - lost;
      o[t] = sums[t * size + YearSums.OTHER] / run.weightSum() - lost;
    }
    String[] name = {"winter", "other", "held", "cost", "margin"};
    for (int k = 0; k < name.length; k++) {
      files.write("case_" + name[k], table[k], paddocks, years);
    }
    double[] lambs = new double[years];
    double[] end = new double[years];
    Arrays.setAll(lambs, outcome::lambsSaved);
    Arrays.setAll(end, outcome::endValue);
    files.write("case_lambs", lambs, years);
    files.write("case_end_value", end, years);
  }

  private double npv() {
    int years = w.length;
    bought[years] = bought(run.winterGrowthNow(), 1);
    for (int t = 0; t < years; t++) {
      bought[t] = bought(w[t], o[t]);
      flows[t] =
          (bought[years] - bought[t]) * farm.areaHa() * run.pricePerMj()
              + outcome.lambsSaved(t)
              + outcome.cropMargin(t)
              + outcome.endValue(t)
              - outcome.actionCost(t);
    }
    return NetPresentValue.of(farm.finance().discountRate().likely(), flows);
  }

  private double bought(double winter, double other) {
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      multiplier[p] = year.isWinter(p) ? winter : other;
    }
    double sum = 0;
    for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
      budget.run(season, multiplier, rates, feed);
      sum += farm.feedYear().seasons().get(season).chance().likely() * feed.boughtMjPerHa();
    }
    return sum;
  }
}
