package swardcase.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.outcome.YearSums;

/**
 * Finds the plan of highest value at likely assumptions: net present value, within the money per
 * year, the share of the farm out of grazing at once, and enough feed for the ewes at joining. The
 * whole farm is evaluated each time, so that a tonne of supplement is saved once.
 *
 * <p>{@link LocalSearch} improves several starts as far as it can: keeping everything, in each
 * paddock what gains most there alone, everywhere what takes most oestrogen away, and all kept with
 * the rules of the farm. The best of what they end in is the plan.
 */
public final class LikelySearch {

  /**
   * A plan that a search found.
   *
   * @param plan the plan
   * @param value its net present value, in money
   */
  public record Found(Plan plan, double value) {}

  private final OutcomeFunction run;
  private final PlanTable table;
  private final LocalSearch local;
  private final Position keepingAll;
  private final double[] sums;

  /** A search with its own workspace. */
  public LikelySearch(FarmModel model) {
    this(model, List.of());
  }

  /** A search among the plans in which these choices are made beforehand. */
  public LikelySearch(FarmModel model, List<FixedChoice> fixed) {
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
    return local.improveSingly(first()) == Double.NEGATIVE_INFINITY;
  }

  /** The best plan found; empty if no plan keeps within the limits. */
  public Optional<Found> find() {
    int[] best = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int[] pick :
        List.of(first(), eachAlone(), everythingChanged(), table.withRules(first()))) {
      double value = local.improve(pick);
      if (value > most + 1e-6) {
        most = value;
        best = pick;
      }
    }
    return best == null ? Optional.empty() : Optional.of(new Found(table.plan(best), most));
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
    int[] pick = new int[table.places()];
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

  /** Whether a plan keeps within the limits of the farm. */
  public boolean feasible(Plan plan) {
    return table.fits(plan);
  }

  /** Net present value of a plan. */
  public double value(Plan plan) {
    return table.value(table.pick(plan), sums);
  }
}
