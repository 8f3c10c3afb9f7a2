package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import swardcase.chance.CertaintyEquivalent;
import swardcase.chance.DrawnInformation;
import swardcase.chance.Payoffs;
import swardcase.chance.Quantiles;
import swardcase.chance.Sample;
import swardcase.chance.SideBySide;
import swardcase.check.Check;
import swardcase.draws.Alternatives;
import swardcase.draws.Annuities;
import swardcase.draws.Draws;
import swardcase.draws.Simulation;
import swardcase.draws.Spread;
import swardcase.evidence.Assumption;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.search.PlanSearch;

/**
 * How sure the answer for a farm is, and what should be found out first.
 *
 * <p>The same farm, plan, seed and number of draws give the same findings to the last bit.
 */
public final class HowSure {

  /** Seed where none is given. */
  public static final long USUAL_SEED = 1;

  /** Draws where no number is given. */
  public static final int USUAL_DRAWS = 1000;

  /** Blocks the draws come in, from whose means the standard errors are taken. */
  public static final int BLOCKS = 20;

  private static final double[] TOLERANCES = {0.5, 1, 2, 5, Double.POSITIVE_INFINITY};

  private final Simulation simulation;
  private final Alternatives alternatives;
  private final Spread npv;
  private final Spread annuity;
  private final double lossLimit;
  private final double chanceOfUnbearableLoss;
  private final List<Certainty> certainty;
  private final double[] expectedRegret;
  private final DrawnInformation perfect;
  private final List<PaddockFindings> paddocks;
  private final List<Unknown> unknowns;
  private final List<BreakEvenValue> breakEvens;
  private final Optional<BetterOnAverage> better;

  private HowSure(Simulation simulation, Alternatives alternatives) {
    this.simulation = simulation;
    this.alternatives = alternatives;
    Draws draws = simulation.draws();
    FarmModel model = draws.model();
    double[] ofPlan = simulation.npv(Alternatives.PLAN);
    npv = Spread.of(ofPlan, draws.uniforms());
    annuity = Spread.of(new Annuities(simulation).of(ofPlan), draws.uniforms());
    lossLimit = model.farm().management().lossLimit().likely();
    chanceOfUnbearableLoss = Sample.share(ofPlan, value -> value < -lossLimit);
    certainty = certainty(ofPlan, npv.standardDeviation());
    Payoffs payoffs = new Payoffs(simulation.npv());
    expectedRegret = payoffs.expectedRegret();
    perfect = payoffs.perfect();
    PaddockStudy study = new PaddockStudy(simulation, alternatives);
    paddocks =
        SideBySide.of(IntStream.range(0, alternatives.paddocks())).mapToObj(study::of).toList();
    unknowns = unknowns(payoffs, simulation.npv(subject()));
    breakEvens = BreakEvens.of(model, alternatives.plan(Alternatives.PLAN));
    better = BetterOnAverage.of(simulation, alternatives);
  }

  /**
   * The findings.
   *
   * @param courses for each paddock the actions to weigh, with their starts, keeping aside
   * @param draws a multiple of {@link #BLOCKS}
   * @param progress told the share of the draws done, from any thread
   */
  public static HowSure of(
      FarmModel model,
      Plan plan,
      List<List<Course>> courses,
      long seed,
      int draws,
      DoubleConsumer progress) {
    Check.that(
        draws >= BLOCKS && draws % BLOCKS == 0,
        "draws must be a multiple of %s, but was %s",
        BLOCKS,
        draws);
    Alternatives alternatives =
        new Alternatives(model, plan, courses, new PlanSearch(model)::feasible);
    Draws drawn = new Draws(model, seed, BLOCKS, draws / BLOCKS);
    return new HowSure(Simulation.of(drawn, alternatives, progress), alternatives);
  }

  /** The findings for a decision. */
  public static HowSure of(Decision decision, long seed, int draws, DoubleConsumer progress) {
    List<List<Course>> courses =
        IntStream.range(0, decision.plan().paddocks())
            .mapToObj(
                i ->
                    decision.alone(i).stream()
                        .map(alone -> new Course(alone.action(), alone.start()))
                        .toList())
            .toList();
    return of(decision.model(), decision.plan(), courses, seed, draws, progress);
  }

  /** Tolerances are multiples of the standard deviation, so that they fit any farm and money. */
  private static List<Certainty> certainty(double[] outcome, double deviation) {
    List<Certainty> list = new ArrayList<>();
    for (double multiple : TOLERANCES) {
      double tolerance = deviation > 0 ? multiple * deviation : Double.POSITIVE_INFINITY;
      list.add(new Certainty(tolerance, CertaintyEquivalent.ofSample(outcome, tolerance)));
    }
    return list;
  }

