package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.Paddock;
import swardcase.search.PlanFarms;

class StandingCloverTest {

  private static UncertainNumbers numbers(Farm farm) {
    UncertainNumbers.Builder numbers = new UncertainNumbers.Builder();
    StandingClover.enter(
        numbers, farm, RandomFarms.TABLES, StandingClover.compositions(farm, RandomFarms.TABLES));
    return numbers.build();
  }

  private static StandingClover stands(Farm farm, UncertainNumbers inputs) {
    return new StandingClover(
        farm, RandomFarms.TABLES, inputs, StandingClover.compositions(farm, RandomFarms.TABLES));
  }

  @Test
  void set_likelyInputs_givesTheLikelyComposition() {
    SplittableRandom random = new SplittableRandom(31);
    for (int round = 0; round < 50; round++) {
      Farm farm = RandomFarms.any(random);
      UncertainNumbers inputs = numbers(farm);
      StandingClover stands = stands(farm, inputs);
      stands.set(inputs.likely());
      for (int i = 0; i < stands.size(); i++) {
        Composition composition = stands.composition(i);
        double[] shares = stands.shares(i);
        assertThat(stands.species(i)).isEqualTo(composition.size() + 1);
        for (int c = 0; c < composition.size(); c++) {
          assertThat(stands.cultivar(i, c)).isEqualTo(composition.cultivar(c));
          assertThat(shares[c]).isCloseTo(composition.likelyShare(c), within(1e-9));
        }
        assertThat(shares[composition.size()]).as("sown").isZero();
        assertThat(stands.cultivar(i, composition.size()).name()).isEqualTo(farm.sownCultivar());
      }
    }
  }

  /** Old cultivars move as a group to the share drawn; each group keeps its own proportions. */
  @Test
  void set_anotherOldShare_movesBothGroupsAsTheyStand() {
    SplittableRandom random = new SplittableRandom(32);
    int moved = 0;
    for (int round = 0; round < 50; round++) {
      Farm farm = RandomFarms.any(random);
      UncertainNumbers inputs = numbers(farm);
      StandingClover stands = stands(farm, inputs);
      double[] x = inputs.likely();
      stands.set(x);
      double[][] before = new double[stands.size()][];
      for (int i = 0; i < before.length; i++) {
        before[i] = stands.shares(i).clone();
        Assumption old = inputs.get(stands.oldShareInput(i));
        x[stands.oldShareInput(i)] =
            random.nextDouble(old.range().low(), old.range().high() + 1e-9);
      }
      stands.set(x);
      for (int i = 0; i < before.length; i++) {
        double old = oldShare(stands, i, stands.shares(i));
        double was = oldShare(stands, i, before[i]);
        double likely = inputs.get(stands.oldShareInput(i)).likely();
        assertThat(was).isCloseTo(likely, within(1e-9));
        if (likely > 0 && likely < 1) {
          double wanted = x[stands.oldShareInput(i)];
          assertThat(old).isCloseTo(wanted, within(1e-9));
          for (int c = 0; c < before[i].length; c++) {
            boolean isOld = stands.cultivar(i, c).isOld();
            double factor = isOld ? wanted / was : (1 - wanted) / (1 - was);
            assertThat(stands.shares(i)[c]).isCloseTo(before[i][c] * factor, within(1e-9));
          }
          moved++;
        }
      }
    }
    assertThat(moved).isGreaterThan(30);
  }

  private static double oldShare(StandingClover stands, int i, double[] shares) {
    double sum = 0;
    for (int c = 0; c < shares.length; c++) {
      sum += stands.cultivar(i, c).isOld() ? shares[c] : 0;
    }
    return sum;
  }

  @Test
  void set_aStandOfOldCultivarsOnly_leavesRoomForWhatWasMissed() {
    Farm base = PlanFarms.demo("mixed-farm");
    List<Identification> plants = List.of(new Identification(List.of("Dwalganup"), 400));
    Paddock paddock = FarmCopy.paddock(base.paddocks().get(0), plants);
    Farm farm = FarmCopy.of(base).paddocks(List.of(paddock)).build();
    UncertainNumbers inputs = numbers(farm);
    StandingClover stands = stands(farm, inputs);
    double[] x = inputs.likely();
    x[stands.oldShareInput(0)] = 0.9;
    stands.set(x);
    double sum = 0;
    for (double share : stands.shares(0)) {
      sum += share;
    }
    assertThat(oldShare(stands, 0, stands.shares(0))).isCloseTo(0.9, within(1e-9));
    assertThat(sum).isCloseTo(1, within(1e-9));
  }

