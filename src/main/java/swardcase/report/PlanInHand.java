package swardcase.report;

import java.util.Arrays;
import java.util.stream.IntStream;
import swardcase.draws.Draws;
import swardcase.draws.Measures;
import swardcase.draws.Simulation;
import swardcase.draws.Spread;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * What a plan that was found before gains at other numbers of the farm, while no new one is looked
 * for.
 *
 * @param gain over keeping everything: net present value
 */
public record PlanInHand(Gain gain) {

  /**
   * The plan at the numbers of these draws.
   *
   * @param plan one that the farm of the draws can do: {@link #canBeDone}
   */
  public static PlanInHand of(Draws draws, Plan plan) {
    double[] gains = Simulation.measured(draws, () -> new OfPlan(draws.model(), plan))[0];
    return new PlanInHand(Gain.of(Spread.of(gains, draws.uniforms())));
  }

  /** Whether every action of a plan can still be seen through in the years counted. */
  public static boolean canBeDone(FarmModel model, Plan plan) {
    return plan.paddocks() == model.farm().paddocks().size()
        && IntStream.range(0, plan.paddocks())
            .allMatch(
                i ->
                    plan.action(i) == model.keep()
                        || plan.start(i) < model.startYears(plan.action(i)));
  }

  /** The plan's net present value over keeping everything, in one draw after the other. */
  private static final class OfPlan implements Measures {

    private final Plan plan;
    private final Outcome outcome;

    OfPlan(FarmModel model, Plan plan) {
      this.plan = plan;
      outcome = model.newOutcome();
    }

    @Override
    public int size() {
      return 1;
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {
      run.evaluate(plan, outcome);
      Arrays.fill(into, outcome.npv());
    }
  }
}
