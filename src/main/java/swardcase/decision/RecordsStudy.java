package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import swardcase.chance.BetaBinomial;
import swardcase.chance.CountedRandom;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.chance.StraightLines;
import swardcase.draws.Draws;
import swardcase.draws.Measures;
import swardcase.draws.RecordsFit;
import swardcase.draws.Simulation;
import swardcase.draws.Weighing;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.Mob;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.RecordedYears;
import swardcase.search.PlanSearch;
import swardcase.tables.ResponseStory;

/**
 * What the farm's own records say: the same draws before the records weighed them and after, the
 * plan that would have been found without them, and how well they are explained.
 */
public final class RecordsStudy {

  /** A mob whose records fewer than so many of 100 draws' years would show is not explained. */
  private static final double EXPLAINED = 0.02;

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private final Decision decision;
  private final FarmModel model;
  private final Farm farm;
  private final Weighing weighing;
  private final Plan without;
  private final Reading reading;
  private final RecordsFit fit;
  private final Draws before;
  private final Draws after;
  private final double[][] was;
  private final double[][] is;

  /** Numbers that records move. */
  public enum Number {
    /** Ewes in lamb per 100 joined, without oestrogen, of a mob. */
    UNAFFECTED_PERCENT,
    /** Of a mob, ewes not in lamb per 100 joined because of oestrogen, as grazed now. */
    LOST_PERCENT,
    /** Supplement bought in a year, t as fed, of the farm. */
    SUPPLEMENT_TONNES
  }

  /**
   * A number before and after.
   *
   * @param mob its mob; empty for the whole farm
   * @param gainPart what of the change of {@link #gainBefore} to {@link #gainAfter} comes from it
   */
  public record Moved(
      Number what, Optional<Integer> mob, Drawn before, Drawn after, double gainPart) {}

  /**
   * A recorded year of a mob.
   *
   * @param recorded ewes in lamb per 100 joined, or lambs marked where these were not counted;
   *     empty if neither
   * @param ofLambs whether it is lambs marked
   * @param before what was to be expected without records: year by year chance counted in
   * @param after the same by the weighed draws
   */
  public record Year(
      FlockRecord record, OptionalDouble recorded, boolean ofLambs, Drawn before, Drawn after) {}

  private RecordsStudy(Decision decision, Weighing weighing) {
    this.decision = decision;
    this.weighing = weighing;
    model = decision.model();
    farm = model.farm();
    after = decision.simulation().draws();
    before = after.withoutRecords();
    without = new PlanSearch(before, decision.fixed()).find().orElseThrow().plan().plan();
    reading = new Reading();
    fit = new RecordsFit(model);
    was = Simulation.measured(before, Reader::new);
    is = Simulation.measured(after, Reader::new);
  }

  /** The study of a decision; empty if the farm has no records. */
  public static Optional<RecordsStudy> of(Decision decision) {
    return decision
        .simulation()
        .draws()
        .weighing()
        .map(weighing -> new RecordsStudy(decision, weighing));
  }

  /** Places of what is read in each draw. */
  private final class Reading {
    final int mobs = farm.mobs().size();
    final int supplement = 2 * mobs;
    final int story = supplement + 1;
    final int gainOfPlan = story + 1;
    final int gainOfWithout = gainOfPlan + 1;
    final int records = gainOfWithout + 1;
    final int size = records + farm.records().size();
  }

  /** Reads a run. */
  private final class Reader implements Measures {
    private final RecordedYears years = new RecordedYears(farm);
    private final int story = model.inputs().place(ResponseStory.KEY);

    @Override
    public int size() {
      return reading.size;
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {
      for (int g = 0; g < reading.mobs; g++) {
        into[2 * g] = 100 * run.flock(g).unaffectedShare();
        into[2 * g + 1] = 100 * run.shareLost(g);
      }
      into[reading.supplement] = run.boughtMj(run.winterGrowthNow()) * run.tonnesPerMj();
      into[reading.story] = numbers[story];
      years.read(run);
      for (int r = 0; r < farm.records().size(); r++) {
        into[reading.records + r] = years.inLamb(r);
      }
      into[reading.gainOfPlan] = run.setBase(decision.plan());
      into[reading.gainOfWithout] = run.setBase(without);
    }
  }

  /** How the draws were weighed. */
  public Weighing weighing() {
    return weighing;
  }

  /** The plan that the same search finds in draws that no record weighed. */
  public Plan planWithout() {
    return without;
  }

  /** Gain of the plan in draws that no record weighed. */
  public Drawn gainOfPlanBefore() {
    return drawn(was, before, reading.gainOfPlan);
  }

  /** Gain of the plan. */
  public Drawn gainOfPlanAfter() {
    return drawn(is, after, reading.gainOfPlan);
  }

  /** Gain of the plan found without records, in draws that none weighed. */
  public Drawn gainOfWithoutBefore() {
    return drawn(was, before, reading.gainOfWithout);
  }

  /** Gain of the plan found without records, as the records tell it. */
  public Drawn gainOfWithoutAfter() {
    return drawn(is, after, reading.gainOfWithout);
  }

