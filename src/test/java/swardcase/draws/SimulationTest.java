package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;

class SimulationTest {

  private static final Farms FARM = Farms.of("current-farm");
  private final Alternatives alternatives = FARM.alternatives();

  private Simulation simulate(long seed) {
    return Simulation.of(new Draws(FARM.model(), seed, 20, 5), alternatives, share -> {});
  }

  @Test
  void of_oneThreadOrMany_givesTheSameBits() {
    Simulation many = simulate(3);
    Simulation one = new ForkJoinPool(1).submit(() -> simulate(3)).join();
    assertThat(one.npv()).isDeepEqualTo(many.npv());
    assertThat(simulate(4).npv()).isNotEqualTo(many.npv());
  }

  @Test
  void of_keepingEverything_bringsNothingInAnyDraw() {
    assertThat(simulate(3).npv(Alternatives.KEEP_ALL)).containsOnly(0);
  }

  @Test
  void alone_planOfOnePaddock_isThePlanItself() {
    FarmModel model = FARM.model();
    int sows = 0;
    while (!model.actions().get(sows).sows()) {
      sows++;
    }
    Plan plan = model.keepAll().with(0, sows, 1);
    List<List<Course>> none = Collections.nCopies(plan.paddocks(), List.of());
    Simulation simulation =
        Simulation.of(
            new Draws(model, 3, 20, 5),
            new Alternatives(model, plan, none, any -> true),
            share -> {});
    double[] whole = simulation.npv(Alternatives.PLAN);
    for (int d = 0; d < whole.length; d++) {
      assertThat(simulation.alone(0)[d])
          .isCloseTo(whole[d], within(1e-9 * Math.max(1, Math.abs(whole[d]))));
    }
    assertThat(whole).isNotEqualTo(simulation.npv(Alternatives.KEEP_ALL));
    assertThat(simulation.alone(1)).containsOnly(0);
  }

  @Test
  void run_afterWarmingUp_allocatesNothing() {
    Draws draws = new Draws(FARM.model(), 1, 20, 20);
    Simulation.Workspace workspace = Simulation.workspace(draws, alternatives);
    for (int d = 0; d < draws.count(); d++) {
      workspace.run(d);
    }
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int d = 0; d < draws.count(); d++) {
      workspace.run(d);
    }
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    // The reading itself allocates a little once.
    assertThat(bytes).isLessThan(1000);
  }
}
