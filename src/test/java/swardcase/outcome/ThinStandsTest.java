package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Range;
import swardcase.draws.DrawnFarm;
import swardcase.draws.Draws;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.feed.GrowthYear;
import swardcase.search.PlanFarms;

/** Laws of thin stands, on one paddock of the actions of {@link ActionPathsTest}. */
class ThinStandsTest {

  private static final int KEEP = 0;
  private static final int RESOW = 1;
  private static final int YEARS = 20;

  /** A year of run-down comes before. */
  private static final int SOWING = 1;

  /** The growth index that the program fills in; the farm's own is another matter. */
  private static final Assumption DEFAULT_INDEX =
      new Assumption("growth index", Range.exactly(1), "-", Evidence.INFERRED, "", SetBy.DEFAULT);

  private static final Assumption OWN_INDEX = RandomFarms.exactly("growth index", 1);

  private static Farm farm(
      String stands, String sown, double clover, OptionalDouble count, Assumption index) {
    Paddock paddock =
        new Paddock(
            "Only",
            40,
            RandomFarms.exactly("clover share", clover),
            index,
            false,
            true,
            Optional.empty(),
            PaddockUse.EWES,
            Optional.empty(),
            count,
            RandomFarms.NO_SIGNS,
            List.of(new Identification(List.of(stands), 600)));
    Farm one =
        FarmCopy.of(PlanFarms.demo("risky-farm"))
            .paddocks(List.of(paddock))
            .sownCultivar(sown)
            .build();
    Farm acted = ActionPathsTest.farm(one, Optional.empty());
    return acted.withFinance(acted.finance().withHorizonYears(YEARS));
  }

  private static final class Run {

    private final UncertainNumbers inputs;
    private final OutcomeFunction run;
    private final double[] x;

    Run(Farm farm) {
      FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
      inputs = model.inputs();
      run = model.newRun();
      x = inputs.likely();
      inputs.find("action.resow.establishment-chance").ifPresent(place -> x[place] = 1);
      run.set(x);
    }

    Run with(String key, double value) {
      x[inputs.place(key)] = value;
      run.set(x);
      return this;
    }

    double density(int action, int year) {
      return run.densityFactor(0, action, year);
    }
  }

  private static Run thin(double count) {
    return new Run(farm("Dalkeith", "Dalkeith", 0.6, OptionalDouble.of(count), DEFAULT_INDEX));
  }

  /** 200 plants: R = 200/2,600 over 1,000/3,400; all else at the rows of the tables. */
  @Test
  void keptStand_counted_losesWhatItsDensityTells() {
    Run run = thin(200);
    double relative = 200.0 / 2600 / (1000.0 / 3400);
    Farm farm = farm("Dalkeith", "Dalkeith", 0.6, OptionalDouble.of(200), DEFAULT_INDEX);
    double early = new GrowthYear(farm).earlyWinterShare();
    assertThat(early).isBetween(0.3, 0.5);
    assertThat(run.density(KEEP, 0))
        .isCloseTo(1 - 0.6 * early * 0.4 * (1 - relative), within(1e-12));
    assertThat(run.run.thinLossKgDmPerHa(0))
        .isPositive()
        .isLessThanOrEqualTo(run.run.winterLossKgDmPerHa(0));
  }

  @Test
  void keptStand_atTheReference_losesNothing() {
    Run run = thin(1000);
    assertThat(run.density(KEEP, 0)).isEqualTo(1);
    assertThat(run.run.thinLossKgDmPerHa(0)).isZero();
  }

  @Test
  void keptStand_moreSeedlings_neverLosesMore() {
    double before = Double.POSITIVE_INFINITY;
    for (double count : new double[] {0, 50, 100, 300, 800, 2500}) {
      double lost = thin(count).run.thinLossKgDmPerHa(0);
      assertThat(lost).isLessThanOrEqualTo(before);
      before = lost;
    }
    assertThat(before).isZero();
  }

