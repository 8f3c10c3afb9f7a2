package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Changes of one and of two paddocks, and what limits leave room for. */
class LocalSearchTest {

  private static final double GAIN = 1e-3;

  private static double[] sumsOf(PlanTable table) {
    return new double[table.years() * table.sums()];
  }

  @Test
  void triedGain_ofOneAndOfTwoChoices_isTheDifferenceOfValues() {
    SplittableRandom random = new SplittableRandom(61);
    for (int round = 0; round < 40; round++) {
      PlanTable table = PlanFarms.anyTable(random);
      int[] pick = PlanFarms.anyPick(table, random);
      int[] other = PlanFarms.anyPick(table, random);
      Position at = new Position(table);
      at.set(pick);
      double before = table.value(pick, sumsOf(table));
      assertThat(at.value()).isEqualTo(before);
      int one = random.nextInt(pick.length);
      at.attempt(other[one]);
      double gained = at.triedGain(other[one]);
      pick[one] = other[one];
      double after = table.value(pick, sumsOf(table));
      assertThat(gained).isCloseTo(after - before, within(1e-6 * (1 + Math.abs(before))));
      if (pick.length > 1) {
        int two = (one + 1) % pick.length;
        at.attempt(other[one], other[two]);
        double both = at.triedGain(other[one], other[two]);
        pick[two] = other[two];
        double afterBoth = table.value(pick, sumsOf(table));
        assertThat(both).isCloseTo(afterBoth - before, within(1e-6 * (1 + Math.abs(before))));
      }
    }
  }

  @Test
  void improve_anyPick_keepsWithinTheLimitsAndLeavesNoChangeOfOnePaddockThatGains() {
    SplittableRandom random = new SplittableRandom(62);
    int improved = 0;
    for (int round = 0; round < 60; round++) {
      PlanTable table = PlanFarms.anyTable(random);
      LocalSearch local = new LocalSearch(table);
      int[] pick = PlanFarms.anyPick(table, random);
      double[] sums = sumsOf(table);
      double before = table.value(pick, sums);
      boolean within = table.excess(sums) == 0;
      double value = local.improve(pick);
      if (value == Double.NEGATIVE_INFINITY) {
        continue;
      }
      improved++;
      assertThat(table.value(pick, sums)).isEqualTo(value);
      assertThat(table.excess(sums)).isZero();
      assertThat(value).isGreaterThanOrEqualTo(within ? before - 1e-6 : Double.NEGATIVE_INFINITY);
      for (int c = 0; c < table.choices(); c++) {
        int[] changed = pick.clone();
        changed[table.paddock(c)] = c;
        double there = table.value(changed, sums);
        if (table.excess(sums) == 0) {
          assertThat(there).isLessThanOrEqualTo(value + GAIN + 1e-9 * Math.abs(value));
        }
      }
    }
    assertThat(improved).isGreaterThan(30);
  }
}