  /** What was looked for and not found has its small share wherever the old share ends up. */
  @Test
  void set_namesCountedAsNone_addUpToOneAtEveryOldShare() {
    Farm base = PlanFarms.demo("mixed-farm");
    List<List<Identification>> walks =
        List.of(
            List.of(found(0, "Dinninup"), found(40, "unidentified")),
            List.of(found(0, "Dinninup"), found(0, "Yarloop"), found(40, "Riverina")),
            List.of(found(40, "Dinninup"), found(0, "Riverina"), found(0, "unidentified")),
            List.of(found(0, "Dinninup", "Riverina"), found(9, "unidentified old")),
            List.of(found(0, "unidentified old"), found(0, "Riverina"), found(9, "Trikkala")));
    for (List<Identification> walk : walks) {
      Paddock paddock = FarmCopy.paddock(base.paddocks().get(0), walk);
      Farm farm = FarmCopy.of(base).paddocks(List.of(paddock)).build();
      UncertainNumbers inputs = numbers(farm);
      StandingClover stands = stands(farm, inputs);
      Assumption old = inputs.get(stands.oldShareInput(0));
      for (double share :
          new double[] {old.range().low(), old.range().likely(), old.range().high()}) {
        double[] x = inputs.likely();
        x[stands.oldShareInput(0)] = share;
        stands.set(x);
        assertThat(Arrays.stream(stands.shares(0)).sum()).as("%s", walk).isCloseTo(1, within(1e-9));
        assertThat(oldShare(stands, 0, stands.shares(0))).isCloseTo(share, within(1e-9));
      }
    }
  }

  private static Identification found(int plants, String... names) {
    return new Identification(List.of(names), plants);
  }

  @Test
  void set_drawnShares_takesThemAsTheyAre() {
    Farm farm = PlanFarms.demo("mixed-farm");
    UncertainNumbers inputs = numbers(farm);
    StandingClover stands = stands(farm, inputs);
    double[][] drawn = new double[stands.size()][];
    for (int i = 0; i < drawn.length; i++) {
      drawn[i] = new double[stands.composition(i).size()];
      drawn[i][0] = 0.25;
      drawn[i][drawn[i].length - 1] += 0.75;
    }
    stands.set(drawn);
    for (int i = 0; i < drawn.length; i++) {
      for (int c = 0; c < drawn[i].length; c++) {
        assertThat(stands.shares(i)[c]).isEqualTo(drawn[i][c]);
      }
      assertThat(stands.shares(i)[drawn[i].length]).isZero();
    }
  }

  /** A test of the leaf speaks for what stands there, not for what would be sown. */
  @Test
  void formononetin_ofAPaddockWithALeafTest_isTheTestsForAllButTheSown() {
    Farm farm = PlanFarms.demo("risky-farm");
    UncertainNumbers inputs = numbers(farm);
    StandingClover stands = stands(farm, inputs);
    double[] x = inputs.likely();
    int tested = 0;
    for (int i = 0; i < stands.size(); i++) {
      int sown = stands.species(i) - 1;
      double table = stands.cultivar(i, sown).formononetin().orElseThrow().likely();
      assertThat(stands.formononetin(x, i, sown)).isEqualTo(table);
      if (farm.paddocks().get(i).leafTest().isPresent()) {
        double found = farm.paddocks().get(i).leafTest().orElseThrow().formononetinPercentOfLeaf();
        for (int c = 0; c < sown; c++) {
          assertThat(stands.formononetin(x, i, c)).isEqualTo(found);
        }
        tested++;
      }
    }
    assertThat(tested).isPositive();
  }

