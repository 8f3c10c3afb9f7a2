package swardcase.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class BestSoFarTest {

  private final FarmModel model = PlanFarms.model(PlanFarms.demo("mixed-farm"));
  private final PlanTable table = new PlanTable(model, model.newRun(), List.of());
  private final BestSoFar best = new BestSoFar(new LocalSearch(table));

  private int[] keepAll() {
    return table.pick(model.keepAll());
  }

  @Test
  void close_isHalfAUnitOfMoneyOrATenThousandth() {
    assertThat(BestSoFar.close(-20_000)).isEqualTo(0.5);
    assertThat(BestSoFar.close(4_000)).isEqualTo(0.5);
    assertThat(BestSoFar.close(20_000)).isEqualTo(2);
  }

  @Test
  void best_ofNothing_isEmpty() {
    assertThat(best.isEmpty()).isTrue();
    assertThat(best.value()).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void improveFrom_keepingEverything_keepsThePlanThatIsWorthMost() {
    best.improveFrom(keepAll());
    double[] sums = new double[table.years() * table.sums()];
    assertThat(best.value()).isPositive().isEqualTo(table.value(best.pick(), sums));
    assertThat(best.toPass()).isEqualTo(best.value() + BestSoFar.close(best.value()));
    int[] found = best.pick();
    best.improveFrom(keepAll());
    best.repairFrom(keepAll());
    assertThat(best.pick()).isEqualTo(found);
  }

  /** The first pick that is repaired comes near the best, because there is none. */
  @Test
  void repairFrom_whereNothingWasFound_improvesToo() {
    best.repairFrom(keepAll());
    BestSoFar improved = new BestSoFar(new LocalSearch(table));
    improved.improveFrom(best.pick());
    assertThat(best.isEmpty()).isFalse();
    assertThat(best.value()).isEqualTo(improved.value());
  }
}
