package swardcase.decision;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import swardcase.chance.Certainty;
import swardcase.chance.CertaintyEquivalent;
import swardcase.chance.Drawn;
import swardcase.chance.DrawnInformation;
import swardcase.chance.Learnt;
import swardcase.chance.Payoffs;
import swardcase.chance.Quantiles;
import swardcase.chance.Sample;
import swardcase.chance.SideBySide;
import swardcase.chance.Spread;
import swardcase.decision.Enquiry.Change;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.money.NetPresentValue;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Plan;
import swardcase.tables.ResponseStory;

/**
 * How sure the answer for a farm is, and what should be found out first.
 *
 * <p>The same farm, plan, seed and number of draws give the same findings to the last bit.
 */
public final class HowSure {

  /** Multiples of the farm's tolerance at which the plan's certain worth is told. */
  private static final double[] TOLERANCES = {0.5, 1, 2, 4};

  private final Decision decision;
  private final Simulation simulation;
  private final Alternatives alternatives;
  private final Spread gain;
  private final double lossLimit;
  private final double chanceOfUnbearableLoss;
  private final List<Certainty> certainty;
  private final double[] expectedRegret;
  private final DrawnInformation perfect;
  private final List<PaddockFindings> paddocks;
  private final List<RuleFindings> rules;
  private final List<Unknown> unknowns;
  private final List<Enquiry> enquiries;
  private final List<BreakEvenValue> breakEvens;
  private final List<StoryMeaning> stories;
  private final List<OtherChances> otherChances;
  private final Spread sureGain;
  private final Optional<Spread> carefulGain;

  private HowSure(Decision decision) {
    this.decision = decision;
    simulation = decision.simulation();
    alternatives = simulation.alternatives();
    FarmModel model = decision.model();
    double[] ofPlan = simulation.npv(Alternatives.PLAN);
    gain = decision.gain();
    lossLimit = model.farm().management().lossLimit().likely();
    chanceOfUnbearableLoss = Sample.share(ofPlan, value -> value < -lossLimit);
    certainty =
        Arrays.stream(TOLERANCES)
            .map(multiple -> multiple * decision.tolerance())
            .mapToObj(of -> new Certainty(of, CertaintyEquivalent.ofSample(ofPlan, of)))
            .toList();
    int[] fitting = IntStream.range(0, alternatives.size()).filter(alternatives::fits).toArray();
    Payoffs payoffs =
        new Payoffs(IntStream.of(fitting).mapToObj(simulation::npv).toArray(double[][]::new));
    expectedRegret = payoffs.expectedRegret();
    perfect = payoffs.perfect();
    Unknowns all = new Unknowns(simulation);
    Enquiries ways = new Enquiries(simulation);
    PaddockStudy study = new PaddockStudy(decision, all, ways);
    paddocks =
        SideBySide.of(IntStream.range(0, alternatives.paddocks())).mapToObj(study::of).toList();
    rules = Stream.of(FarmRule.values()).map(study::of).toList();
    Stories ofResponse = new Stories(simulation);
    stories = ofResponse.meanings();
    otherChances =
        stories.isEmpty()
            ? List.of()
            : ResponseStory.otherChances(model.tables()).stream()
                .map(chances -> otherwise(study, chances, ofResponse.weights(chances)))
                .toList();
    unknowns = all.of(payoffs, simulation.npv(subject()));
    enquiries =
        Enquiries.inOrder(
            Stream.of(
                    paddocks.stream().flatMap(paddock -> paddock.enquiries().stream()),
                    Enquiries.scans(decision, payoffs, pick -> change(fitting, pick)),
                    unknowns.stream()
                        .filter(Unknown::counts)
                        .map(number -> ways.of(number, pick -> change(fitting, pick))))
                .flatMap(each -> each));
    breakEvens = BreakEvens.of(decision);
    sureGain = gainOfSureChanges();
    carefulGain = decision.found().careful().map(careful -> gainOf(careful.plan()));
  }

  /** The findings for a decision. */
  public static HowSure of(Decision decision) {
    return new HowSure(decision);
  }

  private OtherChances otherwise(PaddockStudy study, double[] chances, double[] weight) {
    return new OtherChances(
        chances[0],
        chances[1],
        chances[2],
        IntStream.range(0, paddocks.size())
            .mapToObj(i -> study.otherwise(i, paddocks.get(i), weight))
            .flatMap(Optional::stream)
            .toList());
  }

