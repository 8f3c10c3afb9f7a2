package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import swardcase.chance.CertaintyEquivalent;
import swardcase.chance.CountedRandom;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.Mob;
import swardcase.farm.SeasonType;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.RecordedYears;
import swardcase.tables.Tables;

/**
 * Farms that are made up whole: a truth is drawn, ten years of records are made from it, and the
 * farm is decided with and without them. Takes minutes, so it runs on demand alone; what it found
 * stands in {@code docs/method/records.md}.
 */
@EnabledIfSystemProperty(named = "swardcase.simulated", matches = "[0-9]+")
class SimulatedFarmsTest {

  private static final int YEARS = 10;
  private static final int POOLS = 4;
  private static final int PER_POOL = 50;
  private static final List<String> NUMBERS =
      List.of(
          "ewes in lamb without oestrogen",
          "ewes lost to oestrogen",
          "supplement bought",
          "gain of grazing in order",
          "gain of resowing the first paddock",
          "gain of thinning the first paddock");

  private final Farms farms = Farms.of("recorded-farm");
  private final Tables tables = farms.model().tables();
  private final Farm base = farms.model().farm();
  private final FarmModel without = model(List.of());
  private final List<Plan> plans = plans();
  private final Plan inOrder = without.keepAll().with(base.paddocks().size(), 1, 0);
  private final Plan resow = first("resow");
  private final Plan thin = first("grass");

  private FarmModel model(List<FlockRecord> records) {
    return new FarmModel(base.withRecords(base.mobs(), records), tables);
  }

  private Plan first(String word) {
    return IntStream.range(0, without.actions().size())
        .filter(a -> without.actions().get(a).name().contains(word))
        .mapToObj(a -> without.keepAll().with(0, a, without.firstStart(a)))
        .findFirst()
        .orElseThrow();
  }

  /** Keeping everything, and every option of one place with and without grazing in order. */
  private List<Plan> plans() {
    List<Plan> all = new ArrayList<>();
    Plan keep = without.keepAll();
    all.add(keep);
    for (int place = 0; place < farms.options().size(); place++) {
      for (Course option : farms.options().get(place)) {
        Plan plan = keep.with(place, option.action(), option.start());
        all.add(plan);
        if (place != keep.paddocks() + FarmRule.IN_ORDER.ordinal()) {
          all.add(plan.with(keep.paddocks() + FarmRule.IN_ORDER.ordinal(), 1, 0));
        }
      }
    }
    return all;
  }

  /** What is compared with the truth, and behind it the gain of every plan. */
  private final class Read implements Measures {

    @Override
    public int size() {
      return NUMBERS.size() + plans.size();
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {
      into[0] = run.flock(0).unaffectedShare();
      into[1] = run.flock(0).unaffectedShare() - run.flock(0).shareNow();
      into[2] = run.boughtMj(run.winterGrowthNow()) * run.tonnesPerMj();
      into[3] = run.setBase(inOrder);
      into[4] = run.setBase(resow);
      into[5] = run.setBase(thin);
      for (int k = 0; k < plans.size(); k++) {
        into[NUMBERS.size() + k] = run.setBase(plans.get(k));
      }
    }
  }

  @Test
  void records_ofFarmsMadeUp_coverTheTruthAndLoseLess() throws IOException {
    int count = Integer.getInteger("swardcase.simulated");
    Draws truths = new Draws(without, 77_000, 2, (count + 1) / 2);
    DrawnFarm truth = new DrawnFarm(without);
    SplittableRandom ties = new SplittableRandom(5);
    int[] within = new int[NUMBERS.size()];
    int[] withinBefore = new int[NUMBERS.size()];
    double lossWith = 0;
    double lossWithout = 0;
    double best = 0;
    double share = 0;
    int stopped = 0;
    double[] difference = new double[count];
    double[][] blind = Simulation.measured(new Draws(without, 9, POOLS, 10 * PER_POOL), Read::new);
    int blindPlan = chosen(blind);
    for (int f = 0; f < count; f++) {
      OutcomeFunction run = truth.set(truths, f);
      double[] is = new double[NUMBERS.size() + plans.size()];
      List<FlockRecord> records = records(run, f);
      new Read().read(run, truth.draw().numbers, is);
      // As many effective draws as pools of a decision have together would take hours.
      Draws draws = new Draws(model(records), 1000 + f, 2, 1).anew(2000 + f, POOLS, PER_POOL);
      Weighing weighing = draws.weighing().orElseThrow();
      share += weighing.effective() / weighing.made() / count;
      stopped += weighing.stopped() ? 1 : 0;
      double[][] told = Simulation.measured(draws, Read::new);
      for (int k = 0; k < within.length; k++) {
        double tie = ties.nextDouble();
        within[k] += isWithin(told[k], is[k], tie) ? 1 : 0;
        withinBefore[k] += isWithin(blind[k], is[k], tie) ? 1 : 0;
      }
      double most = Arrays.stream(is, NUMBERS.size(), is.length).max().orElseThrow();
      double with = most - is[NUMBERS.size() + chosen(told)];
      double blindly = most - is[NUMBERS.size() + blindPlan];
      difference[f] = blindly - with;
      lossWith += with / count;
      lossWithout += blindly / count;
      best += most / count;
      if ((f + 1) % 25 == 0) {
        write(f + 1, count, within, withinBefore, lossWith, lossWithout, best, share, stopped);
      }
    }
    write(count, count, within, withinBefore, lossWith, lossWithout, best, share, stopped);
    assertThat(lossWith).isLessThan(lossWithout);
    for (int k = 0; k < within.length; k++) {
      assertThat((double) within[k] / count).as(NUMBERS.get(k)).isBetween(0.86, 0.94);
    }
  }

