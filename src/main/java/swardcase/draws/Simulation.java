package swardcase.draws;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import swardcase.chance.SideBySide;
import swardcase.chance.Workspaces;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.tables.Cultivar;

/**
 * The net present value of every alternative in every draw, and what was drawn. Results stand at
 * the place of their draw, so the number of threads changes nothing.
 */
public final class Simulation {

  private static final int DRAWS_PER_TASK = 25;

  private final Draws draws;
  private final double[][] npv;
  private final double[][] alone;
  private final double[][] drawn;
  private final double[][] leaf;
  private final double[][][] kinds;

  private Simulation(Draws draws, Alternatives alternatives) {
    this.draws = draws;
    int count = draws.count();
    int paddocks = draws.model().farm().paddocks().size();
    npv = new double[alternatives.size()][count];
    alone = new double[paddocks][count];
    drawn = new double[draws.model().inputs().size()][count];
    leaf = new double[paddocks][count];
    kinds = new double[paddocks][Kind.values().length][count];
  }

  /** Kinds of clover plants that a decision can tell apart. */
  public enum Kind {
    OLD_HIGH,
    OLD_LOW,
    CURRENT_HIGH,
    CURRENT_LOW;

    public static Kind of(Cultivar cultivar) {
      if (cultivar.isOld()) {
        return cultivar.highOestrogen() ? OLD_HIGH : OLD_LOW;
      }
      return cultivar.highOestrogen() ? CURRENT_HIGH : CURRENT_LOW;
    }
  }

  /** Runs all draws; {@code progress} is told the share done, from any thread. */
  public static Simulation of(Draws draws, Alternatives alternatives, DoubleConsumer progress) {
    Simulation simulation = new Simulation(draws, alternatives);
    Workspaces<Workspace> workspaces =
        new Workspaces<>(() -> simulation.new Workspace(alternatives));
    int tasks = (draws.count() + DRAWS_PER_TASK - 1) / DRAWS_PER_TASK;
    AtomicInteger done = new AtomicInteger();
    SideBySide.of(IntStream.range(0, tasks))
        .forEach(
            task -> {
              int end = Math.min(draws.count(), (task + 1) * DRAWS_PER_TASK);
              workspaces.use(
                  workspace -> {
                    for (int d = task * DRAWS_PER_TASK; d < end; d++) {
                      workspace.run(d);
                    }
                  });
              progress.accept((double) done.incrementAndGet() / tasks);
            });
    return simulation;
  }

  /** What one draw needs at a time. */
  final class Workspace {

    private final Alternatives alternatives;
    private final DrawnFarm farm = new DrawnFarm(draws.model());
    private final Kind[][] kind = new Kind[leaf.length][];

    Workspace(Alternatives alternatives) {
      this.alternatives = alternatives;
      for (int i = 0; i < kind.length; i++) {
        kind[i] = new Kind[draws.composition(i).size()];
        for (int c = 0; c < kind[i].length; c++) {
          kind[i][c] = Kind.of(draws.composition(i).cultivar(c));
        }
      }
    }

    void run(int d) {
      OutcomeFunction run = farm.set(draws, d);
      for (int j = 0; j < drawn.length; j++) {
        drawn[j][d] = farm.draw().numbers[j];
      }
      for (int i = 0; i < kind.length; i++) {
        leaf[i][d] = run.leafFormononetin(i);
        for (int c = 0; c < kind[i].length; c++) {
          kinds[i][kind[i][c].ordinal()][d] += farm.draw().shares[i][c];
        }
      }
      npv[Alternatives.KEEP_ALL][d] = run.setBase(alternatives.plan(Alternatives.KEEP_ALL));
      for (int i = 0; i < alone.length; i++) {
        if (alternatives.isActedOn(i)) {
          Plan planned = alternatives.plan(Alternatives.PLAN);
          alone[i][d] = run.npvOfBaseWith(i, planned.action(i), planned.start(i));
        }
      }
      npv[Alternatives.PLAN][d] = run.setBase(alternatives.plan(Alternatives.PLAN));
      for (int k = Alternatives.KEEP_ALL + 1; k < npv.length; k++) {
        Plan plan = alternatives.plan(k);
        int i = alternatives.changed(k);
        npv[k][d] = run.npvOfBaseWith(i, plan.action(i), plan.start(i));
      }
    }
  }

  static Workspace workspace(Draws draws, Alternatives alternatives) {
    return new Simulation(draws, alternatives).new Workspace(alternatives);
  }

  /** The draws. */
  public Draws draws() {
    return draws;
  }

  /** Net present value of an alternative in each draw. */
  public double[] npv(int alternative) {
    return npv[alternative];
  }

  /** All of them. */
  public double[][] npv() {
    return npv;
  }

  /** Net present value of what is planned for a paddock alone in each draw; 0 if it is kept. */
  public double[] alone(int paddock) {
    return alone[paddock];
  }

  /** What an input was in each draw. */
  public double[] drawn(int input) {
    return drawn[input];
  }

  /** Formononetin of a paddock's clover in each draw, per cent of leaf dry matter. */
  public double[] leaf(int paddock) {
    return leaf[paddock];
  }

  /** Share of a kind in a paddock's clover in each draw. */
  public double[] share(int paddock, Kind kind) {
    return kinds[paddock][kind.ordinal()];
  }
}
