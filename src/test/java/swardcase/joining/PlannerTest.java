package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * Ways of grazing on the risky farm with a tenth of its ewes, so that feed is plenty. Its first
 * paddock is the maidens' alone.
 */
class PlannerTest {

  private static final double[] STRONG = {5, 5, 5, 5, 5, 5, 5, 5, 5, 5};

  private final FarmModel model = new FarmModel(farm(), RandomFarms.TABLES);
  private final OutcomeFunction run = model.newRun();
  private final JoiningCase setting =
      new JoiningCase(
          model,
          run,
          JoiningCase.cautiousStrength(model, run),
          0,
          new ComingYear(model, run, model.keepAll()));
  private final JoiningCalendar calendar = new JoiningCalendar(setting);
  private final Planner planner = new Planner(setting, setting.strength);
  private final GrazingProblem problem = planner.problem();

  private static Farm farm() {
    Farm risky = RandomFarms.demo("risky-farm");
    List<Paddock> paddocks = new ArrayList<>(risky.paddocks());
    Paddock first = paddocks.get(0);
    paddocks.set(
        0,
        new Paddock(
            first.name(),
            first.areaHa(),
            first.cloverShare(),
            first.growthIndex(),
            first.waterlogged(),
            first.arable(),
            first.leafTest(),
            first.use(),
            Optional.of("maidens"),
            first.seedlingsPerM2(),
            first.signs(),
            first.identifications()));
    return FarmCopy.of(risky)
        .paddocks(paddocks)
        .mobs(
            List.of(FarmCopy.mob(risky.mobs().get(0), 190), FarmCopy.mob(risky.mobs().get(1), 60)))
        .build();
  }

  private Grazing shares(double each) {
    double[][][] share = new double[problem.groups][problem.halfMonths][problem.paddocks];
    for (double[][] ofGroup : share) {
      for (double[] ofHalf : ofGroup) {
        Arrays.fill(ofHalf, each);
      }
    }
    return new Grazing(share);
  }

  private static double sum(double[] numbers) {
    return Arrays.stream(numbers).sum();
  }

  /** Feed is plenty, so a mob spreads over its paddocks by the feed they give. */
  @Test
  void asNow_spreadsEachMobOverItsOwnPaddocks() {
    Grazing asNow = planner.asNow();
    double all = sum(problem.weight);
    for (int k = 0; k < problem.halfMonths; k++) {
      for (int i = 0; i < problem.paddocks; i++) {
        double mature = i == 0 ? 0 : problem.weight[i] / (all - problem.weight[0]);
        assertThat(asNow.share(0, k, i)).isCloseTo(mature, within(1e-9));
        assertThat(asNow.share(1, k, i)).isCloseTo(problem.weight[i] / all, within(1e-9));
        assertThat(asNow.share(2, k, i)).isCloseTo(problem.weight[i] / all, within(1e-9));
      }
    }
  }

  @Test
  void avoiding_keepsEwesOffWhatIsKeptOff_andSpreadsThemOverTheRest() {
    Grazing avoiding = planner.avoiding(calendar);
    int shut = 0;
    for (int k = 0; k < problem.halfMonths; k++) {
      int p = setting.halfMonths.get(k);
      for (int g = 0; g < 2; g++) {
        double open = 0;
        for (int i = 0; i < problem.paddocks; i++) {
          open += calendar.isKeptOff(g, p, i) ? 0 : problem.weight[i];
        }
        for (int i = 0; i < problem.paddocks; i++) {
          boolean off = calendar.isKeptOff(g, p, i);
          shut += off ? 1 : 0;
          double share = avoiding.share(g, k, i);
          assertThat(share).isEqualTo(off ? 0 : share);
          if (avoiding.bought(g, k) < 1e-9 && open > 0.3 * sum(problem.weight)) {
            assertThat(share).isCloseTo(off ? 0 : problem.weight[i] / open, within(1e-9));
          }
        }
      }
    }
    assertThat(shut).isGreaterThan(10);
  }

