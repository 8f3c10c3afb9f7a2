package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.chance.CountedRandom;
import swardcase.chance.Sample;
import swardcase.farm.SeasonGrowth;
import swardcase.outcome.Draw;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;

/**
 * Drawing the season type of each year leaves the mean where averaging over season types puts it.
 */
class SeasonsTest {

  /** Law of total expectation, exactly: money is a sum over years, and each year has one season. */
  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "large-farm"})
  void value_averagedOverTheSeasonOfEveryYear_isThatOfTheMeanSeason(String name) {
    Farms farm = Farms.of(name);
    Draws draws = new Draws(farm.model(), 2, 20, 2);
    CountedRandom random = new CountedRandom(0);
    Draw draw = new Draw(farm.model());
    List<SeasonGrowth> types = farm.model().farm().feedYear().seasons();
    OutcomeFunction run = farm.model().newRun();
    Outcome outcome = farm.model().newOutcome();
    for (int d = 0; d < draws.count(); d++) {
      fill(draws, d, random, draw);
      double mean = 0;
      for (int season = 0; season < types.size(); season++) {
        Arrays.fill(draw.seasons, season);
        run.set(draw);
        run.evaluate(farm.plan(), outcome);
        mean += types.get(season).chance().likely() * outcome.npv();
      }
      Arrays.fill(draw.seasons, types.size());
      run.set(draw);
      run.evaluate(farm.plan(), outcome);
      assertThat(mean).isCloseTo(outcome.npv(), within(1e-9 * (1e3 + Math.abs(mean))));
    }
  }

  /** The same as a simulation sees it: the mean difference lies within three of its errors of 0. */
  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "large-farm"})
  void value_withDrawnSeasons_hasTheMeanOfAveragedOnes(String name) {
    Farms farm = Farms.of(name);
    Draws draws = new Draws(farm.model(), 3, 20, 20);
    CountedRandom random = new CountedRandom(0);
    Draw draw = new Draw(farm.model());
    OutcomeFunction run = farm.model().newRun();
    Outcome outcome = farm.model().newOutcome();
    double[] difference = new double[draws.count()];
    for (int d = 0; d < draws.count(); d++) {
      fill(draws, d, random, draw);
      run.set(draw);
      run.evaluate(farm.plan(), outcome);
      difference[d] = outcome.npv();
      Arrays.fill(draw.seasons, farm.model().farm().feedYear().seasons().size());
      run.set(draw);
      run.evaluate(farm.plan(), outcome);
      difference[d] -= outcome.npv();
    }
    double error = draws.uniforms().standardError(difference);
    assertThat(error).isPositive();
    assertThat(Sample.mean(difference)).isCloseTo(0, within(3 * error));
  }

  /** Every sowing takes, so that seasons bear on feed alone. */
  private static void fill(Draws draws, int d, CountedRandom random, Draw draw) {
    draws.fill(d, 0, random, draw);
    for (double[] luck : draw.luck) {
      Arrays.fill(luck, 0);
    }
  }
}
