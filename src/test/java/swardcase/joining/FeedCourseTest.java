package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.feed.FeedResult;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/** Means over the season types, taken from the seasons themselves. */
class FeedCourseTest {

  @Test
  void course_ofAnyFarm_isTheMeanOfItsSeasons() {
    SplittableRandom random = new SplittableRandom(61);
    for (int round = 0; round < 30; round++) {
      Farm farm = RandomFarms.any(random);
      FarmModel model = new FarmModel(farm, RandomFarms.TABLES);
      OutcomeFunction run = model.newRun();
      FeedCourse course = new FeedCourse(model, run);
      FeedResult[] seasons = new FeedResult[3];
      for (int s = 0; s < 3; s++) {
        seasons[s] = new FeedResult();
        run.feedYear(s, run.winterGrowthNow(), seasons[s]);
      }
      double met = 1 - farm.management().conditionDeficit().likely();
      for (int half = 0; half < HalfMonths.COUNT; half++) {
        int p = half;
        double grown = mean(farm, s -> seasons[s].growthKgDmPerHa[p]);
        double end = mean(farm, s -> seasons[s].greenKgDmPerHa[p] + seasons[s].dryKgDmPerHa[p]);
        double decayed = mean(farm, s -> seasons[s].decayedKgDmPerHa[p]);
        double eaten =
            mean(farm, s -> seasons[s].eatenGreenKgDmPerHa[p] + seasons[s].eatenDryKgDmPerHa[p]);
        double eatenMj = mean(farm, s -> seasons[s].eatenMjPerHa[p]);
        double need = mean(farm, s -> seasons[s].demandMjPerHa[p]);
        double bought = mean(farm, s -> seasons[s].boughtMjPerHa[p]);
        assertNear(course.grownKg(p), grown);
        assertNear(course.endKg(p), end);
        assertNear(course.kept(p), end + decayed > 0 ? end / (end + decayed) : 1);
        assertNear(course.energyMjPerKg(p), eaten > 0 ? eatenMj / eaten : 0);
        assertNear(
            course.pastureShare(p), need > 0 ? met * Math.max(0, 1 - bought / (need * met)) : 0);
        assertThat(course.pastureShare(p)).isBetween(0.0, 1.0);
        assertThat(course.kept(p)).isBetween(0.0, 1.0);
      }
    }
  }

  private static double mean(Farm farm, IntToDoubleFunction ofSeason) {
    double sum = 0;
    for (int s = 0; s < 3; s++) {
      sum += farm.feedYear().seasons().get(s).chance().likely() * ofSeason.applyAsDouble(s);
    }
    return sum;
  }

  private static void assertNear(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
  }
}