  @Test
  void cost_isLambsAndFeedBought() {
    Grazing half = shares(0.05);
    double need = Arrays.stream(problem.pastureNeedMj).mapToDouble(PlannerTest::sum).sum();
    double money = setting.losses(setting.strength).money(half);
    assertThat(money).isGreaterThan(100);
    assertThat(planner.cost(half)).isCloseTo(money + 0.5 * need * run.pricePerMj(), within(1e-6));
  }

  @Test
  void plan_withoutARound_isTheCheapestOfTheOthers() {
    Grazing asNow = planner.asNow();
    Grazing dear = shares(0);
    assertThat(planner.cost(dear)).isGreaterThan(planner.cost(asNow));
    assertThat(planner.plan(0, asNow, dear)).isSameAs(asNow);
    assertThat(planner.plan(0, dear, asNow)).isSameAs(asNow);
    assertThat(planner.plan(0, dear, shares(0))).as("the first of equals").isSameAs(dear);
  }

  /** Ewes are better off than in any other way looked at, and stock without lambs makes room. */
  @Test
  void plan_putsEwesOnWeakClover_andOtherStockOnStrong() {
    Grazing asNow = planner.asNow();
    Grazing plan = planner.plan(asNow);
    assertThat(planner.cost(plan)).isLessThan(0.5 * planner.cost(asNow));
    int steers = 3;
    for (int k = 0; k < problem.halfMonths; k++) {
      assertThat(strength(plan, 0, k)).isLessThan(strength(asNow, 0, k));
      assertThat(strength(plan, steers, k)).isGreaterThan(strength(asNow, steers, k));
      for (int g = 0; g < problem.groups; g++) {
        assertThat(sum(plan, g, k)).isCloseTo(1, within(1e-6));
      }
    }
  }

  private double strength(Grazing grazing, int group, int k) {
    double sum = 0;
    for (int i = 0; i < problem.paddocks; i++) {
      sum += grazing.share(group, k, i) * setting.strength[i];
    }
    return sum;
  }

  private double sum(Grazing grazing, int group, int k) {
    double sum = 0;
    for (int i = 0; i < problem.paddocks; i++) {
      sum += grazing.share(group, k, i);
    }
    return sum;
  }

  /** At stake is a dollar or more, of lambs at the programme's first costs or of feed bought. */
  @Test
  void isAtStake_fromOneOfMoney_ofLambsOrOfFeed() {
    Losses losses = planner.losses();
    planner.plan(0, planner.asNow());
    int[] kinds = new int[2];
    for (double each : new double[] {1e-5, 1e-4, 1e-3, 0.01, 0.05, 0.1}) {
      Grazing grazing = shares(each);
      for (int g = 0; g < 2; g++) {
        double[][] chords = losses.chords(g, losses.safe(g));
        for (int k = 0; k < problem.halfMonths; k++) {
          double bought = (1 - 10 * each) * problem.pastureNeedMj[g][k] * run.pricePerMj();
          double lambs = each * sum(chords[k]);
          boolean expected = lambs + bought >= 1;
          assertThat(planner.isAtStake(g, k, grazing)).isEqualTo(expected);
          kinds[expected ? 1 : 0]++;
        }
      }
    }
    assertThat(kinds).doesNotContain(0);
    assertThat(planner.isAtStake(0, 2, shares(0))).as("all of it bought").isTrue();
  }

  /** Before a plan is made no lambs are counted, and feed bought is at stake from one of money. */
  @Test
  void isAtStake_ofFeedBought_goesByItsPrice() {
    for (int g = 0; g < 2; g++) {
      for (int k = 0; k < problem.halfMonths; k++) {
        double one = 1 / (problem.pastureNeedMj[g][k] * run.pricePerMj());
        assertThat(planner.isAtStake(g, k, shares((1 - 0.99 * one) / 10))).isFalse();
        assertThat(planner.isAtStake(g, k, shares((1 - 1.01 * one) / 10))).isTrue();
      }
    }
  }

