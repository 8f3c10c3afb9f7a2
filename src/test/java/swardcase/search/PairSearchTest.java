package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.outcome.FarmModel;

/** Pairs among a few choices, so few that all are looked at, against every pair valued in full. */
class PairSearchTest {

  private static final double LEAST = 1e-3;
  private static final int CHOICES = 14;

  private int improved;
  private int nothingFound;

  /** About the best plan that single changes reach, where only pairs can gain, and about any. */
  @Test
  void improve_amongAFewChoices_takesTheBestPairFirst() {
    SplittableRandom random = new SplittableRandom(91);
    for (int round = 0; round < 150; round++) {
      FarmModel model = PlanFarms.model(PlanFarms.small(random, 5 + random.nextInt(4)));
      PlanTable table = new PlanTable(model, model.newRun(), List.of());
      int[] pick = table.pick(model.keepAll());
      if (round % 3 > 0) {
        new LocalSearch(table).improveSingly(pick);
      }
      check(table, pick, random);
    }
    assertThat(improved).isGreaterThan(20);
    assertThat(nothingFound).isGreaterThan(20);
  }

  private void check(PlanTable table, int[] pick, SplittableRandom random) {
    Position at = new Position(table);
    at.set(pick);
    double before = at.value();
    double[] gain = new double[table.choices()];
    Arrays.fill(gain, Double.NEGATIVE_INFINITY);
    for (int k = 0; k < CHOICES; k++) {
      int choice = random.nextInt(table.choices());
      at.attempt(choice);
      gain[choice] = at.triedGain(choice);
    }
    double most = most(table, pick, before, gain);
    boolean found = new PairSearch(table, at, LEAST).improve(gain);
    at.settle();
    if (most < LEAST - 1e-6) {
      nothingFound++;
      assertThat(found).isFalse();
      assertThat(at.value()).isEqualTo(before);
    } else if (most > LEAST + 1e-6) {
      improved++;
      assertThat(found).isTrue();
      assertThat(at.excess()).isZero();
      assertThat(at.value()).isGreaterThanOrEqualTo(before + most - 1e-6 * (1 + Math.abs(before)));
    }
  }

  /** The most that two of the choices gain together within the limits, all pairs tried. */
  private static double most(PlanTable table, int[] pick, double before, double[] gain) {
    double[] sums = new double[table.years() * table.sums()];
    double most = Double.NEGATIVE_INFINITY;
    for (int one = 0; one < gain.length; one++) {
      for (int two = one + 1; two < gain.length; two++) {
        boolean tried = Double.isFinite(gain[one]) && Double.isFinite(gain[two]);
        boolean changes = isChange(table, pick, one) && isChange(table, pick, two);
        if (!tried || !changes || table.paddock(one) == table.paddock(two)) {
          continue;
        }
        int[] changed = pick.clone();
        changed[table.paddock(one)] = one;
        changed[table.paddock(two)] = two;
        double value = table.value(changed, sums);
        if (table.excess(sums) == 0) {
          most = Math.max(most, value - before);
        }
      }
    }
    return most;
  }

  private static boolean isChange(PlanTable table, int[] pick, int choice) {
    return pick[table.paddock(choice)] != choice;
  }
}
