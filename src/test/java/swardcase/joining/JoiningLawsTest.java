package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.OtherCurrency;
import swardcase.OtherHemisphere;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.reproduction.ByFormula;
import swardcase.tables.ResponseStory;

/** What must hold for the joining of any farm that joins ewes. */
class JoiningLawsTest {

  private static final int FARMS = 60;
  private static final double TIMES = 4;

  private interface Law {
    void check(Farm farm, SplittableRandom random);
  }

  private static void forAnyFarm(long seed, Law law) {
    AtomicInteger checked = new AtomicInteger();
    for (int k = 0; k < FARMS; k++) {
      SplittableRandom random = new SplittableRandom(1000 * seed + k);
      Farm farm = RandomFarms.any(random, 1 + random.nextInt(4));
      if (farm.ewesJoined() > 0) {
        law.check(farm, random);
        checked.incrementAndGet();
      }
    }
    assertThat(checked).hasValueGreaterThan(FARMS * 3 / 4);
  }

  private static JoiningCase setting(Farm farm) {
    return setting(new FarmModel(farm, RandomFarms.TABLES));
  }

  private static JoiningCase setting(FarmModel model) {
    OutcomeFunction run = model.newRun();
    return new JoiningCase(
        model,
        run,
        JoiningCase.cautiousStrength(model, run),
        0,
        new ComingYear(model, run, model.keepAll()));
  }

  private static Planner planner(JoiningCase setting) {
    return new Planner(setting, setting.strength);
  }

  @Test
  void plan_ofAnyFarm_costsNoMoreThanTheOtherWays() {
    forAnyFarm(
        1,
        (farm, random) -> {
          JoiningCase setting = setting(farm);
          Planner planner = planner(setting);
          Grazing asNow = planner.asNow();
          Grazing avoiding = planner.avoiding(new JoiningCalendar(setting));
          double cost = planner.cost(planner.plan(asNow, avoiding));
          assertThat(cost).isNotNegative();
          assertThat(cost).isLessThanOrEqualTo(planner.cost(asNow));
          assertThat(cost).isLessThanOrEqualTo(planner.cost(avoiding));
        });
  }

  @Test
  void plan_ofAnyFarm_feedsEveryGroup() {
    forAnyFarm(
        2,
        (farm, random) -> {
          JoiningCase setting = setting(farm);
          Planner planner = planner(setting);
          GrazingProblem problem = planner.problem();
          Grazing plan = planner.plan(planner.asNow());
          for (int g = 0; g < problem.groups; g++) {
            for (int k = 0; k < problem.halfMonths; k++) {
              if (problem.pastureNeedMj[g][k] == 0) {
                continue;
              }
              double sum = plan.bought(g, k);
              assertThat(sum).isBetween(-1e-6, 1 + 1e-6);
              for (int i = 0; i < problem.paddocks; i++) {
                assertThat(plan.share(g, k, i)).isBetween(-1e-9, 1 + 1e-6);
                sum += plan.share(g, k, i);
              }
              assertThat(sum).isCloseTo(1, within(1e-6));
            }
          }
        });
  }

  @Test
  void losses_ofOneWayOfGrazing_neverRiseWhenAPaddockGetsSafer() {
    forAnyFarm(
        3,
        (farm, random) -> {
          JoiningCase setting = setting(farm);
          Grazing grazing = planner(setting).asNow();
          double[] strength = setting.strength.clone();
          double before = setting.losses(strength).lambs(grazing);
          strength[random.nextInt(strength.length)] *= random.nextDouble();
          assertThat(setting.losses(strength).lambs(grazing)).isLessThanOrEqualTo(before + 1e-9);
        });
  }

  @Test
  void leastCost_whenAPaddockIsMadeSafe_neverRises() {
    forAnyFarm(
        4,
        (farm, random) -> {
          JoiningCase setting = setting(farm);
          Planner now = planner(setting);
          Grazing best = now.plan(now.asNow());
          double[] strength = setting.strength.clone();
          strength[random.nextInt(strength.length)] = 0;
          Planner safer = new Planner(setting, strength);
          assertThat(safer.cost(safer.plan(best))).isLessThanOrEqualTo(now.cost(best) + 1e-6);
        });
  }

  @Test
  void lambsLost_onCloverWithoutFormononetin_areTooFewToTell() {
    forAnyFarm(
        5,
        (farm, random) -> {
          JoiningCase setting = setting(farm);
          Planner none = new Planner(setting, new double[setting.paddocks()]);
          // What was eaten more than eight weeks before is all that is left.
          assertThat(none.losses().lambs(none.asNow())).isBetween(0.0, 0.003 * farm.ewesJoined());
          JoiningCalendar calendar = new JoiningCalendar(setting);
          for (int i = 0; i < setting.paddocks(); i++) {
            JoiningCalendar safe = calendar.with(i, 0);
            for (int g = 0; g < setting.mobs(); g++) {
              for (int p = 0; p < HalfMonths.COUNT; p++) {
                assertThat(safe.isOpen(g, p, i)).isTrue();
              }
            }
          }
        });
  }

