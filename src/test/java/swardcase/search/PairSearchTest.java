package swardcase.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.outcome.FarmModel;
import swardcase.search.Aim.Gain;

/** Pairs among a few choices, so few that all are looked at, against every pair valued in full. */
class PairSearchTest {

  private static final double LEAST = 1e-3;
  private static final int CHOICES = 14;

  private int improved;
  private int nothingFound;

  /** About the best plan that single changes reach, where only pairs can gain, and about any. */
  @Test
  void withinLimits_amongAFewChoices_holdsTheBestPair() {
    SplittableRandom random = new SplittableRandom(91);
    for (int round = 0; round < 150; round++) {
      FarmModel model = PlanFarms.model(PlanFarms.small(random, 5 + random.nextInt(4)));
      PlanTable table = new PlanTable(model, model.newRun(), List.of());
      DrawnSample sample = DrawnSample.of(table, model.newRun());
      Aim aim = new Aim(table, Double.POSITIVE_INFINITY, 0);
      int[] pick = table.pick(model.keepAll());
      if (round % 3 > 0) {
        new Climb(aim, sample, LEAST).improve(pick, Change.each(table));
      }
      check(table, sample, aim, pick, random);
    }
    assertThat(improved).isGreaterThan(20);
    assertThat(nothingFound).isGreaterThan(20);
  }

  private void check(
      PlanTable table, DrawnSample sample, Aim aim, int[] pick, SplittableRandom random) {
    List<Change> tried =
        IntStream.range(0, CHOICES)
            .map(k -> random.nextInt(table.choices()))
            .distinct()
            .mapToObj(Change::of)
            .toList();
    List<Change> pairs = new PairSearch(table, pick).withinLimits(aim.gains(sample, pick, tried));
    double most = mostGained(aim, sample, pick, pairs);
    double mostOfAll = mostGained(aim, sample, pick, everyPair(table, pick, tried));
    if (mostOfAll > LEAST) {
      improved++;
      assertThat(most).isGreaterThanOrEqualTo(mostOfAll - 1e-6 * (1 + mostOfAll));
    } else {
      nothingFound++;
      assertThat(most).isLessThanOrEqualTo(LEAST);
    }
  }

  private static double mostGained(Aim aim, DrawnSample sample, int[] pick, List<Change> changes) {
    return aim.gains(sample, pick, changes).stream()
        .mapToDouble(Gain::gain)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** Two of the choices together within the limits. */
  private static List<Change> everyPair(PlanTable table, int[] pick, List<Change> tried) {
    return IntStream.range(0, tried.size())
        .boxed()
        .flatMap(
            i -> tried.subList(0, i).stream().map(one -> new Change(one.one(), tried.get(i).one())))
        .filter(pair -> table.paddock(pair.one()) != table.paddock(pair.two()))
        .filter(pair -> isChange(table, pick, pair.one()) && isChange(table, pick, pair.two()))
        .filter(pair -> table.fits(table.with(table.plan(pick), pair)))
        .toList();
  }

  private static boolean isChange(PlanTable table, int[] pick, int choice) {
    return pick[table.paddock(choice)] != choice;
  }
}
