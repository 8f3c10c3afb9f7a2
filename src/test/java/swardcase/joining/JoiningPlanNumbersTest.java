package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.draws.DrawnFarm;
import swardcase.draws.Draws;
import swardcase.draws.Spread;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.OtherStock;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * Every number that a joining plan gives, put together again from its parts: the risky farm with
 * half its stock on four of its paddocks, one of which nobody has walked.
 */
class JoiningPlanNumbersTest {

  private static final FarmModel MODEL = new FarmModel(farm(), RandomFarms.TABLES);
  private static final Draws DRAWS = new Draws(MODEL, 1, 20, 5);
  private static JoiningPlan plan;

  private final OutcomeFunction run = MODEL.newRun();
  private final JoiningCase setting =
      new JoiningCase(
          MODEL,
          run,
          JoiningCase.cautiousStrength(MODEL, run),
          0,
          new ComingYear(MODEL, run, MODEL.keepAll()));
  private final JoiningCalendar calendar = new JoiningCalendar(setting);
  private final Planner planner = new Planner(setting, setting.strength);
  private final Grazing asNow = planner.asNow();
  private final Grazing avoiding = planner.avoiding(calendar);
  private final Grazing best = planner.plan(asNow, avoiding);
  private final Grazing chosen = planner.practical(calendar, best, asNow);
  private final List<Grazing> policies = List.of(asNow, avoiding, chosen);
  private final GrazingProblem problem = planner.problem();

  @BeforeAll
  static void plan() {
    plan = JoiningPlan.of(DRAWS).orElseThrow();
  }

  private static Farm farm() {
    Farm risky = RandomFarms.demo("risky-farm");
    List<Integer> kept = List.of(0, 2, 6, 9);
    return FarmCopy.of(risky)
        .paddocks(kept.stream().map(i -> risky.paddocks().get(i)).toList())
        .mobs(
            List.of(FarmCopy.mob(risky.mobs().get(0), 600), FarmCopy.mob(risky.mobs().get(1), 180)))
        .otherStock(risky.otherStock().stream().map(JoiningPlanNumbersTest::notInMay).toList())
        .build();
  }

  private static OtherStock notInMay(OtherStock stock) {
    List<Month> months = stock.months().stream().filter(month -> month != Month.MAY).toList();
    return new OtherStock(
        stock.name(), 20, stock.dsePerHead(), stock.mostRiskyDays(), months, true);
  }

