package swardcase.draws;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import swardcase.bench.DemoFarms;
import swardcase.bench.NumpyFiles;
import swardcase.chance.CountedRandom;
import swardcase.decision.Decision;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmArrays;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.Found;

/**
 * Values the same choices under the same draws as the scripts beside the tests do, times it, and
 * writes for them what went in and what came out.
 *
 * <p>Two lists of choices: <i>options</i>, the plan with one paddock kept or given another action
 * in its best year, as the program itself weighs them in every draw; and <i>starts</i>, every
 * paddock with every action in every start year, everything else kept.
 */
public final class Comparison {

  private static final long SEED = 1;
  private static final int ROUNDS = 3;

  private final FarmModel model;
  private final Draw[] drawn;

  private Comparison(Draws draws) {
    model = draws.model();
    CountedRandom random = new CountedRandom(0);
    drawn = new Draw[draws.count()];
    for (int d = 0; d < drawn.length; d++) {
      drawn[d] = new Draw(model);
      draws.fill(d, 0, random, drawn[d]);
    }
  }

  /** A plan, and what is put in its place on one paddock at a time. */
  private record Work(String name, Plan base, List<Choice> choices) {}

  private record Choice(int paddock, int action, int start) {}

  /**
   * Runs.
   *
   * @param args one text: demonstration farm, draws (a multiple of 20) and folder, with commas
   */
  public static void main(String[] args) {
    String[] parts = args[0].split(",");
    int count = Integer.parseInt(parts[1]);
    Decision decision = Decision.of(DemoFarms.model(parts[0]));
    FarmModel model = decision.model();
    Comparison comparison = new Comparison(Decision.draws(model, SEED, count));
    NumpyFiles files = new NumpyFiles(Path.of(parts[2]));
    FarmArrays.write(model, files);
    comparison.writeDraws(files);
    comparison.run(options(decision), files);
    comparison.run(starts(model), files);
  }

  private static Work options(Decision decision) {
    Plan plan = decision.plan();
    List<Choice> choices = new ArrayList<>();
    for (int i = 0; i < plan.paddocks(); i++) {
      choices.add(new Choice(i, decision.model().keep(), 0));
      for (Found.BestStart start : decision.found().bestStarts().get(i)) {
        choices.add(new Choice(i, start.course().action(), start.course().start()));
      }
    }
    return new Work("options", plan, choices);
  }

  private static Work starts(FarmModel model) {
    OutcomeFunction run = model.newRun();
    List<Choice> choices = new ArrayList<>();
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      for (int a = 0; a < model.actions().size(); a++) {
        for (int start = model.firstStart(a); start < model.startYears(a); start++) {
          if (a != model.keep() && run.allowed(i, a)) {
            choices.add(new Choice(i, a, start));
          }
        }
      }
    }
    return new Work("starts", model.keepAll(), choices);
  }

  private void writeDraws(NumpyFiles files) {
    int inputs = model.inputs().size();
    int paddocks = drawn[0].shares.length;
    int most = Arrays.stream(drawn[0].shares).mapToInt(of -> of.length).max().orElseThrow() + 1;
    double[] numbers = new double[drawn.length * inputs];
    double[] standing = new double[drawn.length * paddocks * most];
    for (int d = 0; d < drawn.length; d++) {
      System.arraycopy(drawn[d].numbers, 0, numbers, d * inputs, inputs);
      for (int i = 0; i < paddocks; i++) {
        double[] of = drawn[d].shares[i];
        System.arraycopy(of, 0, standing, (d * paddocks + i) * most, of.length);
      }
    }
    files.write("drawn", numbers, drawn.length, inputs);
    files.write("shares", standing, drawn.length, paddocks, most);
    files.write(
        "seasons",
        Arrays.stream(drawn)
            .flatMapToInt(draw -> Arrays.stream(draw.seasons))
            .asDoubleStream()
            .toArray(),
        drawn.length,
        model.years());
    files.write("likely", model.inputs().likely(), inputs);
  }

  private void run(Work work, NumpyFiles files) {
    int paddocks = work.base().paddocks();
    files.write(
        work.name() + "_base",
        IntStream.range(0, 2 * paddocks)
            .mapToDouble(
                k -> k < paddocks ? work.base().action(k) : work.base().start(k - paddocks))
            .toArray(),
        2,
        paddocks);
    files.write(
        work.name() + "_choices",
        work.choices().stream()
            .flatMapToDouble(c -> Arrays.stream(new double[] {c.paddock(), c.action(), c.start()}))
            .toArray(),
        work.choices().size(),
        3);
    int columns = work.choices().size() + 1;
    double[] npv = new double[drawn.length * columns];
    value(work, 0, drawn.length, npv);
    double least = Double.POSITIVE_INFINITY;
    double leastBoth = Double.POSITIVE_INFINITY;
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int round = 0; round < ROUNDS; round++) {
      long before = threads.getCurrentThreadCpuTime();
      value(work, 0, drawn.length, npv);
      least = Math.min(least, (threads.getCurrentThreadCpuTime() - before) / 1e9);
      long start = System.nanoTime();
      int half = drawn.length / 2;
      IntStream.range(0, 2)
          .parallel()
          .forEach(k -> value(work, k * half, k == 0 ? half : drawn.length, npv));
      leastBoth = Math.min(leastBoth, (System.nanoTime() - start) / 1e9);
    }
    files.write(work.name() + "_npv", npv, drawn.length, columns);
    files.write(work.name() + "_seconds", new double[] {least, leastBoth}, 2);
    System.out.printf(
        Locale.ROOT,
        "Java, %s: %d draws, %d choices, %.3f ms of processor time a draw, %.0f draws/s on one"
            + " thread; %.0f draws/s by the clock on two%n",
        work.name(),
        drawn.length,
        columns,
        1000 * least / drawn.length,
        drawn.length / least,
        drawn.length / leastBoth);
  }

  /** Values the plan and every choice in some of the draws. */
  private void value(Work work, int from, int to, double[] npv) {
    OutcomeFunction run = model.newRun();
    int columns = work.choices().size() + 1;
    for (int d = from; d < to; d++) {
      run.set(drawn[d]);
      npv[d * columns] = run.setBase(work.base());
      for (int k = 1; k < columns; k++) {
        Choice choice = work.choices().get(k - 1);
        npv[d * columns + k] = run.npvOfBaseWith(choice.paddock(), choice.action(), choice.start());
      }
    }
  }
}