  private void write(
      int done,
      int count,
      int[] within,
      int[] before,
      double lossWith,
      double lossWithout,
      double best,
      double share,
      int stopped)
      throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(done).append(" farms\n");
    for (int k = 0; k < within.length; k++) {
      text.append(
          String.format(
              Locale.ROOT,
              "%s: %.1f %% within with records, %.1f %% without%n",
              NUMBERS.get(k),
              100.0 * within[k] / done,
              100.0 * before[k] / done));
    }
    double part = (double) count / done;
    text.append(
        String.format(
            Locale.ROOT,
            "loss against the best plan of the truth: %.0f with records, %.0f without; best %.0f%n"
                + "effective share %.3f, growth stopped in %d%n",
            lossWith * part,
            lossWithout * part,
            best * part,
            share * part,
            stopped));
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/simulated-farms.txt"), text);
  }

  /** Whether the truth lies within 5 and 95 of 100 draws, equal ones put in order by chance. */
  private static boolean isWithin(double[] drawn, double truth, double tie) {
    long below = Arrays.stream(drawn).filter(value -> value < truth - 1e-9).count();
    long equal = Arrays.stream(drawn).filter(value -> Math.abs(value - truth) <= 1e-9).count();
    double rank = (below + tie * (equal + 1)) / (drawn.length + 1);
    return rank >= 0.05 && rank <= 0.95;
  }

  /** The plan of the greatest certainty equivalent. */
  private int chosen(double[][] told) {
    double tolerance = base.finance().riskTolerance().likely();
    return IntStream.range(0, plans.size())
        .boxed()
        .max(
            Comparator.comparingDouble(
                k -> CertaintyEquivalent.ofSample(told[NUMBERS.size() + k], tolerance)))
        .orElseThrow();
  }

  /** Ten years of a farm's scanning and supplement, as the draws think they come about. */
  private List<FlockRecord> records(OutcomeFunction run, int farm) {
    RandomGenerator random = new Well19937c(CountedRandom.part("records of farm " + farm));
    Mob mob = base.mobs().get(0);
    FlockRecord any = record(2016, mob, 0, 0, Optional.empty());
    FarmModel model = model(List.of(any));
    RecordsFit fit = new RecordsFit(model);
    RecordedYears years = fit.years();
    years.read(run);
    double share = Math.max(1e-4, Math.min(1 - 1e-4, years.inLamb(0)));
    double correlation = fit.correlationAt(random.nextDouble());
    double sum = (1 - correlation) / correlation;
    double shared = table("records.supplement-error-shared") * random.nextGaussian();
    double least = table("records.supplement-told-apart") * base.ewesJoined() / 1000;
    List<FlockRecord> records = new ArrayList<>();
    for (int t = 0; t < YEARS; t++) {
      double ofYear = new BetaDistribution(random, share * sum, (1 - share) * sum).sample();
      int inLamb = new BinomialDistribution(random, mob.ewes(), ofYear).sample();
      int season = season(random.nextDouble());
      double error = shared + table("records.supplement-error-yearly") * random.nextGaussian();
      double tonnes =
          Math.max(0, (years.supplementTonnes(season) + least) * Math.exp(error) - least);
      records.add(
          record(
              2016 + t,
              mob,
              inLamb,
              tonnes,
              t % 2 == 0
                  ? Optional.of(base.feedYear().seasons().get(season).type())
                  : Optional.empty()));
    }
    return records;
  }

  private int season(double uniform) {
    double below = 0;
    int last = base.feedYear().seasons().size() - 1;
    for (int s = 0; s < last; s++) {
      below += base.feedYear().seasons().get(s).chance().likely();
      if (uniform < below) {
        return s;
      }
    }
    return last;
  }

  private double table(String key) {
    return tables.parameter(key).likely();
  }

  private static FlockRecord record(
      int year, Mob mob, int inLamb, double tonnes, Optional<SeasonType> season) {
    return new FlockRecord(
        year,
        mob.name(),
        mob.ewes(),
        OptionalInt.of(inLamb),
        OptionalInt.empty(),
        Optional.empty(),
        List.of(),
        OptionalDouble.of(tonnes),
        season);
  }
}