  /** Drawn again, the costs lie half-way between those of safe feed and those of the answer. */
  @Test
  void costs_afterOneRound_areHalfWayToTheAnswers() {
    Grazing asNow = planner.asNow();
    Grazing found = planner.plan(1, asNow);
    assertThat(found).isNotSameAs(asNow);
    Losses losses = planner.losses();
    int looked = 0;
    for (int g = 0; g < 2; g++) {
      double[][] safe = losses.chords(g, losses.safe(g));
      double[][] there = losses.chords(g, losses.doses(g, found));
      for (int k = 0; k < problem.halfMonths; k++) {
        double[] half = new double[problem.paddocks];
        for (int i = 0; i < half.length; i++) {
          half[i] = (safe[k][i] + there[k][i]) / 2;
        }
        int weak = cheapest(half);
        for (int i = 0; i < half.length; i++) {
          if (half[weak] < 0.9 && half[i] > 2) {
            double part = (1 - half[weak]) / (half[i] - half[weak]);
            assertThat(planner.isAtStake(g, k, twoPaddocks(g, k, i, 0.999 * part, weak))).isFalse();
            assertThat(planner.isAtStake(g, k, twoPaddocks(g, k, i, 1.001 * part, weak))).isTrue();
            looked++;
          }
        }
      }
    }
    assertThat(looked).isGreaterThan(10);
  }

  private static int cheapest(double[] cost) {
    int least = 0;
    for (int i = 0; i < cost.length; i++) {
      least = cost[i] < cost[least] ? i : least;
    }
    return least;
  }

  private Grazing twoPaddocks(int group, int k, int paddock, double part, int other) {
    double[][][] share = new double[problem.groups][problem.halfMonths][problem.paddocks];
    share[group][k][paddock] = part;
    share[group][k][other] = 1 - part;
    return new Grazing(share);
  }

  @Test
  void plan_thatFindsNothingBetter_isTheOneItCameFrom() {
    Grazing best = planner.plan(planner.asNow());
    Planner again = new Planner(setting, setting.strength);
    assertThat(again.plan(1, best)).isSameAs(best);
  }

  /** With every paddock too strong, all that ewes need in their own weeks must be bought. */
  @Test
  void shortMj_whereNothingIsOpen_isAllThatEwesNeedInTheirWeeks() {
    Farm ewesOnly = FarmCopy.of(farm()).otherStock(List.of()).build();
    FarmModel other = new FarmModel(ewesOnly, RandomFarms.TABLES);
    JoiningCase shut =
        new JoiningCase(
            other,
            other.newRun(),
            STRONG,
            0,
            new ComingYear(other, other.newRun(), other.keepAll()));
    JoiningCalendar closed = new JoiningCalendar(shut);
    Planner strong = new Planner(shut, STRONG);
    double[][] need = strong.problem().pastureNeedMj;
    double[] expected = new double[problem.halfMonths];
    for (int k = 0; k < expected.length; k++) {
      for (int g = 0; g < 2; g++) {
        expected[k] += closed.isOpen(g, shut.halfMonths.get(k), 0) ? 0 : need[g][k];
      }
    }
    assertShort(strong.shortMj(closed, strong.asNow()), expected, 1);
    // What grazing as now buys anyway is not counted: here a tenth of every need, then all of it.
    double counted = 1 - 0.1 * (sum(need[0]) + sum(need[1])) / sum(expected);
    assertThat(counted).isBetween(0.1, 0.95);
    assertShort(strong.shortMj(closed, shares(0.09)), expected, counted);
    assertShort(strong.shortMj(closed, shares(0)), expected, 0);
  }

  private static void assertShort(double[] missing, double[] expected, double counted) {
    for (int k = 0; k < expected.length; k++) {
      assertThat(missing[k]).isCloseTo(counted * expected[k], within(1e-4 * expected[k] + 1e-3));
    }
  }

  @Test
  void shortMj_whereEverythingIsOpen_isNothing() {
    double[] none = new double[10];
    JoiningCase safe =
        new JoiningCase(model, run, none, 0, new ComingYear(model, run, model.keepAll()));
    Planner on = new Planner(safe, none);
    assertThat(sum(on.shortMj(new JoiningCalendar(safe), on.asNow()))).isCloseTo(0, within(1e-3));
  }
}
