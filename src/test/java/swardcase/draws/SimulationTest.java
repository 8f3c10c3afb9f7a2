package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.RandomFarms;
import swardcase.chance.Sample;
import swardcase.farm.Farm;
import swardcase.money.NetPresentValue;
import swardcase.outcome.FarmModel;
import swardcase.outcome.MoneyKind;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.PlanFarms;

class SimulationTest {

  private static final int RANDOM_FARMS = 25;

  /** What is read beside the outcomes: two numbers of the run, and one that was drawn. */
  private static final class Few implements Measures {

    @Override
    public int size() {
      return 3;
    }

    @Override
    public void read(OutcomeFunction run, double[] numbers, double[] into) {
      into[0] = run.winterGrowthNow();
      into[1] = run.pricePerMj();
      into[2] = numbers[0];
    }
  }

  private static Simulation simulate(Farms farm, long seed, int perBlock) {
    return Simulation.of(
        new Draws(farm.model(), seed, 20, perBlock), farm.alternatives(), Few::new, share -> {});
  }

  private static Farms any(int k) {
    SplittableRandom random = new SplittableRandom(3000 + k);
    int paddocks = 1 + random.nextInt(3);
    Farm farm = k % 2 == 0 ? RandomFarms.any(random, paddocks) : PlanFarms.small(random, paddocks);
    return Farms.of(new FarmModel(farm, RandomFarms.TABLES));
  }

  private static double rounding(double of) {
    return 1e-9 * (1e4 + Math.abs(of));
  }

  /** Each plan in each draw once more, by a farm set to it, and added up. */
  private static void checkMeans(Farms farm, Simulation simulation) {
    Alternatives alternatives = simulation.alternatives();
    FarmModel model = farm.model();
    Draws draws = simulation.draws();
    DrawnFarm drawn = new DrawnFarm(model);
    Outcome[] mean = new Outcome[alternatives.size()];
    for (int k = 0; k < mean.length; k++) {
      mean[k] = model.newOutcome();
    }
    double[] read = new double[3];
    Outcome one = model.newOutcome();
    for (int d = 0; d < draws.count(); d++) {
      OutcomeFunction run = drawn.set(draws, d);
      for (int k = 0; k < mean.length; k++) {
        run.evaluate(alternatives.plan(k), one);
        mean[k].add(one, 1.0 / draws.count());
        assertThat(simulation.npv(k)[d]).isCloseTo(one.npv(), within(rounding(one.npv())));
        if (k == Alternatives.PLAN) {
          assertThat(simulation.cashFlow(d)).isEqualTo(one.cashFlow());
        }
      }
      new Few().read(run, drawn.draw().numbers, read);
      for (int m = 0; m < read.length; m++) {
        assertThat(simulation.measured(m)[d]).isEqualTo(read[m]);
      }
    }
    double rate = model.farm().finance().discountRate().likely();
    for (int k = 0; k < mean.length; k++) {
      Outcome actual = simulation.mean(k);
      for (int t = 0; t < actual.years(); t++) {
        for (MoneyKind kind : MoneyKind.values()) {
          double money = mean[k].money(kind, t);
          assertThat(actual.money(kind, t)).isCloseTo(money, within(rounding(money)));
        }
        assertThat(actual.lambs(t)).isCloseTo(mean[k].lambs(t), within(1e-6));
        assertThat(actual.ewesInLamb(t)).isCloseTo(mean[k].ewesInLamb(t), within(1e-6));
      }
      double npv = Sample.mean(simulation.npv(k));
      assertThat(actual.npv()).isCloseTo(npv, within(rounding(npv)));
      assertThat(NetPresentValue.of(rate, actual.cashFlow())).isCloseTo(npv, within(rounding(npv)));
    }
  }

