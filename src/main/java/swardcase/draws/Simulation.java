package swardcase.draws;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import swardcase.chance.SideBySide;
import swardcase.chance.Workspaces;
import swardcase.check.Check;
import swardcase.outcome.Cause;
import swardcase.outcome.Course;
import swardcase.outcome.GainCredit;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.tables.Cultivar;
import swardcase.tables.ResponseStory;

/**
 * What every alternative brings in every draw, what was drawn, and what else was read there.
 * Results stand at the place of their draw, and means are added up in the order of the draws, so
 * the number of threads changes nothing.
 */
public final class Simulation {

  private static final int DRAWS_PER_TASK = 50;

  private final Draws draws;
  private final Alternatives alternatives;
  private final double[][] npv;
  private final double[][] costPerHa;
  private final double[][] flows;
  private final Outcome[] mean;
  private final double[][] measured;
  private final double[][] drawn;
  private final int[] thrownAway;
  private final double[][] leaf;
  private final double[][][] kinds;
  private final double[][][] credit;

  private Simulation(Draws draws, Alternatives alternatives, int measures) {
    this.draws = draws;
    this.alternatives = alternatives;
    int count = draws.count();
    int paddocks = draws.model().farm().paddocks().size();
    npv = new double[alternatives.size()][count];
    costPerHa = new double[alternatives.size()][count];
    flows = new double[count][];
    mean = new Outcome[alternatives.size() + paddocks];
    measured = new double[measures][count];
    drawn = new double[draws.model().inputs().size()][count];
    thrownAway = new int[count];
    leaf = new double[paddocks][count];
    kinds = new double[paddocks][Kind.values().length][count];
    credit = credits();
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
  public static Simulation of(
      Draws draws,
      Alternatives alternatives,
      Supplier<? extends Measures> measures,
      DoubleConsumer progress) {
    Simulation simulation = new Simulation(draws, alternatives, measures.get().size());
    Workspaces<Workspace> workspaces =
        new Workspaces<>(() -> simulation.new Workspace(measures.get()));
    int tasks = (draws.count() + DRAWS_PER_TASK - 1) / DRAWS_PER_TASK;
    Outcome[][] sums = new Outcome[tasks][];
    double[][][][] credits = new double[tasks][][][];
    AtomicInteger done = new AtomicInteger();
    SideBySide.of(IntStream.range(0, tasks))
        .forEach(
            task -> {
              int end = Math.min(draws.count(), (task + 1) * DRAWS_PER_TASK);
              sums[task] = simulation.outcomes();
              credits[task] = simulation.credits();
              workspaces.use(
                  workspace -> {
                    for (int d = task * DRAWS_PER_TASK; d < end; d++) {
                      workspace.run(d, sums[task], credits[task]);
                    }
                  });
              progress.accept((double) done.incrementAndGet() / tasks);
            });
    for (int k = 0; k < simulation.mean.length; k++) {
      simulation.mean[k] = draws.model().newOutcome();
      for (Outcome[] sum : sums) {
        simulation.mean[k].add(sum[k], 1.0 / draws.count());
      }
    }
    for (double[][][] sum : credits) {
      simulation.addCredit(sum, 1.0 / draws.count());
    }
    return simulation;
  }

  private double[][][] credits() {
    double[][][] credits = new double[alternatives.paddocks()][][];
    Arrays.setAll(credits, i -> new double[alternatives.choices(i).size()][Cause.values().length]);
    return credits;
  }

  private void addCredit(double[][][] sum, double times) {
    for (int i = 0; i < credit.length; i++) {
      for (int c = 0; c < credit[i].length; c++) {
        for (int k = 0; k < credit[i][c].length; k++) {
          credit[i][c][k] += times * sum[i][c][k];
        }
      }
    }
  }

  /** Numbers that are read in each draw, {@code [number][draw]}. */
  public static double[][] measured(Draws draws, Supplier<? extends Measures> measures) {
    int size = measures.get().size();
    double[][] measured = new double[size][draws.count()];
    Workspaces<Reader> readers =
        new Workspaces<>(() -> new Reader(measures.get(), new DrawnFarm(draws.model())));
    SideBySide.of(IntStream.range(0, draws.count()))
        .forEach(
            d ->
                readers.use(
                    reader -> {
                      double[] read = new double[size];
                      OutcomeFunction run = reader.farm().set(draws, d);
                      reader.measures().read(run, reader.farm().draw().numbers, read);
                      for (int m = 0; m < size; m++) {
                        measured[m][d] = read[m];
                      }
                    }));
    return measured;
  }

  private record Reader(Measures measures, DrawnFarm farm) {}

  private Outcome[] outcomes() {
    Outcome[] outcomes = new Outcome[mean.length];
    for (int k = 0; k < outcomes.length; k++) {
      outcomes[k] = draws.model().newOutcome();
    }
    return outcomes;
  }

  /** What one draw needs at a time. */
  private final class Workspace {

    private final Measures measures;
    private final DrawnFarm farm = new DrawnFarm(draws.model());
    private final Kind[][] kind = new Kind[leaf.length][];
    private final Outcome outcome = draws.model().newOutcome();
    private final double[] read;
    private GainCredit parts;

    Workspace(Measures measures) {
      this.measures = measures;
      read = new double[measures.size()];
      for (int i = 0; i < kind.length; i++) {
        kind[i] = new Kind[draws.composition(i).size()];
        for (int c = 0; c < kind[i].length; c++) {
          kind[i][c] = Kind.of(draws.composition(i).cultivar(c));
        }
      }
    }

    void run(int d, Outcome[] sums, double[][][] credits) {
      OutcomeFunction run = farm.set(draws, d);
      thrownAway[d] = farm.thrownAway();
      for (int j = 0; j < drawn.length; j++) {
        drawn[j][d] = farm.draw().numbers[j];
      }
      for (int i = 0; i < kind.length; i++) {
        leaf[i][d] = run.leafFormononetin(i);
        for (int c = 0; c < kind[i].length; c++) {
          kinds[i][kind[i][c].ordinal()][d] += farm.draw().shares[i][c];
        }
      }
      measures.read(run, farm.draw().numbers, read);
      for (int m = 0; m < read.length; m++) {
        measured[m][d] = read[m];
      }
      for (int k = Alternatives.KEEP_ALL; k >= Alternatives.PLAN; k--) {
        run.evaluate(alternatives.plan(k), outcome);
        npv[k][d] = outcome.npv();
        sums[k].add(outcome, 1);
      }
      flows[d] = outcome.cashFlow();
      Plan plan = alternatives.plan(Alternatives.PLAN);
      for (int i = 0; i < plan.paddocks(); i++) {
        run.addShares(plan, i, 1, sums[npv.length + i]);
      }
      for (int k = Alternatives.KEEP_ALL + 1; k < npv.length; k++) {
        int i = alternatives.changed(k).orElseThrow();
        Course course = alternatives.plan(k).course(i);
        npv[k][d] = run.evaluateBaseWith(i, course.action(), course.start(), outcome);
        costPerHa[k][d] = run.costPerHa(i, course.action(), course.start());
        sums[k].add(outcome, 1);
        if (i < plan.paddocks()) {
          run.addShares(alternatives.plan(k), i, 1, sums[k]);
        }
      }
      if (parts == null) {
        parts = new GainCredit(run);
      }
      for (int i = 0; i < credits.length; i++) {
        parts.set(i, npv[alternatives.place(i, 0)][d]);
        for (int c = 1; c < credits[i].length; c++) {
          double of = npv[alternatives.place(i, c)][d];
          parts.add(alternatives.choices(i).get(c), of, credits[i][c]);
        }
      }
    }
  }

  /** The draws. */
  public Draws draws() {
    return draws;
  }

  /** The plans that were run. */
  public Alternatives alternatives() {
    return alternatives;
  }

  /** Net present value of an alternative in each draw. */
  public double[] npv(int alternative) {
    return npv[alternative];
  }

  /** The plan's yearly sums in a draw, first year first, the end value in the last. */
  public double[] cashFlow(int draw) {
    return flows[draw];
  }

  /** What the changed paddock's choice costs in all, undiscounted, per ha, in each draw. */
  public double[] costPerHa(int alternative) {
    return costPerHa[alternative];
  }

  /** Mean over the draws of what an alternative brings, year by year. */
  public Outcome mean(int alternative) {
    return mean[alternative];
  }

  /**
   * Share of old cultivars in a paddock's clover in a year, 0 to 1, mean over the draws, with one
   * of its choices.
   *
   * @param choice any but keeping, which may be told for the farm alone
   */
  public double oldShare(int paddock, int choice, int year) {
    return shares(paddock, choice).oldShare(year);
  }

  /** Mean clover share of the paddock's green feed under the same choice, in that year. */
  public double cloverShare(int paddock, int choice, int year) {
    return shares(paddock, choice).cloverShare(year);
  }

  private Outcome shares(int paddock, int choice) {
    Check.that(choice > 0, "choice must be an action, but was %s", choice);
    int place = alternatives.place(paddock, choice);
    return mean[place == Alternatives.PLAN ? npv.length + paddock : place];
  }

  /**
   * Where the gain of a paddock's choice over keeping it comes from, by {@link Cause}, mean over
   * the draws; nothing of keeping.
   */
  public double[] credit(int paddock, int choice) {
    return credit[paddock][choice].clone();
  }

  /** What else was read, in each draw. */
  public double[] measured(int measure) {
    return measured[measure];
  }

  /** What an input was in each draw. */
  public double[] drawn(int input) {
    return drawn[input];
  }

  /** Draws thrown away because an observed figure could not have come about with them. */
  public int thrownAway() {
    return Arrays.stream(thrownAway).sum();
  }

  /** Draws for which none was found with which every observed figure could have come about. */
  public int unexplained() {
    return (int) Arrays.stream(thrownAway).filter(count -> count == DrawnFarm.MOST).count();
  }

  /** The story of the response in each draw; of a farm without ewes that of the dosed trial. */
  public ResponseStory[] stories() {
    ResponseStory[] stories = new ResponseStory[draws.count()];
    OptionalInt place = draws.model().inputs().find(ResponseStory.KEY);
    Arrays.setAll(
        stories,
        d ->
            place.isPresent() ? ResponseStory.of(drawn[place.getAsInt()][d]) : ResponseStory.TRIAL);
    return stories;
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
