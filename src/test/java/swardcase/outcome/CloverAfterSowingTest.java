package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.LeafTest;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.feed.GrowthYear;
import swardcase.search.PlanFarms;
import swardcase.sward.StandingClover;

/**
 * How much clover a new stand has: laws on one paddock, with the round actions of {@link
 * ActionPathsTest}. A new stand goes back to the clover that the paddock has.
 */
class CloverAfterSowingTest {

  private static final int KEEP = 0;
  private static final int RESOW = 1;
  private static final int OVERSOW = 3;

  /** The last of forty years: of a time constant of one year nothing is left. */
  private static final int LAST = 39;

  private static final List<Identification> ALL_YARLOOP = plants("Yarloop", 60);

  /** The paths of one paddock, at any numbers; a sowing takes. */
  private static final class Run {

    private final UncertainNumbers inputs;
    private final StandingClover stands;
    private final ActionPaths paths;
    private final double[] x;

    Run(List<Identification> plants, OptionalDouble leaf, Optional<Double> target) {
      Farm base = PlanFarms.demo("risky-farm");
      Paddock paddock =
          new Paddock(
              "Only",
              40,
              RandomFarms.exactly("clover share", 0.6),
              RandomFarms.exactly("growth index", 1),
              true,
              true,
              leaf.isPresent()
                  ? Optional.of(new LeafTest(leaf.getAsDouble(), 0.1))
                  : Optional.empty(),
              PaddockUse.EWES,
              Optional.empty(),
              OptionalDouble.empty(),
              RandomFarms.NO_SIGNS,
              plants);
      Farm one = FarmCopy.of(base).paddocks(List.of(paddock)).sownCultivar("Yarloop").build();
      Farm acted = ActionPathsTest.farm(one, target);
      Farm farm = acted.withFinance(acted.finance().withHorizonYears(LAST + 1));
      inputs = new FarmModel(farm, RandomFarms.TABLES).inputs();
      stands =
          new StandingClover(
              farm,
              RandomFarms.TABLES,
              inputs,
              StandingClover.compositions(farm, RandomFarms.TABLES));
      paths = new ActionPaths(farm, inputs, stands, new GrowthYear(farm));
      x = inputs.likely();
      x[paths.establishmentInput(RESOW)] = 1;
      set();
    }

    private void set() {
      stands.set(x);
      paths.set(x, false);
    }

    /** The same with another number. */
    Run with(String key, double value) {
      x[inputs.place(key)] = value;
      set();
      return this;
    }

    Run ofClover(double share) {
      return with("paddock.Only.clover-share", share);
    }

    double winter(int action, int year) {
      return paths.winter(paths.at(0, action, year));
    }

    double strength(int action, int year) {
      return paths.strength(paths.at(0, action, year));
    }

    /** Clover share at the end, which the strength of the clover must bear out. */
    double settled() {
      int n = stands.species(0);
      double[] plants = paths.plantShares(0, RESOW);
      double leaf = 0;
      for (int c = 0; c < n; c++) {
        leaf += plants[LAST * n + c] * stands.formononetin(x, 0, c);
      }
      double stress = x[inputs.place("dose.waterlogged-factor")];
      double settled = paths.cloverShare(paths.at(0, RESOW, LAST));
      assertThat(strength(RESOW, LAST))
          .isCloseTo(settled * leaf * stress * x[inputs.place("dose.leaf-share")], within(1e-12));
      return settled;
    }
  }

  private static List<Identification> plants(String name, int plants) {
    return List.of(new Identification(List.of(name), plants));
  }

  private static List<Identification> half() {
    return List.of(
        new Identification(List.of("Yarloop"), 30), new Identification(List.of("Dwalganup"), 30));
  }

