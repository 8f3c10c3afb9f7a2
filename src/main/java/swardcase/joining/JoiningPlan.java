package swardcase.joining;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.draws.Draws;
import swardcase.draws.Simulation;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.joining.JoiningMeasures.Pair;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.sward.StandingClover;

/**
 * The coming year of a farm's plan for whoever runs the ewes: which paddocks are shut to whom,
 * where each mob is in its weeks, what a break before or after the usual one changes. Nothing is
 * decided here that the plan does not say. A farm without ewes has none.
 */
public final class JoiningPlan {

  private final FarmModel model;
  private final OutcomeFunction likely;
  private final ComingYear coming;
  private final List<Integer> halfMonths;
  private final WhoWhere where;
  private final JoiningMeasures measures;
  private final Draws draws;
  private final double[][] drawn;

  private JoiningPlan(Draws draws, Plan ofFarm) {
    this.draws = draws;
    model = draws.model();
    likely = model.newRun();
    coming = new ComingYear(model, likely, ofFarm);
    boolean[] any = new boolean[HalfMonths.COUNT];
    for (int g = 0; g < farm().mobs().size(); g++) {
      for (int p = 0; p < any.length; p++) {
        any[p] |= likely.flock(g).isHeld(p);
      }
    }
    halfMonths = Weeks.run(any);
    where = new WhoWhere(model, likely, coming, cautiousStrength(), halfMonths);
    List<Pair> pairs =
        coming.instructions().stream()
            .filter(of -> !of.isShut())
            .flatMap(
                of ->
                    of.action().use().orElseThrow().mobs().stream()
                        .map(g -> new Pair(g, of.paddock())))
            .toList();
    measures = new JoiningMeasures(farm().mobs(), pairs, ofFarm, model.newOutcome());
    drawn =
        Simulation.measured(
            draws, () -> new JoiningMeasures(farm().mobs(), pairs, ofFarm, model.newOutcome()));
  }

  /**
   * The coming year of a farm's plan, told by these draws; empty for a farm that joins no ewes.
   *
   * @param plan what is done with the paddocks of the farm
   */
  public static Optional<JoiningPlan> of(Draws draws, Plan plan) {
    return draws.model().farm().ewesJoined() == 0
        ? Optional.empty()
        : Optional.of(new JoiningPlan(draws, plan));
  }

  /**
   * Ewes in lamb lost per 100 joined, for the time being.
   *
   * @param strength formononetin of the green feed a mob eats in a half-month of its weeks, % of
   *     intake; in all others it eats what it eats now
   * @param green strength of intake in a half-month relative to green feed
   */
  static double lostPer100(
      OutcomeFunction run,
      int g,
      IntToDoubleFunction strength,
      IntToDoubleFunction green,
      Mob mob) {
    double[] doses = new double[HalfMonths.COUNT];
    for (int p = 0; p < doses.length; p++) {
      doses[p] =
          run.flock(g).isHeld(p)
              ? strength.applyAsDouble(p) * green.applyAsDouble(p)
              : run.flock(g).doseNow(p);
    }
    return 100 * run.flock(g).lossOfJoining(doses, HalfMonths.dayOfYear(mob.joiningStart()));
  }

  /**
   * Strengths to tell places by: the likely ones, but where too much of the clover is unknown the
   * one it would have if unknown clover held the most formononetin that is likely. What nobody has
   * looked at is not safe.
   */
  private double[] cautiousStrength() {
    double[] x = model.inputs().likely();
    OptionalInt unknown = model.inputs().find(StandingClover.UNKNOWN_FORMONONETIN);
    OutcomeFunction high = likely;
    if (unknown.isPresent()) {
      x[unknown.getAsInt()] = model.inputs().get(unknown.getAsInt()).range().high();
      high = model.newRun();
      high.set(x);
    }
    OutcomeFunction most = high;
    return IntStream.range(0, farm().paddocks().size())
        .mapToDouble(i -> (isUnknown(i) ? most : likely).greenDose(i))
        .toArray();
  }

  /** The farm. */
  public Farm farm() {
    return model.farm();
  }

  /** The model. */
  public FarmModel model() {
    return model;
  }

  /** The run at likely values. */
  public OutcomeFunction likely() {
    return likely;
  }

  /** Half-months of a mob's weeks, in order, over the turn of the year if need be. */
  public List<Integer> weeks(int mob) {
    return halfMonths.stream().filter(p -> likely.flock(mob).isHeld(p)).toList();
  }

  /** What the plan of the farm says of its coming year. */
  public List<ComingYear.Instruction> instructions() {
    return coming.instructions();
  }

  /** Where a mob is in its weeks. */
  public List<Stay> stays(int mob) {
    return where.stays(mob);
  }

  /** Whether too much of a paddock's clover has a formononetin nobody knows. */
  public boolean isUnknown(int paddock) {
    return likely.composition(paddock).isOestrogenUnknown(farm().paddocks().get(paddock));
  }

  private Drawn drawn(int measure) {
    return Spread.of(drawn[measure], draws.uniforms()).drawn();
  }

  /** Ewes in lamb lost per 100 if a mob that is kept off a paddock spent its weeks there. */
  public Drawn lostThere(int mob, int paddock) {
    return drawn(measures.lost(new Pair(mob, paddock)));
  }

  /** Chance that this could be told from normal variation. */
  public double chanceOfLoss(int mob, int paddock) {
    double least = tellablePoints();
    return Sample.share(drawn[measures.lost(new Pair(mob, paddock))], lost -> lost >= least);
  }

  /** Young ewes barren for good per 100 after a green season in a paddock alone. */
  public Drawn barrenPercent(int paddock) {
    return drawn(measures.barren(paddock));
  }

  /** Lambs that the plan saves in the coming year. */
  public Drawn lambsSaved() {
    return drawn(measures.lambs());
  }

  /** What they are worth, with what dry ewes cost. */
  public Drawn moneySaved() {
    return drawn(measures.money());
  }

  /** What cannot be told from normal variation, per 100. */
  public double tellablePoints() {
    return model.tables().parameter("oestrogen.distinguishable-points").likely();
  }

  // The break.

  /** Season types, in the farm's order. */
  public int seasons() {
    return farm().feedYear().seasons().size();
  }

  /** Whether feed is green in a season type when the mobs' weeks begin. */
  public boolean isGreenAtStart(int season) {
    return likely.isGreen(season, halfMonths.get(0));
  }

  /** The half-months of the mobs' weeks in which it dries off or greens, by turns. */
  public List<Integer> turns(int season) {
    return IntStream.range(1, halfMonths.size())
        .filter(
            k ->
                likely.isGreen(season, halfMonths.get(k))
                    != likely.isGreen(season, halfMonths.get(k - 1)))
        .mapToObj(halfMonths::get)
        .toList();
  }

  /** Ewes in lamb lost per 100 in a season type, grazed as now. */
  public double lostNow(int season, int mob) {
    return lostIn(season, mob, p -> strengthNow(mob, p));
  }

  /** The same by this sheet. */
  public double lostByPlan(int season, int mob) {
    return lostIn(season, mob, p -> where.strength(mob, p));
  }

  private double lostIn(int season, int mob, IntToDoubleFunction strength) {
    return lostPer100(
        likely, mob, strength, p -> likely.greenShare(season, p), farm().mobs().get(mob));
  }

  private double strengthNow(int mob, int p) {
    double green = likely.greenShare(p);
    return green > 0 ? likely.flock(mob).doseNow(p) / green : 0;
  }
}