  /** Whether the parts are told of the plan found without records: that one acts. */
  public boolean isOfPlanWithout() {
    return !without.equals(model.keepAll());
  }

  /** Chance of each story of the response, in their order, before and after. */
  public double[][] stories() {
    double[][] chances = new double[2][ResponseStory.values().length];
    for (ResponseStory story : ResponseStory.values()) {
      for (int k = 0; k < 2; k++) {
        double[] told = (k == 0 ? was : is)[reading.story];
        chances[k][story.ordinal()] = Sample.share(told, of -> ResponseStory.of(of) == story);
      }
    }
    return chances;
  }

  /** The numbers moved, mob by mob, then the farm's. */
  public List<Moved> moved() {
    int gain = isOfPlanWithout() ? reading.gainOfWithout : reading.gainOfPlan;
    List<double[]> numbers = Arrays.asList(was).subList(0, reading.supplement + 1);
    double[] slopes = StraightLines.slopes(numbers, was[gain]);
    return IntStream.range(0, numbers.size()).mapToObj(k -> moved(k, slopes[k])).toList();
  }

  private Moved moved(int k, double slope) {
    Number what =
        k == reading.supplement
            ? Number.SUPPLEMENT_TONNES
            : k % 2 == 0 ? Number.UNAFFECTED_PERCENT : Number.LOST_PERCENT;
    return new Moved(
        what,
        k == reading.supplement ? Optional.empty() : Optional.of(k / 2),
        drawn(was, before, k),
        drawn(is, after, k),
        slope * (Sample.mean(is[k]) - Sample.mean(was[k])));
  }

  private static Drawn drawn(double[][] read, Draws draws, int place) {
    return Spread.of(read[place], draws.uniforms()).drawn();
  }

  /** The recorded years, in the order of the records. */
  public List<Year> years() {
    return IntStream.range(0, farm.records().size()).mapToObj(this::year).toList();
  }

  private Year year(int r) {
    FlockRecord record = farm.records().get(r);
    boolean ofLambs = record.inLamb().isEmpty() && record.lambsMarked().isPresent();
    double lambs = ofLambs ? OutcomeFunction.lambsPerPregnantEwe(mob(record)) : 1;
    OptionalDouble recorded =
        record.tellsLambs()
            ? OptionalDouble.of(
                100.0
                    * record.inLamb().orElse(record.lambsMarked().orElse(0))
                    / record.ewesJoined())
            : OptionalDouble.empty();
    return new Year(
        record,
        recorded,
        ofLambs,
        expected(r, was, before).times(100 * lambs),
        expected(r, is, after).times(100 * lambs));
  }

  private Mob mob(FlockRecord record) {
    return farm.mobs().stream()
        .filter(mob -> mob.name().equals(record.mob()))
        .findFirst()
        .orElseThrow();
  }

  private Drawn expected(int r, double[][] read, Draws draws) {
    FlockRecord record = farm.records().get(r);
    double[] share = read[reading.records + r].clone();
    CountedRandom random = new CountedRandom(0);
    long part = CountedRandom.part("recorded " + record.year() + " " + record.mob());
    for (int d = 0; d < share.length; d++) {
      random.restart(draws.seed(), d, part);
      share[d] = fit.seen(record.ewesJoined(), share[d], random);
    }
    return Spread.of(share, draws.uniforms()).drawn();
  }

  /**
   * Mobs whose recorded years no draw explains: with those that explain them best, so many or so
   * few ewes in lamb, mean of the years, would come about by chance in fewer than 2 of 100 cases.
   */
  public List<Integer> unexplained() {
    List<Integer> unexplained = new ArrayList<>();
    for (int g = 0; g < reading.mobs; g++) {
      String mob = farm.mobs().get(g).name();
      int[] scanned =
          IntStream.range(0, farm.records().size())
              .filter(r -> farm.records().get(r).mob().equals(mob))
              .filter(r -> farm.records().get(r).inLamb().isPresent())
              .toArray();
      if (scanned.length > 0 && chanceOfSuch(scanned) < EXPLAINED) {
        unexplained.add(g);
      }
    }
    return unexplained;
  }

  /** Twice the lesser chance of as many and of as few, mean over the draws. */
  private double chanceOfSuch(int[] scanned) {
    double fewer = 0;
    int draws = after.count();
    for (int d = 0; d < draws; d++) {
      double off = 0;
      double[] variance = new double[RecordsFit.correlations()];
      for (int r : scanned) {
        FlockRecord record = farm.records().get(r);
        double expected = is[reading.records + r][d];
        off += (double) record.inLamb().getAsInt() / record.ewesJoined() - expected;
        for (int k = 0; k < variance.length; k++) {
          variance[k] +=
              BetaBinomial.varianceOfShare(record.ewesJoined(), expected, fit.correlation(k));
        }
      }
      for (int k = 0; k < variance.length; k++) {
        double z = off / Math.sqrt(Math.max(1e-12, variance[k]));
        fewer += RecordsFit.part(k) * NORMAL.cumulativeProbability(z) / draws;
      }
    }
    return 2 * Math.min(fewer, 1 - fewer);
  }
}
