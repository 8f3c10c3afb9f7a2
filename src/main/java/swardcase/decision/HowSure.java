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
 *
 * @param seed the draws came from
 * @param draws how many there were
 * @param gain of the plan
 * @param annuity that gain as an equal yearly sum, at the discount rate
 * @param sureGain gain of the plan with those of its changes alone that are sure
 * @param carefulGain gain of the careful plan, where it is another one
 * @param gainQuantiles gain of the plan below which 0, 5, 10 … 100 of 100 draws lie: 21 values
 * @param lossLimit loss the user would not bear
 * @param chanceOfUnbearableLoss chance of losing more than that with the plan, 0 to 1
 * @param certainty what the plan is worth for certain, by rising tolerance of risk
 * @param expectedRegretOfPlan what the plan falls short, on average, of the best of all plans
 *     looked at in each draw
 * @param expectedRegretOfKeeping the same for keeping everything
 * @param perfect what it would be worth to know everything before choosing among the plans looked
 *     at
 * @param stories what each story of the response would mean for the plan; none for a farm without
 *     ewes
 * @param otherChances what is said of the paddocks with other chances of these stories
 * @param thrownAway draws thrown away because an observed figure could not have come about with
 *     them
 * @param unexplained draws for which none was found with which every observed figure could have
 *     come about
 * @param paddocks findings of each paddock
 * @param rules findings of the rules for the whole farm
 * @param unknowns every uncertain input, the one most worth knowing first
 * @param enquiries what can be found out before choosing, the most worth first
 * @param breakEvens break-even values
 */
public record HowSure(
    long seed,
    int draws,
    Spread gain,
    Drawn annuity,
    Spread sureGain,
    Optional<Spread> carefulGain,
    double[] gainQuantiles,
    double lossLimit,
    double chanceOfUnbearableLoss,
    List<Certainty> certainty,
    double expectedRegretOfPlan,
    double expectedRegretOfKeeping,
    DrawnInformation perfect,
    List<StoryMeaning> stories,
    List<OtherChances> otherChances,
    int thrownAway,
    int unexplained,
    List<PaddockFindings> paddocks,
    List<RuleFindings> rules,
    List<Unknown> unknowns,
    List<Enquiry> enquiries,
    List<BreakEvenValue> breakEvens) {

  /** Multiples of the farm's tolerance at which the plan's certain worth is told. */
  private static final double[] TOLERANCES = {0.5, 1, 2, 4};

  private static final int TWENTIETHS = 20;

  /** The findings for a decision. */
  public static HowSure of(Decision decision) {
    Simulation simulation = decision.simulation();
    Alternatives alternatives = simulation.alternatives();
    FarmModel model = decision.model();
    int[] fitting = IntStream.range(0, alternatives.size()).filter(alternatives::fits).toArray();
    Payoffs payoffs =
        new Payoffs(IntStream.of(fitting).mapToObj(simulation::npv).toArray(double[][]::new));
    double[] regret = payoffs.expectedRegret();
    Unknowns all = new Unknowns(simulation);
    Enquiries ways = new Enquiries(decision);
    PaddockStudy study = new PaddockStudy(decision, all, ways);
    List<PaddockFindings> paddocks =
        SideBySide.of(IntStream.range(0, alternatives.paddocks())).mapToObj(study::of).toList();
    List<RuleFindings> rules = Stream.of(FarmRule.values()).map(study::of).toList();
    Stories stories = new Stories(simulation);
    List<StoryMeaning> meanings = stories.meanings();
    List<OtherChances> otherChances =
        meanings.isEmpty()
            ? List.of()
            : ResponseStory.otherChances(model.tables()).stream()
                .map(chances -> study.otherwise(paddocks, chances, stories.weights(chances)))
                .toList();
    List<Unknown> unknowns = all.of(payoffs, simulation.npv(subject(decision)));
    Stream<Enquiry> ofFarm =
        ways.ofFarm(payoffs, unknowns, pick -> change(alternatives, fitting, pick));
    Stream<Enquiry> ofPaddocks = paddocks.stream().flatMap(each -> each.enquiries().stream());
    double[] ofPlan = simulation.npv(Alternatives.PLAN);
    double[] sorted = ofPlan.clone();
    Arrays.sort(sorted);
    double lossLimit = model.farm().management().lossLimit().likely();
    double rate = model.farm().finance().discountRate().likely();
    return new HowSure(
        simulation.draws().seed(),
        simulation.draws().count(),
        decision.gain(),
        decision.gain().drawn().times(NetPresentValue.annuity(1, rate, model.years())),
        gainOfSureChanges(decision, paddocks, rules),
        decision.found().careful().map(careful -> decision.spread(decision.npv(careful.plan()))),
        IntStream.rangeClosed(0, TWENTIETHS)
            .mapToDouble(k -> Sample.quantile(sorted, (double) k / TWENTIETHS))
            .toArray(),
        lossLimit,
        Sample.share(ofPlan, value -> value < -lossLimit),
        Arrays.stream(TOLERANCES)
            .map(multiple -> multiple * decision.tolerance())
            .mapToObj(of -> new Certainty(of, CertaintyEquivalent.ofSample(ofPlan, of)))
            .toList(),
        regret[Alternatives.PLAN],
        regret[Alternatives.KEEP_ALL],
        payoffs.perfect(),
        meanings,
        otherChances,
        simulation.thrownAway(),
        simulation.unexplained(),
        paddocks,
        rules,
        unknowns,
        Enquiries.inOrder(Stream.concat(ofPaddocks, ofFarm)),
        BreakEvenValue.of(decision));
  }

  /** What a plan would change that is picked among those that can be followed. */
  private static Optional<Change> change(
      Alternatives alternatives, int[] fitting, Learnt.Pick pick) {
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

  private static Spread gainOfSureChanges(
      Decision decision, List<PaddockFindings> paddocks, List<RuleFindings> rules) {
    Plan plan = decision.plan();
    for (int i = 0; i < paddocks.size(); i++) {
      plan = paddocks.get(i).sure().orElse(true) ? plan : plan.with(i, decision.model().keep(), 0);
    }
    for (int k = 0; k < rules.size(); k++) {
      plan = rules.get(k).isSure() ? plan : plan.with(paddocks.size() + k, 0, 0);
    }
    return decision.spread(decision.npv(plan));
  }

  /** The plan; if it keeps everything, the best of the others, which would be done instead. */
  private static int subject(Decision decision) {
    Simulation simulation = decision.simulation();
    if (!decision.plan().equals(decision.model().keepAll())) {
      return Alternatives.PLAN;
    }
    return IntStream.range(Alternatives.KEEP_ALL + 1, simulation.alternatives().size())
        .boxed()
        .max(Comparator.comparingDouble(k -> Sample.mean(simulation.npv(k))))
        .orElse(Alternatives.PLAN);
  }

  /** Findings of a paddock. */
  public PaddockFindings paddock(int paddock) {
    return paddocks.get(paddock);
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
}