  /** What a plan would change that is picked among those that can be followed. */
  private Optional<Change> change(int[] fitting, Learnt.Pick pick) {
    int place = fitting[pick.choice()];
    OptionalInt changed = alternatives.changed(place);
    return place == Alternatives.PLAN
        ? Optional.empty()
        : Optional.of(
            new Change(
                changed,
                changed.stream().mapToObj(alternatives.plan(place)::course).findFirst(),
                pick.chance(),
                pick.ifHigh()));
  }

  /** Gain of the plan with those of its changes alone that are sure. */
  private Spread gainOfSureChanges() {
    List<Integer> unsure =
        IntStream.range(0, alternatives.places()).boxed().filter(i -> !isSure(i)).toList();
    if (unsure.isEmpty()) {
      return gain;
    }
    if (unsure.size() == 1) {
      int keeping = alternatives.place(unsure.get(0), PaddockStudy.KEEPING);
      return decision.spread(simulation.npv(keeping));
    }
    Plan plan = decision.plan();
    for (int i : unsure) {
      plan = plan.with(i, i < paddocks.size() ? decision.model().keep() : 0, 0);
    }
    return gainOf(plan);
  }

  /** Whether the plan's choice of a place is sure, or none. */
  private boolean isSure(int place) {
    int n = paddocks.size();
    return place < n ? paddocks.get(place).sure().orElse(true) : rules.get(place - n).isSure();
  }

  /** Gain of any other plan, in the same draws. */
  private Spread gainOf(Plan plan) {
    return PlanGain.of(simulation.draws(), plan);
  }

  /** The plan; if it keeps everything, the best of the others, which would be done instead. */
  private int subject() {
    if (!decision.plan().equals(decision.model().keepAll())) {
      return Alternatives.PLAN;
    }
    return IntStream.range(Alternatives.KEEP_ALL + 1, alternatives.size())
        .boxed()
        .max(Comparator.comparingDouble(k -> Sample.mean(simulation.npv(k))))
        .orElse(Alternatives.PLAN);
  }

  /** Seed the draws came from. */
  public long seed() {
    return simulation.draws().seed();
  }

  /** How many draws there were. */
  public int draws() {
    return simulation.draws().count();
  }

  /** Gain of the plan. */
  public Spread gain() {
    return gain;
  }

  /** The gain of the plan as an equal yearly sum, at the discount rate. */
  public Drawn annuity() {
    FarmModel model = decision.model();
    double rate = model.farm().finance().discountRate().likely();
    return gain.drawn().times(NetPresentValue.annuity(1, rate, model.years()));
  }

  /** Gain of the plan's sure changes alone. */
  public Spread sureGain() {
    return sureGain;
  }

  /** Gain of the careful plan, where it is another one. */
  public Optional<Spread> carefulGain() {
    return carefulGain;
  }

  /** Gain of the plan below which 0, 5, 10 … 100 of 100 draws lie: 21 values. */
  public double[] gainQuantiles() {
    double[] sorted = simulation.npv(Alternatives.PLAN).clone();
    Arrays.sort(sorted);
    double[] quantiles = new double[21];
    Arrays.setAll(quantiles, k -> Quantiles.ofSorted(sorted, k / 20.0));
    return quantiles;
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

  /** What each story of the response would mean for the plan; none for a farm without ewes. */
  public List<StoryMeaning> stories() {
    return stories;
  }

  /** What is said of the paddocks with other chances of these stories. */
  public List<OtherChances> otherChances() {
    return otherChances;
  }

  /** Draws thrown away because an observed figure could not have come about with them. */
  public int thrownAway() {
    return simulation.thrownAway();
  }

  /** Draws for which none was found with which every observed figure could have come about. */
  public int unexplained() {
    return simulation.unexplained();
  }

  /** Findings of a paddock. */
  public PaddockFindings paddock(int paddock) {
    return paddocks.get(paddock);
  }

  /** Findings of the rules for the whole farm. */
  public List<RuleFindings> rules() {
    return rules;
  }

  /** Every uncertain input, the one most worth knowing first. */
  public List<Unknown> unknowns() {
    return unknowns;
  }

  /** What can be found out before choosing, the most worth first. */
  public List<Enquiry> enquiries() {
    return enquiries;
  }

  /**
   * The inputs that explain most of the variance of the plan's gain, most first; where the plan
   * keeps everything, of the gain of the best other plan. Those whose slope may be luck are left
   * out.
   */
  public List<Unknown> byVarianceShare() {
    return unknowns.stream()
        .filter(Unknown::moves)
        .sorted(Comparator.comparingDouble(unknown -> -unknown.varianceShare()))
        .toList();
  }

  /** Break-even values. */
  public List<BreakEvenValue> breakEvens() {
    return breakEvens;
  }
}
