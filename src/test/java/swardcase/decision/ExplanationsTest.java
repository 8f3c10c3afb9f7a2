package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.chance.StraightLine;
import swardcase.decision.Explanation.Joined;
import swardcase.decision.Explanation.Mover;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.draws.Alternatives;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class ExplanationsTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final String SOWING = "src/test/resources/farms/sowing";

  /** Quantities whose parts must be added up over the draws, whatever the farm. */
  private static final Set<Quantity> OVER_DRAWS =
      EnumSet.of(
          Quantity.PLAN_GAIN,
          Quantity.YEAR,
          Quantity.NET_OF_YEAR,
          Quantity.GAIN,
          Quantity.GAIN_OF_KEEPING,
          Quantity.PLAN_COST,
          Quantity.COST,
          Quantity.LAMBS_LOST,
          Quantity.LAMBS_LOST_OF_MOB,
          Quantity.EWES_FEWER_IN_LAMB,
          Quantity.SHARE_LOST,
          Quantity.LAMB_COST,
          Quantity.LAMB_COST_OF_MOB,
          Quantity.WINTER_GROWTH_LOST,
          Quantity.GROWTH_LOST_OF_PADDOCK);

  private static final Map<String, Decision> DECIDED = new HashMap<>();

  private static Decision decide(String folder) {
    return DECIDED.computeIfAbsent(
        folder, of -> decide(new FarmModel(FarmFolder.read(Path.of(of), TABLES).farm(), TABLES)));
  }

  private static Decision decide(FarmModel model) {
    return Decision.rough(Decision.draws(model, 1, 200), List.of(), done -> {});
  }

  private static List<Explanation> all(Decision decision) {
    Explanations farm = Explanations.of(decision);
    List<Explanation> all = new ArrayList<>();
    for (ExplainTopic topic : ExplainTopic.values()) {
      int each = topic.isOfPaddock() ? decision.plan().paddocks() : 1;
      for (int i = 0; i < each; i++) {
        all.add(topic.explain(farm, i));
      }
    }
    return all;
  }

  private static Stream<Explanation> withParts(Explanation of) {
    return Stream.concat(Stream.of(of), of.parts().stream().flatMap(ExplanationsTest::withParts));
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-data/mixed-farm", "demo-data/northern-farm", SOWING})
  void parts_ofEveryExplanation_makeItsMeanOrItsValueAtLikelyInputs(String folder) {
    List<Explanation> nodes =
        all(decide(folder)).stream().flatMap(ExplanationsTest::withParts).toList();

    Map<Boolean, Integer> checked = new HashMap<>();
    for (Explanation of : nodes) {
      boolean arithmetic = of.joined() != Joined.MODEL && of.joined() != Joined.INPUT;
      if (arithmetic) {
        double value = of.isOfMeans() ? mean(of) : of.amount().likely().orElseThrow();
        assertThat(joined(of)).as(of.what() + " of " + of.names()).isCloseTo(value, offset(1e-6));
        checked.merge(of.isOfMeans(), 1, Integer::sum);
      }
    }
    assertThat(checked.get(true)).isGreaterThan(40);
    assertThat(checked.get(false)).isGreaterThan(40);
  }

  /** What the parts make: of their means, or of what they are at the likely inputs. */
  private static double joined(Explanation of) {
    double[] parts =
        of.parts().stream()
            .map(part -> of.isOfMeans() ? part.amount().mean() : part.amount().likely())
            .mapToDouble(OptionalDouble::orElseThrow)
            .toArray();
    return switch (of.joined()) {
      case SUM -> Arrays.stream(parts).sum();
      case DIFFERENCE -> parts[0] - parts[1];
      case EXCESS -> Math.max(0, parts[0] - parts[1]);
      case PRODUCT -> Arrays.stream(parts).reduce(1, (a, b) -> a * b);
      case QUOTIENT -> parts[0] / parts[1];
      case MODEL, INPUT -> throw new AssertionError("not arithmetic");
    };
  }

  private static double mean(Explanation of) {
    return of.amount().mean().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-data/mixed-farm", SOWING})
  void sums_areOfTheDraws_andProductsOfUncertainNumbersCarryTheMeanBeside(String folder) {
    List<Explanation> all = all(decide(folder));

    all.stream()
        .flatMap(ExplanationsTest::withParts)
        .filter(of -> OVER_DRAWS.contains(of.what()))
        .forEach(of -> assertThat(of.isOfMeans()).as(of.what() + " " + of.names()).isTrue());
    Set<Quantity> once =
        all.stream()
            .filter(of -> !of.isOfMeans())
            .peek(
                of ->
                    assertThat(of.amount().given().isPresent() || of.amount().drawn().isPresent())
                        .as("drawn %s", of.what())
                        .isTrue())
            .map(Explanation::what)
            .collect(Collectors.toSet());
    assertThat(once).contains(Quantity.WINTER_FEED, Quantity.DOSE, Quantity.SUPPLEMENT);
  }

  @Test
  void movers_areInputsWhoseLineOverTheDrawsDiffersFromNothing_mostFirst() {
    Decision decision = decide(SOWING);
    Explanation cost = ExplainTopic.PLAN_COST.explain(Explanations.of(decision), 0);
    double[] drawn = decision.drawn(OfFarm.PLAN_COST);

    assertThat(cost.movers()).isNotEmpty();
    double before = 1;
    for (Mover mover : cost.movers()) {
      int place = decision.model().inputs().all().indexOf(mover.input());
      StraightLine line = StraightLine.of(decision.simulation().drawn(place), drawn);
      assertThat(mover.name()).isEqualTo(decision.model().inputs().doubt(place));
      assertThat(mover.atLow()).isEqualTo(line.at(mover.input().range().low()), offset(1e-9));
      assertThat(mover.atHigh()).isEqualTo(line.at(mover.input().range().high()), offset(1e-9));
      assertThat(line.differsFromNothing(1)).isTrue();
      assertThat(line.varianceShare()).isLessThanOrEqualTo(before);
      before = line.varianceShare();
    }
    assertThat(cost.movers().stream().map(Mover::name)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @ValueSource(strings = {"demo-data/mixed-farm", SOWING})
  void movers_ofWhatIsNeverBelowNothing_stayWithinTheDraws(String folder) {
    for (Explanation of : all(decide(folder))) {
      if (of.amount().drawn().filter(drawn -> drawn.low() >= 0).isPresent()
          && of.what() != Quantity.PLAN_GAIN
          && of.what() != Quantity.GAIN) {
        for (Mover mover : of.movers()) {
          assertThat(mover.atLow()).as(of.what() + " by " + mover.name()).isNotNegative();
          assertThat(mover.atHigh()).as(of.what() + " by " + mover.name()).isNotNegative();
        }
      }
    }
  }

  @Test
  void gains_areThoseOfTheSimulation() {
    Decision decision = decide("demo-data/mixed-farm");
    Explanations farm = Explanations.of(decision);
    int keptEverything = Alternatives.KEEP_ALL;

    assertThat(decision.simulation().npv(keptEverything)).containsOnly(0);
    assertThat(farm.planGain().amount().drawn()).contains(decision.gain().drawn());
    assertThat(mean(farm.planGain())).isCloseTo(decision.outcome().npv(), offset(1e-6));
  }
}