  /** Ends of a test lie 1.645 standard errors off, one time in twenty beyond. */
  @Test
  void leafTest_amongTheInputs_hasEndsOfOneInTwentyAndNeverBelowNothing() {
    Farm farm = PlanFarms.demo("risky-farm");
    UncertainNumbers inputs = numbers(farm);
    for (Paddock paddock : farm.paddocks()) {
      paddock
          .leafTest()
          .ifPresent(
              test -> {
                Assumption input =
                    inputs.all().stream()
                        .filter(a -> a.name().equals("formononetin, leaf test: " + paddock.name()))
                        .findFirst()
                        .orElseThrow();
                double half = 1.645 * test.standardErrorPercent();
                double mean = test.formononetinPercentOfLeaf();
                assertThat(input.range().high()).isCloseTo(mean + half, within(1e-9));
                assertThat(input.range().low()).isCloseTo(Math.max(0, mean - half), within(1e-9));
              });
    }
  }

  @Test
  void oldShare_ofAPaddockNobodyWalked_isMarkedAsOurs() {
    Farm farm = PlanFarms.demo("mixed-farm");
    UncertainNumbers inputs = numbers(farm);
    StandingClover stands = stands(farm, inputs);
    int unwalked = 0;
    for (int i = 0; i < stands.size(); i++) {
      boolean walked = !farm.paddocks().get(i).identifications().isEmpty();
      Assumption old = inputs.get(stands.oldShareInput(i));
      assertThat(old.evidence()).isEqualTo(walked ? Evidence.FARM : Evidence.INFERRED);
      assertThat(old.setBy()).isEqualTo(walked ? SetBy.USER : SetBy.DEFAULT);
      unwalked += walked ? 0 : 1;
    }
    assertThat(unwalked).isPositive();
  }

  @Test
  void numbers_ofAPaddock_areItsOwn() {
    Farm farm = PlanFarms.demo("mixed-farm");
    UncertainNumbers inputs = numbers(farm);
    StandingClover stands = stands(farm, inputs);
    double[] x = inputs.likely();
    for (int i = 0; i < stands.size(); i++) {
      Paddock paddock = farm.paddocks().get(i);
      assertThat(stands.cloverShare(x, i)).isEqualTo(paddock.cloverShare().likely());
      assertThat(stands.growthIndex(x, i)).isEqualTo(paddock.growthIndex().likely());
      assertThat(inputs.get(stands.cloverShareInput(i)).name()).endsWith(paddock.name());
      for (int c = 0; c < stands.species(i); c++) {
        assertThat(stands.winterYield(x, i, c))
            .isEqualTo(stands.cultivar(i, c).relativeWinterYield().likely());
      }
    }
  }

  /** Tested at 1.2 %: as far as the clover standing there is the cultivar sown. */
  @Test
  void leafTest_ofAStandThatIsPartlyTheCultivarSown_speaksForThatPart() {
    double ofTable = RandomFarms.TABLES.cultivar("Yarloop").formononetin().orElseThrow().likely();
    for (int yarloop : new int[] {0, 30, 60}) {
      List<Identification> plants = new ArrayList<>();
      if (yarloop > 0) {
        plants.add(new Identification(List.of("Yarloop"), yarloop));
      }
      if (yarloop < 60) {
        plants.add(new Identification(List.of("Dwalganup"), 60 - yarloop));
      }
      Farm base = PlanFarms.demo("risky-farm");
      Paddock tested =
          base.paddocks().stream().filter(p -> p.leafTest().isPresent()).findFirst().orElseThrow();
      Farm farm =
          FarmCopy.of(base)
              .paddocks(List.of(FarmCopy.paddock(tested, plants)))
              .sownCultivar("Yarloop")
              .build();
      UncertainNumbers inputs = numbers(farm);
      StandingClover stands = stands(farm, inputs);
      double[] x = inputs.likely();
      stands.set(x);
      double part = yarloop / 60.0;
      assertThat(stands.alreadySown(0)).isCloseTo(part, within(1e-9));
      assertThat(stands.formononetin(x, 0, stands.species(0) - 1))
          .isCloseTo(part * stands.formononetin(x, 0, 0) + (1 - part) * ofTable, within(1e-9));
      assertThat(stands.formononetin(x, 0, 0)).isNotCloseTo(ofTable, within(0.01));
    }
  }
}