  @Test
  void cost_moneyInAnotherCurrency_isTheSameInIt() {
    forAnyFarm(
        6,
        (farm, random) -> {
          Planner here = planner(setting(farm));
          Planner there = planner(setting(new OtherCurrency(TIMES).model(farm)));
          Grazing plan = here.plan(here.asNow());
          double cost = here.cost(plan);
          double rounding = 1e-6 * Math.max(1, cost);
          assertThat(there.cost(plan)).isCloseTo(TIMES * cost, within(rounding));
          assertThat(there.cost(there.plan(there.asNow())))
              .isCloseTo(TIMES * cost, within(0.01 * TIMES * cost + rounding));
        });
  }

  @Test
  void cost_paddocksInAnotherOrder_isTheSame() {
    forAnyFarm(
        7,
        (farm, random) -> {
          List<Paddock> paddocks = new ArrayList<>(farm.paddocks());
          Collections.shuffle(paddocks, new Random(random.nextLong()));
          Planner one = planner(setting(farm));
          Planner other = planner(setting(FarmCopy.of(farm).paddocks(paddocks).build()));
          double cost = one.cost(one.asNow());
          assertThat(other.cost(other.asNow())).isCloseTo(cost, within(1e-6 * Math.max(1, cost)));
        });
  }

  /**
   * Half a year on, February stands where August stood, three days shorter, which can put a tenth
   * of a joining into the next half-month and its dose; over many farms that evens out.
   */
  @Test
  void lambsLost_seasonsHalfAYearLater_areTheSame() {
    double[] all = new double[2];
    forAnyFarm(
        8,
        (farm, random) -> {
          Planner here = planner(setting(farm));
          Planner there = planner(setting(OtherHemisphere.of(farm)));
          double lambs = here.losses().lambs(here.asNow());
          double then = there.losses().lambs(there.asNow());
          assertThat(then).isCloseTo(lambs, within(0.15 * lambs + 0.001 * farm.ewesJoined()));
          all[0] += lambs;
          all[1] += then;
        });
    assertThat(all[1]).isCloseTo(all[0], within(0.02 * all[0]));
  }

  /** The calendar's points and barren ewes by their short ways, and dose by dose. */
  @Test
  void measures_ofAnyRun_areThoseOfTheWholeDoseResponse() {
    forAnyFarm(
        11,
        (farm, random) -> {
          FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
          JoiningCase setting = setting(model);
          JoiningMeasures measures =
              new JoiningMeasures(setting, List.of(planner(setting).asNow()));
          double[] x = RandomFarms.draw(model.inputs().all(), random);
          OutcomeFunction run = model.newRun();
          run.set(x);
          double[] read = new double[measures.size()];
          measures.read(run, x, read);
          for (int i = 0; i < setting.paddocks(); i++) {
            double[] year = new double[HalfMonths.COUNT];
            for (int p = 0; p < year.length; p++) {
              year[p] = run.greenDose(i) * run.greenShare(p);
            }
            for (int g = 0; g < setting.mobs(); g++) {
              for (int p : setting.halfMonths) {
                double[] stay = new double[HalfMonths.COUNT];
                stay[p] = year[p];
                double expected = Losses.points(run, g, stay, setting.joiningDay[g]);
                assertThat(read[measures.points(g, p, i)])
                    .isCloseTo(setting.matters(g, p) ? expected : 0, within(1e-9));
              }
            }
            ResponseStory story = ResponseStory.of(value(model, x, ResponseStory.KEY));
            String as = story == ResponseStory.OUTBREAKS ? "-outbreaks" : "";
            double exposure =
                ByFormula.seasonExposure(
                    year,
                    value(model, x, "oestrogen.d50" + as),
                    value(model, x, "oestrogen.steepness"),
                    value(model, x, "oestrogen.sterility-reference-dose"));
            double q = value(model, x, "oestrogen.sterility-q" + as);
            double barren = 100 * ByFormula.sterileShare(exposure, q);
            assertThat(read[measures.barren(i)])
                .isCloseTo(story == ResponseStory.NONE ? 0 : barren, within(1e-9));
          }
        });
  }

  private static double value(FarmModel model, double[] x, String parameter) {
    return x[model.inputs().all().indexOf(RandomFarms.TABLES.parameter(parameter))];
  }
}
