package swardcase.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is left for the sums of plans: no plan that counts may lie outside. */
class ReachTest {

  private static final int TABLES = 25;

  private static double[] sumsOf(PlanTable table, int[] pick) {
    double[] sums = new double[table.years() * table.sums()];
    table.sum(pick, sums);
    return sums;
  }

  private static double lowest(PlanTable table, int k) {
    double sum = 0;
    for (int i = 0; i < table.paddocks(); i++) {
      double least = Double.POSITIVE_INFINITY;
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        least = Math.min(least, table.added(c, k));
      }
      sum += least;
    }
    return sum;
  }

  private static void assertInside(double value, double low, double high) {
    double slack = 1e-6 * (1 + Math.abs(value));
    assertThat(value).isBetween(low - slack, high + slack);
  }

  @Test
  void narrow_toAllChoices_leavesWhatTheirEndsAddUpTo() {
    SplittableRandom random = new SplittableRandom(81);
    for (int round = 0; round < TABLES; round++) {
      PlanTable table = PlanFarms.anyTable(random);
      PricedSums priced = new PricedSums(table);
      Reach reach = new Reach(table, priced);
      Span span = Span.all(table);
      assertThat(reach.narrow(Open.all(table), span)).isTrue();
      assertThat(reach.narrow(Open.all(table), span)).as("again").isTrue();
      for (int j = 0; j < priced.size(); j++) {
        int k = priced.place(j);
        double lowest = lowest(table, k);
        assertThat(span.low()[k]).isCloseTo(lowest, within(1e-9 * (1 + Math.abs(lowest))));
        for (int draw = 0; draw < 10; draw++) {
          assertInside(
              sumsOf(table, PlanFarms.anyPick(table, random))[k], span.low()[k], span.high()[k]);
        }
      }
    }
  }

  @Test
  void narrow_whereASumCannotGo_leavesNothing() {
    SplittableRandom random = new SplittableRandom(82);
    for (int round = 0; round < TABLES; round++) {
      PlanTable table = PlanFarms.anyTable(random);
      Reach reach = new Reach(table, new PricedSums(table));
      Span span = Span.all(table);
      span.high()[YearSums.WINTER] = lowest(table, YearSums.WINTER) - 1;
      assertThat(reach.narrow(Open.all(table), span)).isFalse();
    }
  }

  /** Strengths too: dose over feed grazed, of every mob in every year. */
  @Test
  void narrowToLimits_everyPlanWithinTheLimits_liesInside() {
    SplittableRandom random = new SplittableRandom(83);
    int within = 0;
    int narrower = 0;
    for (int round = 0; round < TABLES; round++) {
      PlanTable table = PlanFarms.anyTable(random);
      Reach reach = new Reach(table, new PricedSums(table));
      Span span = Span.all(table);
      reach.narrow(Open.all(table), span);
      Span before = span.copy();
      reach.narrowToLimits(Open.all(table), span);
      for (int k = 0; k < span.low().length; k++) {
        narrower += span.low()[k] > before.low()[k] + 1e-6 ? 1 : 0;
        narrower += span.high()[k] < before.high()[k] - 1e-6 ? 1 : 0;
      }
      for (int draw = 0; draw < 40; draw++) {
        double[] sums = sumsOf(table, PlanFarms.anyPick(table, random));
        if (table.excess(sums) == 0) {
          within++;
          assertInside(table, sums, span);
        }
      }
    }
    assertThat(within).isPositive();
    assertThat(narrower).isPositive();
  }

  private static void assertInside(PlanTable table, double[] sums, Span span) {
    for (int t = 0; t < table.years(); t++) {
      int from = t * table.sums();
      for (int sum : new int[] {YearSums.WINTER, YearSums.OTHER, YearSums.HELD}) {
        assertInside(sums[from + sum], span.low()[from + sum], span.high()[from + sum]);
      }
      for (int g = 0; g < table.run().mobs(); g++) {
        double grazed = sums[from + YearSums.at(g, YearSums.GRAZED)];
        double grazedHeld = sums[from + YearSums.at(g, YearSums.GRAZED_HELD)];
        int at = g * table.years() + t;
        if (grazed > 1e-9) {
          double strength = sums[from + YearSums.at(g, YearSums.DOSE)] / grazed;
          assertInside(strength, span.least()[at], span.most()[at]);
        }
        if (grazedHeld > 1e-9) {
          double strength = sums[from + YearSums.at(g, YearSums.DOSE_HELD)] / grazedHeld;
          assertInside(strength, span.leastHeld()[at], span.mostHeld()[at]);
        }
      }
    }
  }

  @Test
  void narrowToSide_everyPlanOnThatSide_liesInside() {
    SplittableRandom random = new SplittableRandom(84);
    for (int round = 0; round < TABLES; round++) {
      PlanTable table = PlanFarms.anyTable(random);
      Reach reach = new Reach(table, new PricedSums(table));
      Span reached = Span.all(table);
      reach.narrow(Open.all(table), reached);
      int k = random.nextInt(table.years()) * table.sums() + YearSums.WINTER;
      double middle = (reached.low()[k] + reached.high()[k]) / 2;
      Span below = reached.copy();
      Span above = reached.copy();
      assertThat(reach.narrowToSide(Open.all(table), k, middle, true, below)).isTrue();
      assertThat(reach.narrowToSide(Open.all(table), k, middle, false, above)).isTrue();
      assertThat(below.high()[k]).isLessThanOrEqualTo(middle);
      assertThat(above.low()[k]).isGreaterThanOrEqualTo(middle);
      for (int draw = 0; draw < 40; draw++) {
        double[] sums = sumsOf(table, PlanFarms.anyPick(table, random));
        assertInside(table, sums, sums[k] <= middle ? below : above);
      }
      Span nothing = reached.copy();
      double out = reached.low()[k] - 1;
      assertThat(reach.narrowToSide(Open.all(table), k, out, true, nothing)).isFalse();
    }
  }
}
