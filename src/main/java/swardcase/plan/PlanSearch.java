package swardcase.plan;

import swardcase.farm.Farm;

/**
 * Finds the plan of highest net present value at likely values, within the money per year and the
 * share of the farm that may be out of grazing at once.
 *
 * <p>Starting from keeping everything, the one change of one paddock that gains most is made, and
 * this is repeated until no change gains. The whole farm is evaluated each time, so that a tonne of
 * supplement is saved once.
 */
public final class PlanSearch {

  private final FarmModel model;
  private final Run run;
  private final Outcome outcome;

  /** A search with its own workspace. */
  public PlanSearch(FarmModel model) {
    this.model = model;
    run = model.newRun();
    outcome = new Outcome(model.years());
  }

  /** The best plan found. */
  public Plan best() {
    Plan plan = model.keepAll();
    double value = 0;
    for (int round = 0; round < 4 * plan.paddocks(); round++) {
      Plan better = null;
      double most = value + 0.5;
      for (int i = 0; i < plan.paddocks(); i++) {
        for (int a = 0; a < model.actions().size(); a++) {
          int starts = a == model.keep() ? 1 : model.startYears();
          for (int s = 0; s < starts && run.allowed(i, a); s++) {
            Plan changed = plan.with(i, a, s);
            double npv = changed.equals(plan) ? value : npv(changed);
            if (npv > most && isWithinLimits(changed)) {
              most = npv;
              better = changed;
            }
          }
        }
      }
      if (better == null) {
        break;
      }
      plan = better;
      value = most;
    }
    return plan;
  }

  /**
   * The start year at which an action pays best on one paddock alone, everything else kept; the
   * limits of the farm do not count here.
   */
  public int bestStart(int paddock, int action) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int s = 0; s < model.startYears(); s++) {
      double npv = npv(model.keepAll().with(paddock, action, s));
      if (npv > most) {
        most = npv;
        best = s;
      }
    }
    return best;
  }

  private double npv(Plan plan) {
    run.evaluate(plan, outcome);
    return outcome.npv();
  }

  /** Whether a plan keeps within the money of each year and the share out of grazing at once. */
  public boolean feasible(Plan plan) {
    run.evaluate(plan, outcome);
    return isWithinLimits(plan);
  }

  /** The same for the plan that was evaluated last. */
  private boolean isWithinLimits(Plan plan) {
    Farm farm = model.farm();
    for (int t = 0; t < model.years(); t++) {
      if (farm.finance().budgetPerYear().isPresent()
          && outcome.actionCost(t) > farm.finance().budgetPerYear().getAsDouble() + 1e-6) {
        return false;
      }
      if (outOfGrazingHa(plan, t)
          > farm.finance().mostOutOfGrazing().likely() * farm.areaHa() + 1e-9) {
        return false;
      }
    }
    return true;
  }

  private double outOfGrazingHa(Plan plan, int t) {
    double sum = 0;
    for (int i = 0; i < plan.paddocks(); i++) {
      int k = t - plan.start(i);
      sum += k >= 0 && run.isShut(plan.action(i), k) ? model.farm().paddocks().get(i).areaHa() : 0;
    }
    return sum;
  }
}
