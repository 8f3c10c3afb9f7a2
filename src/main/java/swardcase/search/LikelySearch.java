package swardcase.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.YearSums;
import swardcase.search.Aim.Gain;

/**
 * Finds the plan of highest net present value at likely inputs, within the money per year, the
 * share of the farm out of grazing at once, and enough feed for the ewes at joining. The whole farm
 * is evaluated each time, so that a tonne of supplement is saved once.
 *
 * <p>It is the search over the draws with a single draw, the likely one. Four starts are improved
 * by changes of one paddock and then of two together, until none gains: keeping everything, in
 * every place what gains most there alone, all kept with the rules of the farm, and everywhere what
 * takes most oestrogen away. A start that passes limits is first brought inside them.
 */
public final class LikelySearch {

  /** What a change must gain to be made, in money: a tenth of a cent. */
  private static final double LEAST = 1e-3;

  private static final double LEAST_REDUCTION = 1e-9;

  /**
   * A plan that a search found.
   *
   * @param plan the plan
   * @param value its net present value, in money
   */
  public record Found(Plan plan, double value) {}

  private final OutcomeFunction run;
  private final PlanTable table;
  private final DrawnSample sample;
  private final Aim aim;
  private final Climb climb;
  private final List<Change> singles;

  /** A search with its own workspace. */
  public LikelySearch(FarmModel model) {
    this(model, List.of());
  }

  /** A search among the plans in which these choices are made beforehand. */
  public LikelySearch(FarmModel model, List<FixedChoice> fixed) {
    run = model.newRun();
    table = new PlanTable(model, run, fixed);
    sample = DrawnSample.of(table, run);
    aim = new Aim(table, Double.POSITIVE_INFINITY, 0);
    climb = new Climb(aim, sample, LEAST);
    singles = Change.each(table);
  }

  PlanTable table() {
    return table;
  }

  /** The first choice of every paddock, which keeps it unless another is made beforehand. */
  int[] first() {
    int[] pick = new int[table.places()];
    Arrays.setAll(pick, table::first);
    return pick;
  }

  /** The best plan found; keeping everything is always among the candidates. */
  public Plan best() {
    return find().orElseThrow().plan();
  }

  /** Whether no plan was found that keeps within the limits. */
  public boolean isImpossible() {
    return !bringWithinLimits(first());
  }

  /** The best plan found; empty if no plan keeps within the limits. */
  public Optional<Found> find() {
    return List.of(first(), eachAlone(), table.withRules(first()), leastStrength()).stream()
        .filter(this::improve)
        .map(table::plan)
        .map(plan -> new Found(plan, run.setBase(plan)))
        .max(Comparator.comparingDouble(Found::value));
  }

  /** In each place the choice that gains most with everything else as at the first choices. */
  private int[] eachAlone() {
    int[] pick = first();
    aim.gains(sample, first(), singles).stream()
        .filter(of -> of.gain() > LEAST)
        .sorted(Climb.BEST_FIRST.reversed())
        .forEach(of -> pick[table.paddock(of.change().one())] = of.change().one());
    return pick;
  }

  /** In every place the choice that brings the strength of the clover down most over the years. */
  private int[] leastStrength() {
    int[] pick = first();
    for (int c = 0; c < table.choices(); c++) {
      int place = table.paddock(c);
      if (strength(c) < strength(pick[place]) - LEAST_REDUCTION) {
        pick[place] = c;
      }
    }
    return pick;
  }

  private double strength(int choice) {
    return IntStream.range(0, table.years() * run.mobs())
        .map(k -> k / run.mobs() * table.sums() + YearSums.at(k % run.mobs(), YearSums.DOSE))
        .mapToDouble(at -> table.added(choice, at))
        .sum();
  }

  /** Improves a pick in place as far as it can; false if it cannot be brought within the limits. */
  boolean improve(int[] pick) {
    if (!bringWithinLimits(pick)) {
      return false;
    }
    double gained;
    do {
      climb.improve(pick, singles);
      List<Gain> alone = aim.gains(sample, pick, singles);
      gained = climb.improve(pick, new PairSearch(table, pick).withinLimits(alone)).gained();
    } while (gained > 0);
    return true;
  }

  /** Takes what loses least for the excess that it takes away, until there is none. */
  private boolean bringWithinLimits(int[] pick) {
    Position at = new Position(table);
    at.set(pick);
    while (at.excess() > 0) {
      List<Change> less =
          singles.stream().filter(change -> at.reduction(change) > LEAST_REDUCTION).toList();
      Optional<Gain> best =
          aim.gains(sample, pick, less).stream()
              .max(Comparator.comparingDouble(of -> of.gain() / at.reduction(of.change())));
      if (best.isEmpty()) {
        return false;
      }
      at.take(best.get().change());
      at.copyPick(pick);
    }
    return true;
  }

  /** Whether a plan keeps within the limits of the farm. */
  public boolean feasible(Plan plan) {
    return table.fits(plan);
  }
}
