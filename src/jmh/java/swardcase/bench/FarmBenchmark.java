package swardcase.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.search.PlanSearch;
import swardcase.sheet.DecisionSheet;

/** The steps of a decision on a farm of 12 paddocks and on one of 40. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FarmBenchmark {

  /** Folder of the farm. */
  @Param({"mixed-farm", "large-farm"})
  public String farm;

  private FarmModel model;
  private OutcomeFunction run;
  private double[] x;
  private Plan plan;
  private Outcome outcome;
  private Report report;
  private int turn;

  /** Decides once, so that there is a report to write. */
  @Setup
  public void prepare() {
    model = DemoFarms.model(farm);
    run = model.newRun();
    x = model.inputs().likely();
    outcome = model.newOutcome();
    Decision decision = Decision.of(model);
    plan = decision.plan();
    HowSure howSure = HowSure.of(decision);
    report =
        ReportBuilder.build(
            decision, howSure, "bench", LocalDate.of(2026, 11, 25), DemoFarms.farm(farm).remarks());
  }

  /** Takes one array of assumptions, another input at its high end each time. */
  @Benchmark
  public double set() {
    turn = (turn + 1) % x.length;
    double likely = x[turn];
    x[turn] = model.inputs().get(turn).range().high();
    run.set(x);
    x[turn] = likely;
    return run.winterGrowthNow();
  }

  /** Values a plan with everything it needs already read. */
  @Benchmark
  public double evaluate() {
    run.evaluate(plan, outcome);
    return outcome.npv();
  }

  /** Finds the plan. */
  @Benchmark
  public double planSearch() {
    return new PlanSearch(Decision.draws(model, 1, 1000), List.of())
        .find()
        .orElseThrow()
        .plan()
        .certaintyEquivalent();
  }

  /** Lays out and writes the sheet. */
  @Benchmark
  public int decisionSheet() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      DecisionSheet.write(report, Optional.empty(), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.size();
  }
}
