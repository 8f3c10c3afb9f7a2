package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.YearSums;

/**
 * Finds the plan of highest value at likely assumptions: net present value less the effort of each
 * change, within the money per year, the share of the farm out of grazing at once, and enough feed
 * for the ewes at joining. The whole farm is evaluated each time, so that a tonne of supplement is
 * saved once.
 *
 * <p>{@link LocalSearch} improves several starts as far as it can: keeping everything, in each
 * paddock what gains most there alone, and everywhere what takes most oestrogen away. The best of
 * what they end in is the plan; how far behind it the others ended says how much a search may miss.
 */
public final class PlanSearch {

  private static final int NEXT_BEST_TRIED = 6;

  /**
   * A plan that a search found.
   *
   * @param plan the plan
   * @param value its net present value less effort, in money
   * @param others values at which the other starts of the search ended, best first; none where only
   *     one start was tried
   */
  public record Found(Plan plan, double value, List<Double> others) {

    /** Copies the list. */
    public Found {
      others = List.copyOf(others);
    }

    /** How far behind the plan the worst of the other starts ended, in money. */
    public double mostBehind() {
      return others.isEmpty() ? 0 : value - others.get(others.size() - 1);
    }
  }

  private final FarmModel model;
  private final OutcomeFunction run;
  private final PlanTable table;
  private final LocalSearch local;
  private final Position keepingAll;
  private final double[] sums;

  /** A search with its own workspace. */
  public PlanSearch(FarmModel model) {
    this(model, List.of());
  }

  /** A search among the plans in which these choices are made beforehand. */
  public PlanSearch(FarmModel model, List<FixedChoice> fixed) {
    this.model = model;
    run = model.newRun();
    table = new PlanTable(model, run, fixed);
    local = new LocalSearch(table);
    keepingAll = new Position(table);
    keepingAll.set(first());
    sums = new double[table.years() * table.sums()];
  }

  PlanTable table() {
    return table;
  }

  /** The first choice of every paddock, which keeps it unless another is made beforehand. */
  int[] first() {
    int[] pick = new int[table.paddocks()];
    Arrays.setAll(pick, table::first);
    return pick;
  }

  /** The best plan found; keeping everything is always among the candidates. */
  public Plan best() {
    return find().orElseThrow().plan();
  }

  /** Whether no plan was found that keeps within the limits. */
  public boolean isImpossible() {
    return local.improveSingly(first()) == Double.NEGATIVE_INFINITY;
  }

  /** The best plan found; empty if no plan keeps within the limits. */
  public Optional<Found> find() {
    int[] best = null;
    double most = Double.NEGATIVE_INFINITY;
    List<Double> values = new ArrayList<>();
    for (int[] pick : List.of(first(), eachAlone(), everythingChanged())) {
      double value = local.improve(pick);
      if (value > Double.NEGATIVE_INFINITY) {
        values.add(value);
      }
      if (value > most + 1e-6) {
        most = value;
        best = pick;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    values.remove(most);
    values.sort(Comparator.reverseOrder());
    return Optional.of(new Found(table.plan(best), most, values));
  }

  /** In each paddock the choice that gains most with everything else as at the first choices. */
  private int[] eachAlone() {
    int[] pick = first();
    for (int i = 0; i < pick.length; i++) {
      double most = 0;
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        keepingAll.attempt(c);
        double gain = keepingAll.triedGain(c);
        if (gain > most) {
          most = gain;
          pick[i] = c;
        }
      }
    }
    return pick;
  }

  /** Everywhere the choice that brings the strength of the clover down most over the years. */
  private int[] everythingChanged() {
    int[] pick = new int[table.paddocks()];
    for (int i = 0; i < pick.length; i++) {
      pick[i] = table.first(i);
      double least = Double.POSITIVE_INFINITY;
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        double strength = 0;
        for (int t = 0; t < table.years(); t++) {
          for (int g = 0; g < run.mobs(); g++) {
            strength +=
                table.added(c, t * table.sums() + YearSums.at(g, YearSums.DOSE))
                    + table.added(c, t * table.sums() + YearSums.at(g, YearSums.DOSE_HELD));
          }
        }
        if (strength < least - 1e-9) {
          least = strength;
          pick[i] = c;
        }
      }
    }
    return pick;
  }

  /**
   * The best plan found in which some paddock has another action than in {@code best}; empty if
   * there is none within the limits.
   */
  public Optional<Found> nextBest(Plan best) {
    int[] from = table.pick(best);
    int[] next = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int change : bestChanges(from)) {
      int[] pick = from.clone();
      pick[table.paddock(change)] = change;
      local.close(table.paddock(change), table.action(from[table.paddock(change)]));
      double value = local.improveSingly(pick);
      local.openAll();
      if (value > most) {
        most = value;
        next = pick;
      }
    }
    return next == null
        ? Optional.empty()
        : Optional.of(new Found(table.plan(next), most, List.of()));
  }

  /**
   * The best change of each paddock to another action that keeps within the limits; of these the
   * few that gain most.
   */
  private List<Integer> bestChanges(int[] from) {
    Position at = new Position(table);
    at.set(from);
    double[] gain = new double[table.choices()];
    List<Integer> changes = new ArrayList<>();
    for (int i = 0; i < table.paddocks(); i++) {
      int best = -1;
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        if (table.action(c) != table.action(from[i])) {
          at.attempt(c);
          gain[c] = at.triedGain(c);
          if ((best < 0 || gain[c] > gain[best]) && at.triedExcess() == 0) {
            best = c;
          }
        }
      }
      if (best >= 0) {
        changes.add(best);
      }
    }
    changes.sort((a, b) -> Double.compare(gain[b], gain[a]));
    return changes.subList(0, Math.min(NEXT_BEST_TRIED, changes.size()));
  }

  /** What a plan gains if a limit is lifted, at least. */
  public double worthOfLifting(PlanLimit limit, Plan plan) {
    table.lift(limit);
    int[] pick = table.pick(plan);
    double before = table.value(pick, sums);
    double after = local.improveSingly(pick);
    table.restoreLimits();
    return Math.max(0, after - before);
  }

  /**
   * The start year at which an action pays best on one paddock alone, everything else kept; the
   * coming year if it pays in none, since a loss put off is no better plan. The limits of the farm
   * do not count here.
   */
  public int bestStart(int paddock, int action) {
    int best = 0;
    double most = 0;
    for (int c = table.first(paddock); c < table.first(paddock + 1); c++) {
      if (table.action(c) == action) {
        keepingAll.attempt(c);
        double gain = keepingAll.triedGain(c);
        if (gain > most) {
          most = gain;
          best = table.start(c);
        }
      }
    }
    return best;
  }

  /** Whether a plan keeps within the limits of the farm. */
  public boolean feasible(Plan plan) {
    table.sum(table.pick(plan), sums);
    return table.excess(sums) == 0;
  }

  /** Net present value of a plan less the effort of its changes. */
  public double value(Plan plan) {
    return table.value(table.pick(plan), sums);
  }
}
