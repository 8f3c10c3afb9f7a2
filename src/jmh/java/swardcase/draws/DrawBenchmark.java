package swardcase.draws;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import swardcase.bench.DemoFarms;
import swardcase.decision.Decision;
import swardcase.outcome.Course;
import swardcase.outcome.OutcomeFunction;

/** One draw on one thread: the numbers drawn, the farm set to them, every alternative valued. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class DrawBenchmark {

  /** Folder of the farm. */
  @Param({"mixed-farm", "large-farm"})
  public String farm;

  private Draws draws;
  private Alternatives alternatives;
  private DrawnFarm drawn;
  private int draw;

  /** Decides once; the alternatives lie around the plan. */
  @Setup
  public void prepare() {
    Simulation simulation = Decision.of(DemoFarms.model(farm)).simulation();
    draws = simulation.draws();
    alternatives = simulation.alternatives();
    drawn = new DrawnFarm(draws.model());
  }

  /** The next of the draws. */
  @Benchmark
  public double draw() {
    OutcomeFunction run = drawn.set(draws, draw);
    double sum = run.setBase(alternatives.plan(Alternatives.PLAN));
    for (int k = Alternatives.KEEP_ALL + 1; k < alternatives.size(); k++) {
      int paddock = alternatives.changed(k);
      Course course = alternatives.plan(k).course(paddock);
      sum += run.npvOfBaseWith(paddock, course.action(), course.start());
    }
    draw = (draw + 1) % draws.count();
    return sum;
  }
}
