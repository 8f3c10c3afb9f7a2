package swardcase.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;

/**
 * The most that years can be worth at prices of their sums, against the worth of plans: feed and
 * ewes, less the sums at their prices.
 */
class YearCeilingTest {

  private static final int[] OF_FARM = {YearSums.WINTER, YearSums.OTHER, YearSums.HELD};
  private static final int[] OF_MOB = {
    YearSums.DOSE, YearSums.GRAZED, YearSums.DOSE_HELD, YearSums.GRAZED_HELD
  };

  /** A farm at drawn numbers, with its ceilings and prices of every sum that counts for them. */
  private static final class Case {

    final PlanTable table;
    final Run run;
    final YearCeiling[] year;
    final double[] price;
    final double[] state;

    Case(SplittableRandom random) {
      FarmModel model = PlanFarms.model(RandomFarms.any(random));
      run = model.newRun();
      run.set(RandomFarms.draw(model.inputs().all(), random));
      table = new PlanTable(model, run, List.of());
      year = new YearCeiling[table.years()];
      Arrays.setAll(year, t -> new YearCeiling(table, t));
      price = new double[table.years() * table.sums()];
      state = new double[price.length];
      for (int t = 0; t < table.years(); t++) {
        for (int sum : OF_FARM) {
          setPrice(t * table.sums() + sum, random);
        }
        for (int g = 0; g < run.mobs(); g++) {
          for (int sum : OF_MOB) {
            if (run.firstAlike(g) == g) {
              setPrice(t * table.sums() + YearSums.at(g, sum), random);
            }
          }
        }
      }
    }

    private void setPrice(int k, SplittableRandom random) {
      double size = 0;
      for (int c = 0; c < table.choices(); c++) {
        size = Math.max(size, Math.abs(table.added(c, k)));
      }
      price[k] = random.nextBoolean() || size == 0 ? 0 : random.nextDouble(-2000, 2000) / size;
    }

    double most(Span span, double[] about) {
      for (YearCeiling ceiling : year) {
        ceiling.setRanges(span);
        ceiling.clearWeights(about);
      }
      for (YearCeiling ceiling : year) {
        ceiling.shareOut(year);
      }
      double most = 0;
      for (YearCeiling ceiling : year) {
        ceiling.setLevel();
        most += ceiling.most(price, state);
      }
      return most;
    }

    /**
     * What a plan's years are worth apart from costs and margins, less its sums at their prices.
     */
    double worth(double[] sums) {
      double worth = table.value(sums);
      for (int t = 0; t < table.years(); t++) {
        int at = t * table.sums();
        double margin = sums[at + YearSums.MARGIN] - sums[at + YearSums.COST];
        worth -= table.discount(t) * margin;
      }
      for (int k = 0; k < price.length; k++) {
        worth -= price[k] * sums[k];
      }
      return worth;
    }

    double[] sums(int[] pick) {
      double[] sums = new double[table.years() * table.sums()];
      table.sum(pick, sums);
      return sums;
    }
  }

  @Test
  void most_overAllChoices_isNotBelowTheWorthOfAnyPlan() {
    SplittableRandom random = new SplittableRandom(101);
    for (int round = 0; round < 60; round++) {
      Case any = new Case(random);
      Span span = Span.all(any.table);
      new Reach(any.table, new PricedSums(any.table)).narrow(Open.all(any.table), span);
      double most = any.most(span, any.sums(PlanFarms.anyPick(any.table, random)));
      for (int draw = 0; draw < 60; draw++) {
        double worth = any.worth(any.sums(PlanFarms.anyPick(any.table, random)));
        assertThat(most).isGreaterThanOrEqualTo(worth - 1e-6 * (1 + Math.abs(worth)));
      }
    }
  }

  /** Where one plan is left the most is its worth, and its own sums are those it is reached at. */
  @Test
  void most_overOnePlan_isItsWorth() {
    SplittableRandom random = new SplittableRandom(102);
    for (int round = 0; round < 60; round++) {
      Case any = new Case(random);
      double[] sums = any.sums(PlanFarms.anyPick(any.table, random));
      double most = any.most(only(any, sums), sums);
      double worth = any.worth(sums);
      if (!any.run.runsMoreEwes()) {
        assertThat(most).isCloseTo(worth, within(1e-6 * (1 + Math.abs(worth))));
      }
      for (int t = 0; t < any.table.years(); t++) {
        for (int sum : OF_FARM) {
          int k = t * any.table.sums() + sum;
          assertThat(any.state[k]).isCloseTo(sums[k], within(1e-6 * (1 + Math.abs(sums[k]))));
        }
      }
    }
  }

  private static Span only(Case any, double[] sums) {
    Span span = Span.all(any.table);
    System.arraycopy(sums, 0, span.low(), 0, sums.length);
    System.arraycopy(sums, 0, span.high(), 0, sums.length);
    for (int t = 0; t < any.table.years(); t++) {
      for (int g = 0; g < any.run.mobs(); g++) {
        int from = t * any.table.sums();
        int at = g * any.table.years() + t;
        double strength = strength(sums, from, g, YearSums.DOSE, YearSums.GRAZED, 0);
        span.least()[at] = strength;
        span.most()[at] = strength;
        double held = strength(sums, from, g, YearSums.DOSE_HELD, YearSums.GRAZED_HELD, strength);
        span.leastHeld()[at] = held;
        span.mostHeld()[at] = held;
      }
    }
    return span;
  }

  private static double strength(
      double[] sums, int from, int g, int dose, int grazed, double otherwise) {
    double taken = sums[from + YearSums.at(g, grazed)];
    return taken > 0 ? sums[from + YearSums.at(g, dose)] / taken : otherwise;
  }
}