  @Test
  void plan_standsOnTheFarmAndItsCalendar() {
    assertThat(plan.farm()).isSameAs(MODEL.farm());
    assertThat(plan.model()).isSameAs(MODEL);
    assertThat(plan.likely().pricePerMj()).isEqualTo(run.pricePerMj());
    assertThat(plan.halfMonths()).containsExactly(4, 5, 6, 7, 8, 9, 10, 11, 12);
    assertThat(plan.groups()).isEqualTo(4);
    assertThat(plan.daysIn(0)).isEqualTo(15);
    assertThat(plan.daysIn(1)).isEqualTo(16);
    assertThat(plan.days(0)).isEqualTo(15.5);
    assertThat(plan.days(2)).isEqualTo(15);
    assertThat(plan.date(8)).isEqualTo(MonthDay.of(5, 1));
    assertThat(plan.tellablePoints()).isEqualTo(3);
    assertThat(plan.greenDays()).isEqualTo(YoungEwes.greenDays(run));
    List<Boolean> unknown = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      unknown.add(plan.isUnknown(i));
    }
    assertThat(unknown).containsExactly(false, false, false, true);
    for (int g = 0; g < 2; g++) {
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        assertThat(plan.isRated(g, p)).isEqualTo(setting.matters(g, p));
        for (int i = 0; i < 4; i++) {
          assertThat(plan.daysAllowed(g, p, i)).isEqualTo(calendar.daysAllowed(g, p, i));
        }
      }
      assertThat(plan.pointsAtDate(g, 8)).isEqualTo(JoiningDates.points(run, g, 8)).isPositive();
    }
  }

  /** {@code [measure][draw]}, one draw after another. */
  private static double[][] drawn(JoiningMeasures measures) {
    double[][] drawn = new double[measures.size()][DRAWS.count()];
    double[] read = new double[measures.size()];
    DrawnFarm farm = new DrawnFarm(MODEL);
    for (int d = 0; d < DRAWS.count(); d++) {
      measures.read(farm.set(DRAWS, d), MODEL.inputs().likely(), read);
      for (int m = 0; m < read.length; m++) {
        drawn[m][d] = read[m];
      }
    }
    return drawn;
  }

  private static Drawn spread(double[] values) {
    return Spread.of(values, DRAWS.uniforms()).drawn();
  }

  @Test
  void numbers_areThoseOfTheMeasuresOverTheDraws() {
    JoiningMeasures measures = new JoiningMeasures(setting, policies);
    double[][] drawn = drawn(measures);
    for (int i = 0; i < 4; i++) {
      assertThat(plan.greenDose(i)).isEqualTo(spread(drawn[measures.greenDose(i)]));
      Drawn barren = spread(drawn[measures.barren(i)]);
      assertThat(plan.barrenPercent(i)).isEqualTo(barren);
      assertThat(plan.youngDaysAllowed(i))
          .isEqualTo(YoungEwes.daysAllowed(barren.mean(), YoungEwes.greenDays(run), 3));
      for (int g = 0; g < 2; g++) {
        for (int p = 4; p <= 12; p++) {
          assertThat(plan.points(g, p, i)).isEqualTo(spread(drawn[measures.points(g, p, i)]));
        }
      }
    }
    for (Policy policy : Policy.values()) {
      int k = policy.ordinal();
      assertThat(plan.lambs(policy)).isEqualTo(spread(drawn[measures.lambs(k)]));
      assertThat(plan.lambMoney(policy)).isEqualTo(spread(drawn[measures.money(k)]));
      assertThat(plan.saved(policy)).isEqualTo(spread(drawn[measures.saved(k)]));
    }
    assertThat(plan.lambs(Policy.AS_NOW).mean()).isGreaterThan(10);
    assertThat(plan.lambMoney(Policy.AS_NOW).mean()).isGreaterThan(1000);
    assertThat(plan.saved(Policy.PLAN).mean()).isGreaterThan(1000);
    assertThat(plan.saved(Policy.AVOID).mean()).isNotZero();
  }

  /** Rightly open is at or below what one half-month may cost; rightly shut is above it. */
  @Test
  void chanceRight_isTheShareOfDrawsOnTheSideItIsOn() {
    JoiningMeasures measures = new JoiningMeasures(setting, policies);
    double[][] drawn = drawn(measures);
    int[] kinds = new int[2];
    for (int g = 0; g < 2; g++) {
      for (int p = 4; p <= 12; p++) {
        for (int i = 0; i < 4; i++) {
          double most = calendar.tolerance(g, i);
          double above = Sample.share(drawn[measures.points(g, p, i)], points -> points > most);
          boolean open = calendar.isOpen(g, p, i);
          double expected = open ? 1 - above : above;
          assertThat(plan.chanceRight(g, p, i)).isEqualTo(expected);
          kinds[open ? 1 : 0] += expected > 0.6 ? 1 : 0;
        }
      }
    }
    assertThat(kinds).doesNotContain(0);
  }

  @Test
  void sharesAndFeedBought_areThoseOfTheWayOfGrazing() {
    double bought = 0;
    for (Policy policy : Policy.values()) {
      Grazing grazing = policies.get(policy.ordinal());
      assertThat(plan.boughtMj(policy)).isEqualTo(problem.boughtMj(grazing));
      for (int g = 0; g < 4; g++) {
        for (int k = 0; k < 9; k++) {
          for (int i = 0; i < 4; i++) {
            assertThat(plan.share(policy, g, k, i)).isEqualTo(grazing.share(g, k, i));
          }
        }
      }
      for (int g = 0; g < 2; g++) {
        assertThat(plan.ewesNotInLamb(policy, g))
            .isEqualTo(setting.losses(setting.strength).ewesNotInLamb(g, grazing));
      }
    }
    assertThat(plan.ewesNotInLamb(Policy.AS_NOW, 0)).isGreaterThan(10);
    for (int g = 0; g < 4; g++) {
      for (int k = 0; k < 9; k++) {
        assertThat(plan.boughtMj(g, k))
            .isEqualTo(chosen.bought(g, k) * problem.pastureNeedMj[g][k]);
        boolean may = k == 4 || k == 5;
        assertThat(plan.isThere(g, k)).isEqualTo(g < 2 || !may);
        bought += plan.boughtMj(g, k);
      }
    }
    assertThat(bought).isCloseTo(plan.boughtMj(Policy.PLAN), within(1e-6 * bought));
    assertThat(plan.leastCost()).isEqualTo(planner.cost(best)).isPositive();
  }

  /**
   * Short is more than a hundredth of what ewes need; each half-month's worth is the best mob's.
   */
  @Test
  void shortage_andWorthOfSafeFeed_areThePlanners() {
    double[] missing = planner.shortMj(calendar, asNow);
    double all = 0;
    double worth = 0;
    for (int k = 0; k < 9; k++) {
      assertThat(plan.shortMj(k)).isEqualTo(missing[k]);
      all += missing[k];
      double most = 0;
      for (int g = 0; g < 2; g++) {
        double perMj = planner.worthOfSafeMj(g, k, chosen);
        most = planner.isAtStake(g, k, chosen) ? Math.max(most, perMj) : most;
      }
      assertThat(plan.worthOfSafeMj(k)).isEqualTo(most);
      worth = Math.max(worth, most);
    }
    assertThat(worth).isPositive();
    assertThat(plan.shortMj()).isCloseTo(all, within(1e-6));
    double need = 0;
    for (int g = 0; g < 2; g++) {
      need += Arrays.stream(problem.pastureNeedMj[g]).sum();
    }
    assertThat(all).isGreaterThan(0.01 * need);
    assertThat(plan.isShort()).isTrue();
    WaysOut waysOut = new WaysOut(setting, calendar, planner, best);
    assertThat(plan.shifts()).isEqualTo(waysOut.otherDates(all));
    assertThat(plan.resown()).isEqualTo(waysOut.resown()).isNotEmpty();
  }
}
