package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.decision.Decision;
import swardcase.draws.Simulation;
import swardcase.farm.Action;
import swardcase.farm.UseRule;
import swardcase.outcome.Cause;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;

/**
 * Each demo farm shows another answer: moving, culling and thinning, cropping and sowing, resowing,
 * nothing.
 */
class DemoFarmsTest {

  private static final int CHOSEN = 1;

  private static Decision decide(String name) {
    FarmModel model = new FarmModel(RandomFarms.demo(name), RandomFarms.TABLES);
    return Decision.of(Decision.draws(model, Decision.USUAL_SEED, 400), List.of(), done -> {});
  }

  private static List<Integer> acted(Decision decision) {
    return IntStream.range(0, decision.plan().paddocks())
        .filter(decision::isActedOn)
        .boxed()
        .toList();
  }

  private static Action action(Decision decision, int paddock) {
    return decision.model().actions().get(decision.plan().action(paddock));
  }

  private static double credit(Decision decision, Cause cause) {
    Simulation simulation = decision.simulation();
    return acted(decision).stream()
        .mapToDouble(i -> simulation.credit(i, CHOSEN)[cause.ordinal()])
        .sum();
  }

  @Test
  void riskyFarm_isWonByMoving() {
    Decision decision = decide("risky-farm");
    assertThat(decision.gain().mean()).isGreaterThan(100_000);
    assertThat(decision.plan().choice(FarmRule.IN_ORDER)).isEqualTo(1);
    assertThat(acted(decision)).isNotEmpty();
    assertThat(acted(decision)).noneMatch(i -> action(decision, i).sows());
    assertThat(credit(decision, Cause.WHO_GRAZES_IT))
        .isGreaterThan(10 * Math.abs(credit(decision, Cause.LESS_CLOVER)));
  }

  @Test
  void mixedFarm_isWonByKeepingMaidensOff() {
    Decision decision = decide("mixed-farm");
    assertThat(decision.gain().mean()).isPositive();
    assertThat(acted(decision)).isNotEmpty();
    Simulation simulation = decision.simulation();
    double all = 0;
    double maidens = 0;
    for (int i : acted(decision)) {
      UseRule rule = action(decision, i).use().orElseThrow();
      double gain = Arrays.stream(simulation.credit(i, CHOSEN)).sum();
      all += gain;
      maidens += rule.who().equals("maidens") ? gain : 0;
    }
    assertThat(maidens).isGreaterThan(0.9 * all);
  }

  @Test
  void oneMobFarm_isWonByCullingAndThinning() {
    Decision decision = decide("one-mob-farm");
    assertThat(decision.plan().choice(FarmRule.SELL_DRY)).isPositive();
    assertThat(acted(decision)).isNotEmpty();
    assertThat(acted(decision)).allMatch(i -> action(decision, i).key().equals("thin"));
    double thinning =
        Arrays.stream(Cause.values()).mapToDouble(cause -> credit(decision, cause)).sum();
    assertThat(thinning).isPositive();
    assertThat(decision.gain().mean()).isGreaterThan(2 * thinning);
    assertThat(credit(decision, Cause.LESS_CLOVER))
        .isGreaterThan(10 * Math.abs(credit(decision, Cause.OTHER_CULTIVAR)));
  }

  @Test
  void largeFarm_isWonByCroppingAndSowing() {
    Decision decision = decide("large-farm");
    assertThat(acted(decision).stream().map(i -> action(decision, i)))
        .filteredOn(action -> action.cropped() && action.sows())
        .hasSizeGreaterThan(4);
    assertThat(credit(decision, Cause.CROPS))
        .isGreaterThan(credit(decision, Cause.WHO_GRAZES_IT))
        .isGreaterThan(credit(decision, Cause.OTHER_CULTIVAR));
    assertThat(credit(decision, Cause.OTHER_CULTIVAR)).isPositive();
  }

  @Test
  void northernFarm_isWonByResowing() {
    Decision decision = decide("northern-farm");
    assertThat(acted(decision)).isNotEmpty();
    assertThat(acted(decision))
        .allMatch(i -> action(decision, i).sows() && !action(decision, i).cropped());
    assertThat(decision.gain().mean()).isPositive();
    for (Cause cause : Cause.values()) {
      assertThat(credit(decision, cause))
          .isLessThanOrEqualTo(credit(decision, Cause.OTHER_CULTIVAR));
    }
  }

  @Test
  void currentFarm_isBestLeftAsItIs() {
    Decision decision = decide("current-farm");
    assertThat(decision.plan()).isEqualTo(decision.model().keepAll());
  }
}
