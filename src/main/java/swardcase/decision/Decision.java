package swardcase.decision;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.check.Check;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.decision.FarmMeasures.OfMonth;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.draws.Alternatives;
import swardcase.draws.Draws;
import swardcase.draws.Simulation;
import swardcase.money.RunningBalance;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.FixedChoice;
import swardcase.search.Found;
import swardcase.search.PlanSearch;

/**
 * The answer for a farm, as numbers: the plan, and what it and every alternative bring in each of
 * the common draws, none of which the search has seen. Every result is read from these draws. The
 * words are made elsewhere.
 *
 * @param model the farm made ready
 * @param fixed choices that were made beforehand
 * @param likely a run at likely inputs; the caller may ask it, but must not set it
 * @param found what the search found
 * @param costOfFixing what the choices made beforehand cost: the certainty equivalent of the plan
 *     found without them less this one's; empty without such choices. A search that misses
 *     something can make it negative
 * @param otherDates another day for each mob's rams
 * @param measures the places of the numbers that are read in each draw
 * @param simulation what the plan and its alternatives bring in each draw
 */
public record Decision(
    FarmModel model,
    List<FixedChoice> fixed,
    OutcomeFunction likely,
    Found found,
    OptionalDouble costOfFixing,
    OtherDates otherDates,
    FarmMeasures measures,
    Simulation simulation) {

  /** Seed where none is given. */
  public static final long USUAL_SEED = 1;

  /** Draws where no number is given. */
  public static final int USUAL_DRAWS = 1000;

  /** Blocks the draws come in, from whose means the standard errors are taken. */
  public static final int BLOCKS = 20;

  private static Decision of(
      Draws draws, List<FixedChoice> fixed, boolean rough, DoubleConsumer progress) {
    FarmModel model = draws.model();
    PlanSearch search = new PlanSearch(draws, fixed, rough);
    Found found =
        search
            .find()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no plan with the choices made beforehand keeps within the limits"));
    OptionalDouble costOfFixing =
        fixed.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                new PlanSearch(draws, List.of()).find().orElseThrow().plan().certaintyEquivalent()
                    - found.plan().certaintyEquivalent());
    progress.accept(0); // whoever waits no longer can end it here
    List<List<Course>> courses =
        found.bestStarts().stream()
            .map(starts -> starts.stream().map(Found.BestStart::course).toList())
            .toList();
    Plan plan = found.plan().plan();
    OutcomeFunction likely = model.newRun();
    OtherDates dates = OtherDates.of(model, likely);
    Supplier<FarmMeasures> measures = () -> new FarmMeasures(model, plan, dates);
    Alternatives alternatives = new Alternatives(model, plan, courses, search::feasible);
    Simulation simulation = Simulation.of(draws, alternatives, measures, progress);
    return new Decision(
        model, List.copyOf(fixed), likely, found, costOfFixing, dates, measures.get(), simulation);
  }

  /** Decides by the usual draws. */
  public static Decision of(FarmModel model) {
    return of(draws(model, USUAL_SEED, USUAL_DRAWS), List.of(), done -> {});
  }

  /**
   * Decides with some choices made beforehand.
   *
   * @param progress told the share of the draws done, from any thread; what it throws ends the work
   * @throws IllegalArgumentException if no plan with them keeps within the limits
   */
  public static Decision of(Draws draws, List<FixedChoice> fixed, DoubleConsumer progress) {
    return of(draws, fixed, false, progress);
  }

  /** The same by a rough search: to be shown while the whole one is waited for. */
  public static Decision rough(Draws draws, List<FixedChoice> fixed, DoubleConsumer progress) {
    return of(draws, fixed, true, progress);
  }

  /**
   * The draws of a farm.
   *
   * @param count a multiple of {@link #BLOCKS}
   */
  public static Draws draws(FarmModel model, long seed, int count) {
    Check.that(
        count >= BLOCKS && count % BLOCKS == 0,
        "draws must be a multiple of %s, but was %s",
        BLOCKS,
        count);
    return new Draws(model, seed, BLOCKS, count / BLOCKS);
  }

  /** Risk that the farm bears, in money. */
  public double tolerance() {
    return model.farm().finance().riskTolerance().likely();
  }

  /** The plan. */
  public Plan plan() {
    return found.plan().plan();
  }

  /** Whether the plan does anything with a paddock. */
  public boolean isActedOn(int paddock) {
    return plan().action(paddock) != model.keep();
  }

  /** What the plan brings, mean over the draws. */
  public Outcome outcome() {
    return simulation.mean(Alternatives.PLAN);
  }

  /** The plan's gain over keeping everything: net present value. */
  public Spread gain() {
    return spread(simulation.npv(Alternatives.PLAN));
  }

  /** What any other plan gains over keeping everything, in each draw. */
  double[] npv(Plan plan) {
    Alternatives alternatives = simulation.alternatives();
    return IntStream.range(0, alternatives.size())
        .filter(k -> alternatives.plan(k).equals(plan))
        .mapToObj(simulation::npv)
        .findFirst()
        .orElseGet(() -> Simulation.measured(simulation.draws(), () -> new PlanGain(plan))[0]);
  }

  /** What the plan would lose without its choice for a paddock, in each draw. */
  double[] gain(int paddock) {
    double[] without =
        simulation.npv(simulation.alternatives().place(paddock, PaddockStudy.KEEPING));
    return Sample.difference(simulation.npv(Alternatives.PLAN), without);
  }

  /** How a number that is given in each draw spreads. */
  Spread spread(double[] values) {
    return Spread.of(values, simulation.draws().uniforms());
  }

  /** A number of the farm. */
  public Drawn of(OfFarm measure) {
    return measured(measures.at(measure));
  }

  /** A number of a mob. */
  public Drawn of(int mob, OfMob measure) {
    return measured(measures.at(mob, measure));
  }

  /**
   * Another day for a mob's rams on which less is lost to oestrogen at likely inputs, paddocks
   * grazed as now; empty if there is none.
   */
  public Optional<MonthDay> otherDate(int mob) {
    return otherDates.days().get(mob);
  }

  /** A number of a paddock. */
  public Drawn of(int paddock, OfPaddock measure) {
    return measured(measures.at(paddock, measure));
  }

  /** A number of a month from 0, January. */
  public Drawn of(int month, OfMonth measure) {
    return measured(measures.ofMonth(month, measure));
  }

  /** The deepest debt of the plan's account in each draw, interest at the discount rate. */
  public Drawn peakDebt() {
    double[] debt = new double[simulation.draws().count()];
    double rate = model.farm().finance().discountRate().likely();
    Arrays.setAll(debt, d -> RunningBalance.peakDebt(rate, simulation.cashFlow(d)));
    return spread(debt).drawn();
  }

  /** A number of the farm in each draw. */
  double[] drawn(OfFarm measure) {
    return simulation.measured(measures.at(measure));
  }

  /** A number of a mob in each draw. */
  double[] drawn(int mob, OfMob measure) {
    return simulation.measured(measures.at(mob, measure));
  }

  private Drawn measured(int measure) {
    return spread(simulation.measured(measure)).drawn();
  }

  /** Actions that could be done on a paddock, but not be seen through in the years counted. */
  public List<Integer> tooLong(int paddock) {
    return IntStream.range(0, model.actions().size())
        .filter(a -> likely.allowed(paddock, a) && model.startYears(a) == 0)
        .boxed()
        .toList();
  }

  /** Place among a paddock's choices of an action; empty if it cannot be done there. */
  public Optional<Integer> choice(int paddock, int action) {
    List<Course> choices = simulation.alternatives().choices(paddock);
    return IntStream.range(0, choices.size())
        .boxed()
        .filter(c -> choices.get(c).action() == action)
        .findFirst();
  }
}
