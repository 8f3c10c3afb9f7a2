package swardcase.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import swardcase.farm.Farm;
import swardcase.feed.EnergyMethod;
import swardcase.feed.FeedBudget;
import swardcase.feed.FeedNumber;
import swardcase.feed.FeedParameters;
import swardcase.feed.FeedRates;
import swardcase.feed.FeedResult;
import swardcase.feed.RepeatingYear;
import swardcase.feed.StockDemand;
import swardcase.reproduction.JoiningWalk;
import swardcase.sward.SeedBank;
import swardcase.sward.SeedBankSettings;

/** One call of each calculator that every draw needs. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CalculatorBenchmark {

  private final double[] growth = new double[24];
  private FeedParameters parameters;
  private final RepeatingYear feedYear = new RepeatingYear();
  private final FeedResult usual = new FeedResult();
  private final double[] dose = new double[24];
  private final JoiningWalk walk = new JoiningWalk(24, 6, 24);
  private final double[] multipliers = new double[3];
  private final SeedBankSettings seed = new SeedBankSettings(3);
  private final SeedBank bank = new SeedBank(3, 15);
  private final double[] shares = new double[3 * 15];
  private FeedBudget budget;
  private FeedRates rates;

  /** Makes the inputs ready. */
  @Setup
  public void prepare() {
    Farm farm = DemoFarms.farm("mixed-farm").farm();
    double[] pregnant =
        farm.mobs().stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    StockDemand demand = new StockDemand(farm, DemoFarms.tables(), EnergyMethod.SCA_1990, pregnant);
    budget = new FeedBudget(farm, demand, DemoFarms.tables());
    parameters =
        FeedParameters.likely(farm, DemoFarms.tables()).set(FeedNumber.LEAF_AREA_PENALTY, 0.3);
    rates = budget.rates(parameters, 1);
    Arrays.fill(growth, 1);
    budget.run(1, growth, rates, usual);
    Arrays.fill(growth, 0.9);
    for (int p = 0; p < dose.length; p++) {
      dose[p] = 0.02 * Math.abs(p - 14);
    }
    Arrays.fill(seed.initialShare, 1.0 / 3);
    Arrays.fill(seed.crowding, 1);
    Arrays.fill(seed.retention, 0.5);
    seed.seedYieldKgPerHa = 400;
    seed.initialBankKgPerHa = 600;
    seed.runDownYears = 1;
    seed.seedSet = 0.1;
    seed.seedlingKill = 0.9;
    seed.sownSpecies = 2;
    seed.sownKgPerHa = 10;
  }

  /** A year of feed, run until it repeats. */
  @Benchmark
  public RepeatingYear feedBudget() {
    budget.runNear(usual, 1, growth, rates, feedYear);
    return feedYear;
  }

  /** Fifteen years of seed of three cultivars. */
  @Benchmark
  public double[] seedBank() {
    bank.run(seed, shares);
    return shares;
  }

  /** The days before and during a joining of six weeks. */
  @Benchmark
  public double[] joiningExposure() {
    walk.set(14, 17, 7);
    walk.multipliers(dose, 0.41, 3, multipliers);
    return multipliers;
  }
}
