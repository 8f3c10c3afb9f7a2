package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import swardcase.chance.SideBySide;
import swardcase.chance.Workspaces;
import swardcase.draws.DrawnFarm;
import swardcase.draws.Draws;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * Common draws on which plans, and changes of them, are valued. Results stand at the place of their
 * draw, so the number of threads changes nothing.
 *
 * <p>Setting a farm to a draw costs as much as about a hundred changes valued. A sample that is
 * asked again and again keeps a farm for each of its draws, and what single changes of a plan were
 * worth in them; another sets a few farms anew each time it is asked, since a farm takes up to a
 * megabyte and more.
 */
final class DrawnSample {

  private static final int DRAWS_PER_TASK = 8;

  /** A farm kept takes some 12 kB a paddock. */
  private static final int MOST_PADDOCKS_KEPT = 150;

  private static final OutcomeFunction[] NONE = {};

  /** A plan valued as a change of another: the sum has its last digits from there. */
  private record Beside(Plan base, Plan plan) {}

  /** A pick to value, and changes of it, each by itself. */
  record Trial(int[] pick, List<Change> changes) {

    Trial(int[] pick) {
      this(pick, List.of());
    }

    Trial {
      pick = pick.clone();
      changes = List.copyOf(changes);
    }
  }

  private final PlanTable table;
  private final Draws draws;
  private final int from;
  private final int to;
  private final OutcomeFunction[] kept;
  private final Map<Beside, double[]> known;
  private final Workspaces<DrawnFarm> workspaces;

  private DrawnSample(
      PlanTable table,
      Draws draws,
      int from,
      int to,
      OutcomeFunction[] kept,
      Map<Beside, double[]> known,
      Workspaces<DrawnFarm> workspaces) {
    this.table = table;
    this.draws = draws;
    this.from = from;
    this.to = to;
    this.kept = kept;
    this.known = known;
    this.workspaces = workspaces;
  }

  /** A sample that keeps a farm for each draw, unless the farm is so large that memory may end. */
  static DrawnSample kept(PlanTable table, Draws draws) {
    if (table.paddocks() > MOST_PADDOCKS_KEPT) {
      return setAnew(table, draws);
    }
    OutcomeFunction[] kept = new OutcomeFunction[draws.count()];
    SideBySide.of(IntStream.range(0, kept.length))
        .forEach(d -> kept[d] = new DrawnFarm(draws.model()).set(draws, d));
    return new DrawnSample(
        table, draws, 0, draws.count(), kept, new HashMap<>(), workspaces(draws));
  }

  /** A sample that sets farms anew. */
  static DrawnSample setAnew(PlanTable table, Draws draws) {
    return new DrawnSample(table, draws, 0, draws.count(), NONE, Map.of(), workspaces(draws));
  }

  /** The one draw that a run is set to. */
  static DrawnSample of(PlanTable table, OutcomeFunction run) {
    OutcomeFunction[] kept = {run};
    return new DrawnSample(table, null, 0, 1, kept, new HashMap<>(), null);
  }

  private static Workspaces<DrawnFarm> workspaces(Draws draws) {
    return new Workspaces<>(() -> new DrawnFarm(draws.model()));
  }

  /** The same draws for choices of another table. */
  DrawnSample of(PlanTable other) {
    return new DrawnSample(other, draws, from, to, kept, known, workspaces);
  }

  /** Some of the draws of a sample, set anew. */
  DrawnSample part(int first, int end) {
    return new DrawnSample(table, draws, from + first, from + end, NONE, Map.of(), workspaces);
  }

  /** Whether there is a farm for each draw. */
  boolean isKept() {
    return kept.length > 0;
  }

  /** How many draws there are. */
  int size() {
    return to - from;
  }

  /**
   * Values, in money, at {@code [trial][k][draw]}: k = 0 is the pick itself, 1 its first change.
   */
  double[][][] values(List<Trial> trials) {
    Valued[] valued = trials.stream().map(Valued::new).toArray(Valued[]::new);
    int tasks = (size() + DRAWS_PER_TASK - 1) / DRAWS_PER_TASK;
    SideBySide.of(IntStream.range(0, tasks))
        .forEach(
            task -> {
              int end = Math.min(size(), (task + 1) * DRAWS_PER_TASK);
              value(task * DRAWS_PER_TASK, end, valued);
            });
    return Arrays.stream(valued).map(Valued::remembered).toArray(double[][][]::new);
  }

  private void value(int first, int end, Valued[] trials) {
    if (isKept()) {
      for (int d = first; d < end; d++) {
        value(kept[d], d, trials);
      }
    } else {
      workspaces.use(
          farm -> {
            for (int d = first; d < end; d++) {
              value(farm.set(draws, from + d), d, trials);
            }
          });
    }
  }

  private static void value(OutcomeFunction run, int d, Valued[] trials) {
    for (Valued trial : trials) {
      trial.value(run, d);
    }
  }

  /** A trial with the values found so far, of which those known before are not found again. */
  private final class Valued {

    private final Plan plan;
    private final List<Change> changes;
    private final double[][] values;
    private final List<Integer> open = new ArrayList<>();

    Valued(Trial trial) {
      plan = table.plan(trial.pick());
      changes = trial.changes();
      values = new double[1 + changes.size()][];
      for (int k = 0; k < values.length; k++) {
        values[k] = isKept() ? known.get(beside(k)) : null;
        if (values[k] == null) {
          values[k] = new double[size()];
          open.add(k);
        }
      }
    }

    private Beside beside(int k) {
      return new Beside(plan, k == 0 ? plan : table.with(plan, changes.get(k - 1)));
    }

    void value(OutcomeFunction run, int d) {
      if (open.isEmpty()) {
        return;
      }
      double ofPlan = run.setBase(plan);
      for (int k : open) {
        values[k][d] = k == 0 ? ofPlan : npv(run, changes.get(k - 1));
      }
    }

    double[][] remembered() {
      if (isKept()) {
        open.forEach(k -> known.put(beside(k), values[k]));
      }
      return values;
    }

    private double npv(OutcomeFunction run, Change change) {
      int one = change.one();
      if (!change.isPair()) {
        return run.npvOfBaseWith(table.paddock(one), table.action(one), table.start(one));
      }
      int two = change.two();
      return run.npvOfBaseWith(
          table.paddock(one),
          table.action(one),
          table.start(one),
          table.paddock(two),
          table.action(two),
          table.start(two));
    }
  }
}
