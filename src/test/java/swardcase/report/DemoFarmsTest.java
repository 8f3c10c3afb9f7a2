package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.cli.DemoSheets;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.UseRule;
import swardcase.outcome.Cause;
import swardcase.outcome.FarmModel;

/**
 * Each demo farm shows another answer: moving, culling and thinning, cropping and sowing, resowing,
 * nothing. Read from its result document.
 */
class DemoFarmsTest {

  /** A farm's answer, with what its actions are. */
  private record Decided(JsonNode result, FarmModel model) {

    static Decided of(String name) throws IOException {
      Farm farm = RandomFarms.demo(name);
      return new Decided(
          new ObjectMapper().readTree(DemoSheets.decided(name).resolve("result.json").toFile()),
          new FarmModel(farm, RandomFarms.TABLES));
    }

    /** Paddocks with which the plan does something. */
    List<JsonNode> acted() {
      return StreamSupport.stream(result.get("paddocks").spliterator(), false)
          .filter(paddock -> !paddock.get("action").asText().equals("keep"))
          .toList();
    }

    Action action(JsonNode paddock) {
      return model.actions().stream()
          .filter(action -> action.key().equals(paddock.get("action").asText()))
          .findFirst()
          .orElseThrow();
    }

    List<Action> actions() {
      return acted().stream().map(this::action).toList();
    }

    List<String> rules() {
      return result.at("/plan/farmWide").findValuesAsText("what");
    }

    double gain() {
      return result.at("/plan/gain/mean").asDouble();
    }

    double credit(Cause cause) {
      return acted().stream().mapToDouble(paddock -> credit(paddock, cause)).sum();
    }

    static double credit(JsonNode paddock, Cause cause) {
      return paddock.get("credit").get(cause.ordinal()).get("mean").asDouble();
    }

    static double credit(JsonNode paddock) {
      return IntStream.range(0, Cause.values().length)
          .mapToDouble(cause -> credit(paddock, Cause.values()[cause]))
          .sum();
    }
  }

  @Test
  void riskyFarm_isWonByMoving() throws IOException {
    Decided risky = Decided.of("risky-farm");
    assertThat(risky.gain()).isGreaterThan(100_000);
    assertThat(risky.rules()).contains("in order");
    assertThat(risky.actions()).isNotEmpty().noneMatch(Action::sows);
    assertThat(risky.credit(Cause.WHO_GRAZES_IT))
        .isGreaterThan(10 * Math.abs(risky.credit(Cause.LESS_CLOVER)));
  }

  @Test
  void mixedFarm_isWonByKeepingMaidensOff() throws IOException {
    Decided mixed = Decided.of("mixed-farm");
    assertThat(mixed.gain()).isPositive();
    assertThat(mixed.acted()).isNotEmpty();
    double all = 0;
    double maidens = 0;
    for (JsonNode paddock : mixed.acted()) {
      UseRule rule = mixed.action(paddock).use().orElseThrow();
      double gain = Decided.credit(paddock);
      all += gain;
      maidens += rule.who().equals("maidens") ? gain : 0;
    }
    assertThat(maidens).isGreaterThan(0.9 * all);
  }

  @Test
  void oneMobFarm_isWonByCullingAndThinning() throws IOException {
    Decided oneMob = Decided.of("one-mob-farm");
    assertThat(oneMob.rules()).anyMatch(rule -> rule.startsWith("sell dry"));
    assertThat(oneMob.actions()).isNotEmpty().allMatch(action -> action.key().equals("thin"));
    double thinning = oneMob.acted().stream().mapToDouble(Decided::credit).sum();
    assertThat(thinning).isPositive();
    assertThat(oneMob.gain()).isGreaterThan(2 * thinning);
    assertThat(oneMob.credit(Cause.LESS_CLOVER))
        .isGreaterThan(10 * Math.abs(oneMob.credit(Cause.OTHER_CULTIVAR)));
  }

  @Test
  void largeFarm_isWonByCroppingAndSowing() throws IOException {
    Decided large = Decided.of("large-farm");
    assertThat(large.actions())
        .filteredOn(action -> action.cropped() && action.sows())
        .hasSizeGreaterThan(4);
    assertThat(large.credit(Cause.CROPS))
        .isGreaterThan(large.credit(Cause.WHO_GRAZES_IT))
        .isGreaterThan(large.credit(Cause.OTHER_CULTIVAR));
    assertThat(large.credit(Cause.OTHER_CULTIVAR)).isPositive();
  }

  @Test
  void northernFarm_isWonByResowing() throws IOException {
    Decided northern = Decided.of("northern-farm");
    assertThat(northern.actions())
        .isNotEmpty()
        .allMatch(action -> action.sows() && !action.cropped());
    assertThat(northern.gain()).isPositive();
    for (Cause cause : Cause.values()) {
      assertThat(northern.credit(cause)).isLessThanOrEqualTo(northern.credit(Cause.OTHER_CULTIVAR));
    }
  }

  @Test
  void currentFarm_isBestLeftAsItIs() throws IOException {
    Decided current = Decided.of("current-farm");
    assertThat(current.acted()).isEmpty();
    assertThat(current.rules()).isEmpty();
  }
}