  /** The farm's own growth index has today's density in it. */
  @Test
  void keptStand_withTheFarmsOwnGrowthIndex_losesNothingToItsDensity() {
    Run run = new Run(farm("Dalkeith", "Dalkeith", 0.6, OptionalDouble.of(100), OWN_INDEX));
    assertThat(run.density(KEEP, 0)).isEqualTo(1);
    assertThat(run.run.thinLossKgDmPerHa(0)).isZero();
  }

  /** Without a count the seed bank tells: 270 x 0.63 kg/ha of 7.5 mg are over 1,000 per m2. */
  @Test
  void keptStand_notCounted_hasWhatItsSeedBankGerminates() {
    Run run = new Run(farm("Dalkeith", "Dalkeith", 0.6, OptionalDouble.empty(), DEFAULT_INDEX));
    assertThat(run.density(KEEP, 0)).isEqualTo(1);
    double germinates = 100 * 30 * run.x[run.inputs.place("seed.emergence")] / 7.5;
    run.with(
        run.inputs.find("seed.yield.hot").isPresent() ? "seed.yield.hot" : "seed.yield.cool", 30);
    double few = run.density(KEEP, 0);
    assertThat(few).isLessThan(1);
    assertThat(thin(germinates).density(KEEP, 0)).isCloseTo(few, within(1e-12));
  }

  /** The same cultivar at the same density: thin in its first year, then as before. */
  @Test
  void resown_withTheSameCultivar_isThinAtFirstAndThenLosesNothing() {
    for (double count : new double[] {150, 3000}) {
      Run run = thin(count);
      double now = run.density(KEEP, 0);
      assertThat(run.density(RESOW, SOWING)).isLessThan(1);
      assertThat(run.density(RESOW, YEARS - 1)).isCloseTo(now, within(1e-3));
    }
  }

  /** A thin stand may be the work of its cultivar: another comes some of the way to a full one. */
  @Test
  void resown_withAnotherCultivar_goesSomeOfTheWayToAFullBank() {
    Farm farm = farm("Yarloop", "Dalkeith", 0.6, OptionalDouble.of(150), DEFAULT_INDEX);
    double now = new Run(farm).density(KEEP, 0);
    double none = new Run(farm).with("density.newcomer", 0).density(RESOW, YEARS - 1);
    double half = new Run(farm).with("density.newcomer", 0.5).density(RESOW, YEARS - 1);
    double whole = new Run(farm).with("density.newcomer", 1).density(RESOW, YEARS - 1);
    assertThat(none).isCloseTo(now, within(0.01));
    assertThat(half).isGreaterThan(none);
    assertThat(whole).isGreaterThanOrEqualTo(half);
  }

  /**
   * Common practice: up to 30 % of winter growth is forgone. The cultivar and a thin stand together
   * reach it on a bad paddock; an old stand of usual clover that nobody counted does so seldom.
   */
  @Test
  void bothTogether_reachThirtyPerCentOnABadPaddock_andSeldomOnAnOther() {
    assertThat(oftenThirtyPerCent(0.9, OptionalDouble.of(80))).isGreaterThan(0.05);
    assertThat(oftenThirtyPerCent(0.6, OptionalDouble.of(150))).isLessThan(0.05);
    assertThat(oftenThirtyPerCent(0.45, OptionalDouble.empty())).isLessThan(0.005);
  }

  private static double oftenThirtyPerCent(double clover, OptionalDouble count) {
    Farm bad = farm("Dwalganup", "Dalkeith", clover, count, DEFAULT_INDEX);
    FarmModel model = new FarmModel(bad, RandomFarms.TABLES);
    Draws draws = new Draws(model, 1, 20, 100);
    DrawnFarm drawn = new DrawnFarm(model);
    int often = 0;
    for (int d = 0; d < draws.count(); d++) {
      often += drawn.set(draws, d).winterGrowthNow() <= 0.7 ? 1 : 0;
    }
    return (double) often / draws.count();
  }
}
