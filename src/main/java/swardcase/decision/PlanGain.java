package swardcase.decision;

import java.util.stream.IntStream;
import swardcase.chance.Spread;
import swardcase.draws.Draws;
import swardcase.draws.Measures;
import swardcase.draws.Simulation;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * The gain of a plan over keeping everything: net present value.
 *
 * @param plan the plan
 */
public record PlanGain(Plan plan) implements Measures {

  /**
   * What a plan that was found before gains in these draws, while no new one is looked for.
   *
   * @param plan one that the farm of the draws can do: {@link #canBeDone}
   */
  public static Spread of(Draws draws, Plan plan) {
    return Spread.of(Simulation.measured(draws, () -> new PlanGain(plan))[0], draws.uniforms());
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

  @Override
  public int size() {
    return 1;
  }

  @Override
  public void read(OutcomeFunction run, double[] numbers, double[] into) {
    into[0] = run.setBase(plan);
  }
}
