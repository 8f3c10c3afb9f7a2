package swardcase.draws;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import swardcase.decision.HowSure;
import swardcase.outcome.Course;
import swardcase.search.LikelySearch;

/** One draw on one thread: the numbers drawn, the farm set to them, every alternative valued. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class DrawBenchmark {

  private static final int DRAWS = 1000;

  /** Folder of the farm. */
  @Param({"mixed-farm", "large-farm"})
  public String farm;

  private Simulation.Workspace workspace;
  private int draw;

  /** Decides once; the alternatives lie around the plan. */
  @Setup
  public void prepare() {
    Decision decision = Decision.of(DemoFarms.model(farm));
    List<List<Course>> options =
        IntStream.range(0, decision.plan().paddocks())
            .mapToObj(
                i ->
                    decision.alone(i).stream()
                        .map(option -> new Course(option.action(), option.start()))
                        .toList())
            .toList();
    Alternatives alternatives =
        new Alternatives(
            decision.model(),
            decision.plan(),
            options,
            new LikelySearch(decision.model())::feasible);
    workspace =
        Simulation.workspace(
            new Draws(decision.model(), 1, HowSure.BLOCKS, DRAWS / HowSure.BLOCKS), alternatives);
  }

  /** The next of a thousand draws. */
  @Benchmark
  public int draw() {
    workspace.run(draw);
    draw = (draw + 1) % DRAWS;
    return draw;
  }
}
