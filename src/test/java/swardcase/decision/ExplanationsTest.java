package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class ExplanationsTest {

  private static final Tables TABLES = TablesLoader.standard().load();

  private static Decision decide(String folder) {
    return Decision.of(new FarmModel(FarmFolder.read(Path.of(folder), TABLES).farm(), TABLES));
  }

  private static List<Explanation> all(Decision decision) {
    Explanations farm = Explanations.of(decision);
    List<Explanation> all =
        new ArrayList<>(
            List.of(
                farm.winterFeed(),
                farm.winterFeedCost(),
                farm.winterGrowthLost(),
                farm.lambs(),
                farm.lambCost(),
                farm.planCost(),
                farm.planGain()));
    for (int i = 0; i < decision.plan().paddocks(); i++) {
      PaddockExplanations of = farm.paddocks();
      all.addAll(
          List.of(
              of.cost(i),
              of.gain(i),
              of.growthLost(i),
              of.supplement(i),
              of.supplementCost(i),
              of.formononetin(i),
              of.dose(i),
              of.oldShare(i)));
    }
    return all;
  }

  /** Every part stands for what it says: its arithmetic gives the number the decision printed. */
  private static int check(Explanation of) {
    double value = of.value().likely();
    assertThat(of.joinedValue())
        .as(of.what() + " of " + of.names())
        .isCloseTo(value, offset(1e-9 * Math.max(1, Math.abs(value))));
    return 1 + of.parts().stream().mapToInt(ExplanationsTest::check).sum();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "demo-data/mixed-farm",
        "demo-data/northern-farm",
        "src/test/resources/farms/sowing"
      })
  void parts_ofEveryExplanation_makeTheirNumber(String folder) {
    Decision decision = decide(folder);
    List<Explanation> all = all(decision);

    assertThat(all.stream().mapToInt(ExplanationsTest::check).sum()).isGreaterThan(200);
    assertThat(all.get(0).value()).isEqualTo(decision.winterSupplementTonnes());
    assertThat(all.get(6).value()).isEqualTo(decision.planNpv());
    assertThat(all.get(7).value()).isEqualTo(decision.planCost(0));
  }

  @ParameterizedTest
  @ValueSource(strings = "src/test/resources/farms/sowing")
  void movers_ofEveryExplanation_areInputsOfTheFarmThatReachIntoItsRange(String folder) {
    Decision decision = decide(folder);

    for (Explanation of : all(decision)) {
      for (Explanation.Mover mover : of.movers()) {
        assertThat(decision.model().inputs().all()).contains(mover.input());
        assertThat(mover.atLow()).as(of.what() + " of " + of.names()).isNotEqualTo(mover.atHigh());
      }
    }
    assertThat(Explanations.of(decision).planGain().movers()).hasSizeGreaterThan(10);
  }
}
