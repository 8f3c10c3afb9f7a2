package swardcase.search;

import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;
import swardcase.draws.DrawnFarm;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * Common draws on which plans, and changes of them, are valued. Results stand at the place of their
 * draw, so the number of threads changes nothing.
 *
 * <p>Setting a farm to a draw costs as much as about a hundred changes valued. A sample that is
 * asked again and again keeps a farm for each of its draws; another sets a few farms anew each time
 * it is asked, since a farm takes up to a megabyte and more.
 */
final class DrawnSample {

  private static final int DRAWS_PER_TASK = 8;
  private static final OutcomeFunction[] NONE = {};

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

  private final FarmModel model;
  private final PlanTable table;
  private final Draws draws;
  private final int from;
  private final int to;
  private final OutcomeFunction[] kept;
  private final Queue<DrawnFarm> workspaces = new ConcurrentLinkedQueue<>();

  private DrawnSample(PlanTable table, Draws draws, int from, int to, OutcomeFunction[] kept) {
    model = draws.model();
    this.table = table;
    this.draws = draws;
    this.from = from;
    this.to = to;
    this.kept = kept;
  }

  /** A sample that keeps a farm for each draw. */
  static DrawnSample kept(PlanTable table, Draws draws) {
    OutcomeFunction[] kept = new OutcomeFunction[draws.count()];
    IntStream.range(0, kept.length)
        .parallel()
        .forEach(d -> kept[d] = new DrawnFarm(draws.model()).set(draws, d));
    return new DrawnSample(table, draws, 0, draws.count(), kept);
  }

  /** A sample that sets farms anew. */
  static DrawnSample setAnew(PlanTable table, Draws draws) {
    return new DrawnSample(table, draws, 0, draws.count(), NONE);
  }

  /** The same draws for choices of another table. */
  DrawnSample of(PlanTable other) {
    return new DrawnSample(other, draws, from, to, kept);
  }

  /** Some of the draws of a sample, set anew. */
  DrawnSample part(int first, int end) {
    return new DrawnSample(table, draws, from + first, from + end, NONE);
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
    IntStream.range(0, tasks)
        .parallel()
        .forEach(
            task -> {
              int end = Math.min(size(), (task + 1) * DRAWS_PER_TASK);
              for (int d = task * DRAWS_PER_TASK; d < end; d++) {
                value(d, valued);
              }
            });
    double[][][] values = new double[valued.length][][];
    for (int k = 0; k < values.length; k++) {
      values[k] = valued[k].values;
    }
    return values;
  }

  private void value(int d, Valued[] trials) {
    if (isKept()) {
      value(kept[d], d, trials);
      return;
    }
    DrawnFarm free = workspaces.poll();
    DrawnFarm farm = free == null ? new DrawnFarm(model) : free;
    value(farm.set(draws, from + d), d, trials);
    workspaces.add(farm);
  }

  private static void value(OutcomeFunction run, int d, Valued[] trials) {
    for (Valued trial : trials) {
      trial.value(run, d);
    }
  }

  /** A trial with the values found so far. */
  private final class Valued {

    private final Plan plan;
    private final Change[] changes;
    private final double[] effort;
    private final double[][] values;

    Valued(Trial trial) {
      plan = table.plan(trial.pick());
      changes = trial.changes().toArray(Change[]::new);
      effort = new double[1 + changes.length];
      values = new double[effort.length][size()];
      for (int c : trial.pick()) {
        effort[0] += effort(c);
      }
      for (int k = 0; k < changes.length; k++) {
        Change change = changes[k];
        effort[k + 1] = effort[0] + moreEffort(trial.pick(), change.one());
        effort[k + 1] += change.isPair() ? moreEffort(trial.pick(), change.two()) : 0;
      }
    }

    private double moreEffort(int[] pick, int choice) {
      return effort(choice) - effort(pick[table.paddock(choice)]);
    }

    void value(OutcomeFunction run, int d) {
      values[0][d] = run.setBase(plan) - effort[0];
      for (int k = 0; k < changes.length; k++) {
        values[k + 1][d] = npv(run, changes[k]) - effort[k + 1];
      }
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

  /** What it takes to do anything, which the net present value leaves out. */
  private double effort(int choice) {
    return table.keeps(choice) ? 0 : model.effort(table.paddock(choice));
  }
}
