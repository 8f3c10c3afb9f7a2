package swardcase.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the plan of highest value at likely assumptions: net present value less the effort of each
 * change, within the money per year, the share of the farm out of grazing at once, and enough feed
 * for the ewes at joining. The whole farm is evaluated each time, so that a tonne of supplement is
 * saved once.
 *
 * <p>Plans come from {@link LocalSearch}, started from keeping everything and from {@link
 * Rationing} of the gains as they are at a plan in hand. {@link PlanProof} then proves the best of
 * them, or says how far a better one could be ahead.
 */
public final class PlanSearch {

  private static final int NEXT_BEST_TRIED = 6;
  private static final long BRANCHES = 20_000;

  /**
   * A plan with what is known of how good it is.
   *
   * @param plan the plan
   * @param value its net present value less effort
   * @param bound no plan has a higher value than this
   */
  public record Found(Plan plan, double value, double bound) {

    /** Whether no plan is better by more than a ten thousandth, or by half a unit of money. */
    public boolean isProved() {
      return bound - value <= BestSoFar.close(value) * (1 + 1e-9);
    }

    /** How far a better plan could be ahead, as a share of the bound; 0 if none is. */
    public double gap() {
      return isProved() ? 0 : (bound - value) / bound;
    }
  }

  private final FarmModel model;
  private final Run run;
  private final PlanTable table;
  private final LocalSearch local;
  private final Position keepingAll;
  private final double[] sums;

  /** A search with its own workspace. */
  public PlanSearch(FarmModel model) {
    this(model, List.of());
  }

  /** A search among the plans in which these choices are made beforehand. */
  public PlanSearch(FarmModel model, List<Choice> fixed) {
    this.model = model;
    run = model.newRun();
    table = new PlanTable(model, run, fixed);
    local = new LocalSearch(table);
    keepingAll = new Position(table);
    keepingAll.set(first());
    sums = new double[table.years() * table.sums()];
  }

  /** The first choice of every paddock, which keeps it unless another is made beforehand. */
  private int[] first() {
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

  /** The best plan found with its bound; empty if no plan keeps within the limits. */
  public Optional<Found> find() {
    BestSoFar best = new BestSoFar(local);
    int[] start = first();
    PlanBound bound = new PlanBound(table);
    best.improveFrom(start);
    ration(bound, start, best);
    int[] changed = everythingChanged();
    ration(bound, changed, best);
    best.improveFrom(changed);
    if (best.isEmpty()) {
      return Optional.empty();
    }
    ration(bound, best.pick(), best);
    double most = new PlanProof(table, bound, best).bound();
    return Optional.of(new Found(table.plan(best.pick()), best.value(), most));
  }

  /** Takes the gains of every choice for what they are at a pick, and shares the limits out. */
  private void ration(PlanBound bound, int[] at, BestSoFar best) {
    table.sum(at, sums);
    double[] slopes = bound.slopes(sums);
    double[] gains = new double[table.choices()];
    for (int c = 0; c < gains.length; c++) {
      gains[c] = bound.alone(c) + table.priced(c, slopes);
    }
    int[] pick = table.ration(gains, BRANCHES).pick();
    if (pick.length > 0) {
      best.improveFrom(pick);
    }
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
   * there is none within the limits. Its bound is not sought, so it is infinite.
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
        : Optional.of(new Found(table.plan(next), most, Double.POSITIVE_INFINITY));
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
