package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.OtherStock;
import swardcase.feed.EnergyMethod;
import swardcase.feed.StockDemand;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * The risky farm as the plan sees it. Mature ewes are joined for six weeks from 1 May, maidens for
 * five from 1 June; steers are there in April and May only.
 */
class JoiningCaseTest {

  private static final double[] STRENGTH = {0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6, 0.8, 1.2};

  private final Farm farm = farm();
  private final FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
  private final OutcomeFunction run = model.newRun();
  private final JoiningCase setting =
      new JoiningCase(model, run, STRENGTH, 0, new ComingYear(model, run, model.keepAll()));
  private final FeedCourse feed = new FeedCourse(model, run);

  private static Farm farm() {
    Farm risky = RandomFarms.demo("risky-farm");
    OtherStock wethers = risky.otherStock().get(0);
    OtherStock steers = risky.otherStock().get(1);
    List<Month> months = List.of(Month.APRIL, Month.MAY);
    OtherStock autumn =
        new OtherStock("steers", 45, steers.dsePerHead(), Optional.empty(), months, true);
    return FarmCopy.of(risky).otherStock(List.of(autumn, wethers)).build();
  }

  /** 1 May is day 120, eight weeks before it 6 March; five weeks from 1 June end on 5 July. */
  @Test
  void halfMonths_runFromEightWeeksBeforeTheFirstJoiningToTheEndOfTheLast() {
    assertThat(setting.joiningDay).containsExactly(120, 151);
    assertThat(setting.ewes).containsExactly(1900, 600);
    assertThat(setting.halfMonths).containsExactly(4, 5, 6, 7, 8, 9, 10, 11, 12);
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      assertThat(setting.matters(0, p)).as("%s", p).isEqualTo(p >= 4 && p <= 10);
      assertThat(setting.matters(1, p)).as("%s", p).isEqualTo(p >= 6 && p <= 12);
    }
    assertThat(setting.mobs()).isEqualTo(2);
    assertThat(setting.paddocks()).isEqualTo(10);
  }

  @Test
  void joiningDay_movedOverTheTurnOfTheYear_wraps() {
    assertThat(
            new JoiningCase(model, run, STRENGTH, -150, new ComingYear(model, run, model.keepAll()))
                .joiningDay)
        .containsExactly(335, 1);
    assertThat(
            new JoiningCase(model, run, STRENGTH, 14, new ComingYear(model, run, model.keepAll()))
                .joiningDay)
        .containsExactly(134, 165);
  }

  @Test
  void problem_feedOfAPaddock_isItsPartOfTheBudgetsFeed() {
    GrazingProblem problem = setting.problem(STRENGTH);
    double weights = 0;
    double hectares = 0;
    for (int i = 0; i < setting.paddocks(); i++) {
      weights += run.feedWeight(i);
      hectares += farm.paddocks().get(i).areaHa();
    }
    for (int i = 0; i < setting.paddocks(); i++) {
      double part = hectares * run.feedWeight(i) / weights;
      assertThat(problem.weight[i]).isEqualTo(run.feedWeight(i));
      assertNear(problem.startKg[i], feed.endKg(3) * part);
      for (int k = 0; k < problem.halfMonths; k++) {
        assertNear(problem.grownKg[k][i], feed.grownKg(4 + k) * part);
        assertNear(problem.leastKg[k][i], 0.5 * feed.endKg(4 + k) * part);
      }
    }
    assertThat(Arrays.stream(problem.startKg).sum()).isGreaterThan(1000);
    for (int k = 0; k < problem.halfMonths; k++) {
      assertThat(problem.kept[k]).isEqualTo(feed.kept(4 + k));
      assertThat(problem.energyMjPerKg[k]).isEqualTo(feed.energyMjPerKg(4 + k));
    }
    assertThat(problem.pricePerMj).isEqualTo(run.pricePerMj());
    assertThat(problem.ewes).isEqualTo(2);
  }

  /** A wether of the table and a steer need their dry sheep equivalents, at 8.6 MJ each. */
  @Test
  void problem_needs_areTheBudgetsForEwes_andDrySheepEquivalentsForOthers() {
    GrazingProblem problem = setting.problem(STRENGTH);
    double[] pregnant =
        farm.mobs().stream().mapToDouble(mob -> mob.pregnantPercent().likely() / 100).toArray();
    StockDemand demand = StockDemand.of(farm, RandomFarms.TABLES, EnergyMethod.SCA_1990, pregnant);
    double wethers = 300 * farm.otherStock().get(1).dsePerHead().likely() * 8.6;
    double steers = 45 * farm.otherStock().get(0).dsePerHead().likely() * 8.6;
    assertThat(problem.groups).isEqualTo(4);
    for (int k = 0; k < problem.halfMonths; k++) {
      int p = 4 + k;
      double days = feed.pastureShare(p) * HalfMonths.days(p);
      assertThat(days).isPositive();
      for (int g = 0; g < 2; g++) {
        assertNear(problem.pastureNeedMj[g][k], days * demand.mobMjPerDay(g, p));
      }
      assertNear(problem.pastureNeedMj[3][k], days * wethers);
      boolean there = p >= 6 && p <= 9;
      assertNear(problem.pastureNeedMj[2][k], there ? days * steers : 0);
    }
  }

  /** Risky from 0.15 % of intake, wherever feed is green enough; only wethers are limited. */
  @Test
  void problem_riskyDays_areThoseOfPaddocksFromTheRiskyDose() {
    GrazingProblem problem = setting.problem(STRENGTH);
    int risky = 0;
    for (int k = 0; k < problem.halfMonths; k++) {
      for (int i = 0; i < setting.paddocks(); i++) {
        boolean is = STRENGTH[i] * run.greenShare(4 + k) >= 0.15;
        assertThat(problem.riskyDays[k][i]).isEqualTo(is ? HalfMonths.days(4 + k) : 0);
        risky += is ? 1 : 0;
      }
    }
    assertThat(risky).isBetween(10, 70);
    double free = Double.POSITIVE_INFINITY;
    assertThat(problem.mostRiskyDays).containsExactly(free, free, free, 28);
  }

  /** Another strength changes what is risky and nothing else. */
  @Test
  void problem_ofOtherStrengths_goesByThem() {
    double[][] risky = setting.problem(new double[10]).riskyDays;
    for (double[] ofHalf : risky) {
      assertThat(ofHalf).containsOnly(0);
    }
  }

  /**
   * What nobody has walked is planned with at the high end of unknown clover, 1.8 % of leaf, which
   * is six times its likely 0.3 %; a tested leaf stands for itself.
   */
  @Test
  void cautiousStrength_isHighWhereUnknown_andLikelyElsewhere() {
    double[] cautious = JoiningCase.cautiousStrength(model, run);
    int unknown = 0;
    for (int i = 0; i < cautious.length; i++) {
      boolean tested = farm.paddocks().get(i).leafTest().isPresent();
      boolean much = run.composition(i).unknownShare() > 0.2;
      assertThat(JoiningCase.isUnknown(model, run, i)).isEqualTo(!tested && much);
      if (!tested && much) {
        assertThat(cautious[i]).isGreaterThan(2 * run.greenDose(i));
        unknown++;
      } else {
        assertThat(cautious[i]).isEqualTo(run.greenDose(i));
      }
    }
    assertThat(unknown).isPositive();
    int lease = cautious.length - 1;
    double share = run.composition(lease).unknownShare();
    assertThat(share).isEqualTo(1);
    assertNear(cautious[lease], 6 * run.greenDose(lease));
  }

  private static void assertNear(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
  }
}
