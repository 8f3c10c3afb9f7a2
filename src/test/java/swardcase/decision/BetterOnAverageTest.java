package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.chance.Sample;
import swardcase.draws.Alternatives;
import swardcase.draws.Draws;
import swardcase.draws.Farms;
import swardcase.draws.Simulation;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;

/** A plan that loses is bettered by keeping; one that cannot be bettered says nothing. */
class BetterOnAverageTest {

  private static final Farms FARM = Farms.of("current-farm");

  @Test
  void of_planThatLoses_isToKeepAfterAll_withItsEffortSaved() {
    FarmModel model = FARM.model();
    int oversow = model.actions().stream().map(a -> a.key()).toList().indexOf("oversow");
    Plan plan = model.keepAll().with(0, oversow, 0);
    List<List<Course>> none = Collections.nCopies(plan.paddocks(), List.of());
    Alternatives alternatives = new Alternatives(model, plan, none, any -> true);
    Simulation simulation = Simulation.of(new Draws(model, 5, 20, 10), alternatives, share -> {});
    BetterOnAverage better = BetterOnAverage.of(simulation, alternatives).orElseThrow();
    double loses = -Sample.mean(simulation.npv(Alternatives.PLAN));
    double effort = model.farm().paddocks().get(0).areaHa() * model.effortPerHa();
    assertThat(better.paddock()).isZero();
    assertThat(better.course().action()).isEqualTo(model.keep());
    assertThat(better.gain()).isCloseTo(loses + effort, within(1e-6 * loses));
  }

  @Test
  void of_nothingElseToDo_isEmpty() {
    FarmModel model = FARM.model();
    List<List<Course>> none = Collections.nCopies(model.keepAll().paddocks(), List.of());
    Alternatives alternatives = new Alternatives(model, model.keepAll(), none, any -> true);
    Simulation simulation = Simulation.of(new Draws(model, 5, 20, 5), alternatives, share -> {});
    assertThat(BetterOnAverage.of(simulation, alternatives)).isEmpty();
  }
}