  /** The plan; if it keeps everything, the best of the others, which would be done instead. */
  private int subject() {
    if (!plan().equals(alternatives.plan(Alternatives.KEEP_ALL))) {
      return Alternatives.PLAN;
    }
    int subject = Alternatives.PLAN;
    double most = Double.NEGATIVE_INFINITY;
    for (int k = Alternatives.KEEP_ALL + 1; k < alternatives.size(); k++) {
      double mean = Sample.mean(simulation.npv(k));
      if (mean > most) {
        most = mean;
        subject = k;
      }
    }
    return subject;
  }

  /** Inputs that move together are one unknown; the one that moves the plan most stands for it. */
  private List<Unknown> unknowns(Payoffs payoffs, double[] npvOfSubject) {
    List<Assumption> inputs = simulation.draws().model().inputs().all();
    double[] explained = new double[inputs.size()];
    int[] spokesman = new int[inputs.size()];
    for (int j = 0; j < explained.length; j++) {
      explained[j] = Sample.varianceShare(simulation.drawn(j), npvOfSubject);
      int first = simulation.draws().dimension(j);
      if (j == first || explained[j] > explained[spokesman[first]]) {
        spokesman[first] = j;
      }
    }
    return SideBySide.of(IntStream.range(0, inputs.size()))
        .filter(j -> spokesman[simulation.draws().dimension(j)] == j)
        .filter(j -> !inputs.get(j).range().isExact())
        .mapToObj(
            j ->
                new Unknown(
                    simulation.draws().model().inputs().doubt(j),
                    j,
                    inputs.get(j),
                    payoffs.partial(simulation.drawn(j)),
                    explained[j]))
        .sorted(
            Comparator.<Unknown>comparingDouble(unknown -> -unknown.value().value())
                .thenComparing(unknown -> -unknown.varianceShare())
                .thenComparing(Unknown::place))
        .toList();
  }

  /** Seed the draws came from. */
  public long seed() {
    return simulation.draws().seed();
  }

  /** How many draws there were. */
  public int draws() {
    return simulation.draws().count();
  }

  /** The plan. */
  public Plan plan() {
    return alternatives.plan(Alternatives.PLAN);
  }

  /** Net present value of the plan. */
  public Spread npv() {
    return npv;
  }

  /** Net present value of the plan below which 0, 5, 10 … 100 of 100 draws lie: 21 values. */
  public double[] npvQuantiles() {
    double[] sorted = simulation.npv(Alternatives.PLAN).clone();
    Arrays.sort(sorted);
    double[] quantiles = new double[21];
    Arrays.setAll(quantiles, k -> Quantiles.ofSorted(sorted, k / 20.0));
    return quantiles;
  }

  /** The same as an equal yearly sum. */
  public Spread annuity() {
    return annuity;
  }

  /** Loss the user would not bear. */
  public double lossLimit() {
    return lossLimit;
  }

  /** Chance of losing more than that with the plan, 0 to 1. */
  public double chanceOfUnbearableLoss() {
    return chanceOfUnbearableLoss;
  }

  /** What the plan is worth for certain, by rising tolerance of risk. */
  public List<Certainty> certainty() {
    return certainty;
  }

  /** What the plan falls short, on average, of the best of all plans looked at in each draw. */
  public double expectedRegretOfPlan() {
    return expectedRegret[Alternatives.PLAN];
  }

  /** The same for keeping everything. */
  public double expectedRegretOfKeeping() {
    return expectedRegret[Alternatives.KEEP_ALL];
  }

  /** What it would be worth to know everything before choosing among the plans looked at. */
  public DrawnInformation perfect() {
    return perfect;
  }

  /** Findings of a paddock. */
  public PaddockFindings paddock(int paddock) {
    return paddocks.get(paddock);
  }

  /** Every uncertain input, the one most worth knowing first. */
  public List<Unknown> unknowns() {
    return unknowns;
  }

  /**
   * The inputs that explain most of the variance of the plan's gain, most first; where the plan
   * keeps everything, of the gain of the best other plan.
   */
  public List<Unknown> byVarianceShare() {
    return unknowns.stream()
        .sorted(Comparator.comparingDouble(unknown -> -unknown.varianceShare()))
        .toList();
  }

  /** A change of one paddock that would gain more on average, if there is one. */
  public Optional<BetterOnAverage> better() {
    return better;
  }

  /** Break-even values. */
  public List<BreakEvenValue> breakEvens() {
    return breakEvens;
  }
}
