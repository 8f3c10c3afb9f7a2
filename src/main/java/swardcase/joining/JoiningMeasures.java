package swardcase.joining;

import java.util.List;
import swardcase.draws.Measures;
import swardcase.farm.Mob;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/** Every number of the joining plan that is read in each draw, in one flat order. */
final class JoiningMeasures implements Measures {

  /** A mob and a paddock that it is kept off. */
  record Pair(int mob, int paddock) {}

  private final List<Mob> mobs;
  private final List<Pair> pairs;
  private final int paddocks;
  private final Plan plan;
  private final Outcome outcome;

  JoiningMeasures(List<Mob> mobs, List<Pair> pairs, Plan plan, Outcome outcome) {
    this.mobs = mobs;
    this.pairs = pairs;
    this.plan = plan;
    this.outcome = outcome;
    paddocks = plan.paddocks();
  }

  /** Ewes in lamb lost per 100 joined if the mob spends its weeks of the coming year there. */
  int lost(Pair pair) {
    return pairs.indexOf(pair);
  }

  /** Young ewes barren for good per 100 after a green season in a paddock alone. */
  int barren(int paddock) {
    return pairs.size() + paddock;
  }

  /** Lambs that the plan saves in the coming year. */
  int lambs() {
    return barren(paddocks);
  }

  /** Their worth. */
  int money() {
    return lambs() + 1;
  }

  @Override
  public int size() {
    return money() + 1;
  }

  @Override
  public void read(OutcomeFunction run, double[] numbers, double[] into) {
    for (Pair pair : pairs) {
      double strength = run.greenDose(pair.paddock());
      into[lost(pair)] =
          JoiningPlan.lostPer100(
              run, pair.mob(), p -> strength, run::greenShareOfComingYear, mobs.get(pair.mob()));
    }
    for (int i = 0; i < paddocks; i++) {
      into[barren(i)] = 100 * run.flock(0).barrenAfterYearOn(run.flock(0).power(run.greenDose(i)));
    }
    run.evaluate(plan, outcome);
    into[lambs()] = outcome.lambs(0);
    into[money()] = outcome.lambsSaved(0);
  }
}