  /** Whatever another cultivar would change, also where the leaf was tested. */
  @Test
  void sowing_theCultivarThatStandsThere_endsWhereKeepingDoes() {
    for (OptionalDouble leaf : List.of(OptionalDouble.empty(), OptionalDouble.of(0.7))) {
      for (double factor : new double[] {0.7, 1, 1.4}) {
        for (double share : new double[] {0.2, 0.6, 0.9}) {
          Run run =
              new Run(ALL_YARLOOP, leaf, Optional.empty())
                  .with("sowing.clover-share", factor)
                  .ofClover(share);
          assertThat(run.strength(RESOW, LAST))
              .isPositive()
              .isCloseTo(run.strength(KEEP, LAST), within(1e-11));
          assertThat(run.winter(RESOW, LAST)).isCloseTo(run.winter(KEEP, LAST), within(1e-11));
          for (int k = 0; k <= LAST; k++) {
            assertThat(run.strength(OVERSOW, k)).isCloseTo(run.strength(KEEP, k), within(1e-12));
          }
        }
      }
    }
  }

  /** Sowing year two: 0.6 of the clover and 0.85 a year later, 1 - 0.4 / e, likely values. */
  @Test
  void strength_ofANewStand_risesToThatOfKeepingYearByYear() {
    Run run = new Run(ALL_YARLOOP, OptionalDouble.empty(), Optional.empty());
    double kept = run.strength(KEEP, 0);
    assertThat(run.strength(RESOW, 1)).isCloseTo(0.6 * kept, within(1e-9));
    assertThat(run.strength(RESOW, 2)).isCloseTo((1 - 0.4 / Math.E) * kept, within(1e-9));
    for (int k = 1; k < 20; k++) {
      assertThat(run.strength(RESOW, k)).isLessThan(run.strength(RESOW, k + 1));
      assertThat(run.strength(RESOW, k)).isLessThan(kept);
    }
    assertThat(run.strength(RESOW, 6)).as("five years on").isGreaterThan(0.98 * kept);
  }

  @Test
  void cloverShare_onceSettled_isThePaddocksOwn() {
    for (double share : new double[] {0.05, 0.2, 0.6, 0.9}) {
      Run run = new Run(plants("Dwalganup", 60), OptionalDouble.empty(), Optional.empty());
      run.with("sowing.clover-share", 1).ofClover(share);
      assertThat(run.settled()).isCloseTo(share, within(1e-9));
    }
    assertThat(new Run(ALL_YARLOOP, OptionalDouble.empty(), Optional.empty()).ofClover(0).settled())
        .as("no clover, none after")
        .isZero();
  }

  /** 60 % and a factor of 1.2: 72 % with none of the plants sown, 66 % with half, 60 % with all. */
  @Test
  void anotherCultivar_changesTheShareAsFarAsItIsAnother() {
    assertThat(settledAtSixty(plants("Dwalganup", 60), 1.2)).isCloseTo(0.72, within(1e-9));
    assertThat(settledAtSixty(half(), 1.2)).isCloseTo(0.66, within(1e-9));
    assertThat(settledAtSixty(ALL_YARLOOP, 1.2)).isCloseTo(0.6, within(1e-9));
    assertThat(settledAtSixty(plants("Dwalganup", 60), 2))
        .as("no more than all")
        .isCloseTo(1, within(1e-12));
  }

  private static double settledAtSixty(List<Identification> plants, double factor) {
    return new Run(plants, OptionalDouble.empty(), Optional.empty())
        .with("sowing.clover-share", factor)
        .settled();
  }

  @Test
  void cloverShare_ofAPaddockWithMoreClover_isHigherInEveryYear() {
    for (int action : new int[] {RESOW, OVERSOW}) {
      double[] before = new double[LAST + 1];
      for (double share = 0.1; share < 0.95; share += 0.1) {
        Run run = new Run(half(), OptionalDouble.empty(), Optional.empty()).ofClover(share);
        for (int k = 0; k <= LAST; k++) {
          assertThat(run.strength(action, k)).isGreaterThan(before[k]);
          assertThat(run.strength(action, k)).isLessThanOrEqualTo(run.paths.strongest());
          before[k] = run.strength(action, k);
        }
      }
    }
  }

  @Test
  void target_ofTheFarm_goesBeforeThePaddocksOwn() {
    for (double share : new double[] {0.2, 0.6, 0.9}) {
      Run run = new Run(plants("Dwalganup", 60), OptionalDouble.empty(), Optional.of(0.35));
      run.with("sowing.clover-share", 1.4).ofClover(share);
      assertThat(run.settled()).isCloseTo(0.35, within(1e-9));
    }
  }
}
