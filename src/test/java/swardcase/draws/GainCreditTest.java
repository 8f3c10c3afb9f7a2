package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.Paddock;
import swardcase.outcome.Cause;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.search.PlanFarms;

/** Laws of where a gain comes from. */
class GainCreditTest {

  private static final class Nothing implements Measures {

    @Override
    public int size() {
      return 0;
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {}
  }

  private interface Law {
    void check(FarmModel model, Simulation simulation, int paddock, int choice, ActionKind kind);
  }

  /** Every choice but keeping of every paddock of a farm. */
  private static void forAll(Farm farm, Law law) {
    Farms farms = Farms.of(new FarmModel(farm, RandomFarms.TABLES));
    Simulation simulation =
        Simulation.of(
            new Draws(farms.model(), 3, 20, 2), farms.alternatives(), Nothing::new, share -> {});
    Alternatives alternatives = simulation.alternatives();
    for (int i = 0; i < alternatives.paddocks(); i++) {
      assertThat(simulation.credit(i, 0)).containsOnly(0);
      for (int c = 1; c < alternatives.choices(i).size(); c++) {
        int action = alternatives.choices(i).get(c).action();
        law.check(farms.model(), simulation, i, c, farms.model().actions().get(action).kind());
      }
    }
  }

  private static double of(Simulation simulation, int paddock, int choice, Cause cause) {
    return simulation.credit(paddock, choice)[cause.ordinal()];
  }

  private static double gain(Simulation simulation, int paddock, int choice) {
    Alternatives alternatives = simulation.alternatives();
    double[] with = simulation.npv(alternatives.place(paddock, choice));
    double[] kept = simulation.npv(alternatives.place(paddock, 0));
    double sum = 0;
    for (int d = 0; d < with.length; d++) {
      sum += (with[d] - kept[d]) / with.length;
    }
    return sum;
  }

  private static Farm withPaddocks(Farm farm, UnaryOperator<Paddock> change) {
    return FarmCopy.of(farm).paddocks(farm.paddocks().stream().map(change).toList()).build();
  }

  @Test
  void causes_ofEveryChoiceOfRandomFarms_addUpToItsGain() {
    int[] checked = new int[Cause.values().length];
    for (int k = 0; k < 16; k++) {
      SplittableRandom random = new SplittableRandom(700 + k);
      Farm farm = k % 2 == 0 ? RandomFarms.any(random, 2) : PlanFarms.small(random, 2);
      forAll(
          farm,
          (model, simulation, i, c, kind) -> {
            double[] credit = simulation.credit(i, c);
            double gain = gain(simulation, i, c);
            assertThat(Arrays.stream(credit).sum())
                .isCloseTo(gain, within(1e-9 * (1e4 + Math.abs(gain))));
            for (int cause = 0; cause < credit.length; cause++) {
              checked[cause] += credit[cause] == 0 ? 0 : 1;
            }
          });
    }
    for (int count : checked) {
      assertThat(count).isGreaterThan(2);
    }
  }

  /** All clover is what would be sown: both are one object, to the last bit. */
  @Test
  void otherCultivar_whereAllPlantsAreTheOneThatIsSown_isExactlyNothing() {
    for (String name : List.of("risky-farm", "mixed-farm")) {
      Farm farm =
          withPaddocks(
              FarmCopy.of(PlanFarms.demo(name)).sownCultivar("Yarloop").build(),
              paddock ->
                  FarmCopy.paddock(paddock, List.of(new Identification(List.of("Yarloop"), 60))));
      double[] less = {0};
      forAll(
          farm,
          (model, simulation, i, c, kind) -> {
            assertThat(of(simulation, i, c, Cause.OTHER_CULTIVAR)).isEqualTo(0);
            less[0] += of(simulation, i, c, Cause.LESS_CLOVER);
          });
      assertThat(less[0]).isNotZero();
    }
  }

  @Test
  void otherCultivar_whereAnotherIsSown_isSomething() {
    forAll(
        PlanFarms.demo("risky-farm"),
        (model, simulation, i, c, kind) -> {
          if (kind == ActionKind.RESOW) {
            assertThat(of(simulation, i, c, Cause.OTHER_CULTIVAR)).isNotZero();
          }
        });
  }

  @Test
  void cloverCauses_withoutClover_areNothing() {
    Farm farm =
        withPaddocks(
            PlanFarms.demo("risky-farm"),
            paddock ->
                new Paddock(
                    paddock.name(),
                    paddock.areaHa(),
                    RandomFarms.exactly("clover share", 0),
                    paddock.growthIndex(),
                    paddock.waterlogged(),
                    paddock.arable(),
                    paddock.leafTest(),
                    paddock.use(),
                    paddock.mob(),
                    paddock.seedlingsPerM2(),
                    paddock.signs(),
                    paddock.identifications()));
    forAll(
        farm,
        (model, simulation, i, c, kind) -> {
          assertThat(of(simulation, i, c, Cause.LESS_CLOVER)).isEqualTo(0);
          assertThat(of(simulation, i, c, Cause.OTHER_CULTIVAR)).isEqualTo(0);
          assertThat(of(simulation, i, c, Cause.DENSER_STAND)).isEqualTo(0);
        });
  }

  /** Keeping ewes off changes no clover and no growth: only who grazes it, and its costs. */
  @Test
  void holdingOff_isWhoGrazesItAndCosts() {
    double[] most = {0};
    for (String name : List.of("risky-farm", "mixed-farm")) {
      forAll(
          PlanFarms.demo(name),
          (model, simulation, i, c, kind) -> {
            if (kind == ActionKind.KEEP_OFF) {
              double[] credit = simulation.credit(i, c);
              double grazing = credit[Cause.WHO_GRAZES_IT.ordinal()];
              double costs = credit[Cause.COSTS.ordinal()];
              assertThat(costs).isLessThanOrEqualTo(0);
              assertThat(Arrays.stream(credit).filter(each -> each != 0).count())
                  .isLessThanOrEqualTo(2);
              assertThat(grazing + costs).isCloseTo(gain(simulation, i, c), within(1e-6));
              most[0] = Math.max(most[0], grazing);
            }
          });
    }
    assertThat(most[0]).isPositive();
  }

  /** A stand thin by the count of its seedlings is made denser by sowing another cultivar. */
  @Test
  void denserStand_whereFewSeedlingsWereCounted_isAGain() {
    int[] sown = {0};
    Farm farm =
        withPaddocks(
            PlanFarms.demo("risky-farm"),
            paddock ->
                new Paddock(
                    paddock.name(),
                    paddock.areaHa(),
                    paddock.cloverShare(),
                    paddock.growthIndex(),
                    paddock.waterlogged(),
                    paddock.arable(),
                    paddock.leafTest(),
                    paddock.use(),
                    paddock.mob(),
                    OptionalDouble.of(80),
                    paddock.signs(),
                    paddock.identifications()));
    double[] gained = {0};
    forAll(
        farm,
        (model, simulation, i, c, kind) -> {
          if (kind == ActionKind.RESOW) {
            gained[0] += of(simulation, i, c, Cause.DENSER_STAND);
            sown[0]++;
          }
        });
    assertThat(sown[0]).isGreaterThan(5);
    assertThat(gained[0]).isPositive();
  }
}
