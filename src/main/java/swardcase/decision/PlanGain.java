package swardcase.decision;

import swardcase.draws.Measures;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * The gain of a plan over keeping everything.
 *
 * @param plan the plan
 */
record PlanGain(Plan plan) implements Measures {

  @Override
  public int size() {
    return 1;
  }

  @Override
  public void read(OutcomeFunction run, double[] numbers, double[] into) {
    into[0] = run.setBase(plan);
  }
}