  private static void checkShares(Farms farm, Simulation simulation) {
    Alternatives alternatives = simulation.alternatives();
    Draws draws = simulation.draws();
    DrawnFarm drawn = new DrawnFarm(farm.model());
    for (int i = 0; i < alternatives.paddocks(); i++) {
      for (int c = 1; c < alternatives.choices(i).size(); c++) {
        Plan plan = alternatives.plan(alternatives.place(i, c));
        double[] mean = new double[farm.model().years()];
        double[] clover = new double[mean.length];
        for (int d = 0; d < draws.count(); d++) {
          OutcomeFunction run = drawn.set(draws, d);
          for (int t = 0; t < mean.length; t++) {
            mean[t] += run.oldShare(plan, i, t) / draws.count();
            clover[t] += run.cloverShare(plan, i, t) / draws.count();
          }
        }
        for (int t = 0; t < mean.length; t++) {
          assertThat(simulation.oldShare(i, c, t))
              .as("paddock %s, choice %s, year %s", i, c, t)
              .isCloseTo(mean[t], within(1e-9));
          assertThat(simulation.cloverShare(i, c, t)).isCloseTo(clover[t], within(1e-9));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "northern-farm", "current-farm", "risky-farm"})
  void means_ofADemoFarm_areThoseOfTheDrawsOneByOne(String name) {
    Farms farm = Farms.of(name);
    Simulation simulation = simulate(farm, 3, 3);
    checkMeans(farm, simulation);
    checkShares(farm, simulation);
  }

  @Test
  void means_ofAnyFarm_areThoseOfTheDrawsOneByOne() {
    int acting = 0;
    for (int k = 0; k < RANDOM_FARMS; k++) {
      Farms farm = any(k);
      Simulation simulation = simulate(farm, k, 2);
      checkMeans(farm, simulation);
      checkShares(farm, simulation);
      acting += farm.plan().equals(farm.model().keepAll()) ? 0 : 1;
    }
    assertThat(acting).isGreaterThan(5);
  }

  private static void assertSameBits(Simulation one, Simulation other) {
    for (int k = 0; k < one.alternatives().size(); k++) {
      assertThat(one.npv(k)).isEqualTo(other.npv(k));
      assertThat(one.costPerHa(k)).isEqualTo(other.costPerHa(k));
      assertThat(one.mean(k).cashFlow()).isEqualTo(other.mean(k).cashFlow());
      assertThat(one.mean(k).npv()).isEqualTo(other.mean(k).npv());
      for (int t = 0; t < one.mean(k).years(); t++) {
        assertThat(one.mean(k).oldShare(t)).isEqualTo(other.mean(k).oldShare(t));
      }
    }
    for (int m = 0; m < 3; m++) {
      assertThat(one.measured(m)).isEqualTo(other.measured(m));
    }
  }

  /** Seven tasks, so that several threads have several each. */
  @Test
  void of_oneThreadOrMany_givesTheSameBits() {
    Farms farm = Farms.of("current-farm");
    Simulation many = new ForkJoinPool(7).submit(() -> simulate(farm, 3, 16)).join();
    Simulation one = new ForkJoinPool(1).submit(() -> simulate(farm, 3, 16)).join();
    assertSameBits(one, many);
    assertThat(simulate(farm, 4, 16).npv(Alternatives.KEEP_ALL + 1))
        .isNotEqualTo(many.npv(Alternatives.KEEP_ALL + 1));
  }

  @Test
  void measured_byThemselves_areThoseReadBesideTheOutcomes() {
    Farms farm = Farms.of("current-farm");
    Simulation simulation = simulate(farm, 5, 2);
    double[][] alone = Simulation.measured(simulation.draws(), Few::new);
    assertThat(alone.length).isEqualTo(3);
    for (int m = 0; m < alone.length; m++) {
      assertThat(alone[m]).isEqualTo(simulation.measured(m));
    }
  }

  @Test
  void of_keepingEverything_bringsNothingInAnyDraw() {
    Simulation simulation = simulate(Farms.of("current-farm"), 3, 5);
    assertThat(simulation.npv(Alternatives.KEEP_ALL)).containsOnly(0);
    assertThat(simulation.mean(Alternatives.KEEP_ALL).cashFlow()).containsOnly(0);
  }

  @Test
  void places_ofAPaddocksChoices_areThePlansWithThem() {
    for (int k = 0; k < RANDOM_FARMS; k++) {
      Farms farm = any(k);
      Alternatives alternatives = farm.alternatives();
      Plan plan = alternatives.plan(Alternatives.PLAN);
      assertThat(plan).isEqualTo(farm.plan());
      assertThat(alternatives.plan(Alternatives.KEEP_ALL)).isEqualTo(farm.model().keepAll());
      for (int i = 0; i < alternatives.paddocks(); i++) {
        assertThat(alternatives.choices(i).get(0).action()).isEqualTo(farm.model().keep());
        assertThat(alternatives.choices(i)).doesNotHaveDuplicates();
        for (int c = 0; c < alternatives.choices(i).size(); c++) {
          var choice = alternatives.choices(i).get(c);
          assertThat(alternatives.plan(alternatives.place(i, c)))
              .isEqualTo(plan.with(i, choice.action(), choice.start()));
        }
        int planned = alternatives.isActedOn(i) ? 1 : 0;
        assertThat(alternatives.place(i, planned))
            .isEqualTo(
                plan.equals(farm.model().keepAll()) && planned == 0
                    ? alternatives.place(i, 0)
                    : Alternatives.PLAN);
        assertThat(alternatives.fits(alternatives.place(i, planned))).isTrue();
      }
    }
  }
}
