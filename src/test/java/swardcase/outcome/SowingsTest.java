package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.ActionNumber;
import swardcase.farm.Farm;
import swardcase.farm.SeasonType;

/** A sowing takes or fails in each draw, by paddock and year; what fails is sown again. */
class SowingsTest {

  private static final Farm FARM = RandomFarms.demo("mixed-farm");
  private final FarmModel model = new FarmModel(FARM, RandomFarms.TABLES);
  private final OutcomeFunction function = model.newRun();
  private final Outcome outcome = model.newOutcome();
  private final Draw draw = new Draw(model);
  private final int sow = action("spray-fallow");
  private final Plan plan = model.keepAll().with(0, sow, 1);
  private final int meanSeason = FARM.feedYear().seasons().size();

  private int action(String key) {
    return FARM.actions().stream().map(action -> action.key()).toList().indexOf(key);
  }

  private double[] costs(int season, double... luckFromSowing) {
    Arrays.fill(draw.seasons, season);
    for (double[] luck : draw.luck) {
      Arrays.fill(luck, 0);
    }
    // Begun in year 1 with one run-down year, sown in year 2.
    System.arraycopy(luckFromSowing, 0, draw.luck[0], 2, luckFromSowing.length);
    function.set(draw);
    function.evaluate(plan, outcome);
    double[] costs = new double[model.years()];
    Arrays.setAll(costs, outcome::actionCost);
    return costs;
  }

  @Test
  void sowing_thatFails_isPaidForAgainTheYearAfterAndThenTakes() {
    double[] takes = costs(meanSeason, 0);
    double[] failsOnce = costs(meanSeason, 1, 0);
    double[] badLuckAgain = costs(meanSeason, 1, 1, 1);
    double sowing = takes[2];
    assertThat(sowing).isPositive();
    assertThat(Arrays.copyOfRange(takes, 2, 6)).containsExactly(sowing, 0, 0, 0);
    assertThat(Arrays.copyOfRange(failsOnce, 2, 6)).containsExactly(sowing, sowing, 0, 0);
    assertThat(badLuckAgain).isEqualTo(failsOnce);
  }

  @Test
  void sowing_inAnotherYearOrPaddock_isNotTouchedByTheLuckOfThisOne() {
    double[] takes = costs(meanSeason, 0, 1, 1, 1);
    assertThat(takes).isEqualTo(costs(meanSeason, 0));
    draw.luck[1][2] = 1;
    function.set(draw);
    function.evaluate(plan, outcome);
    assertThat(outcome.actionCost(3)).isZero();
  }

  @Test
  void sowing_inAPoorSeason_failsWhereItWouldTakeInAnother() {
    double chance = FARM.actions().get(sow).number(ActionNumber.ESTABLISHMENT_CHANCE).likely();
    double poor = RandomFarms.TABLES.parameter("establishment.poor-season").likely();
    double chanceOfPoor =
        FARM.feedYear().seasons().get(SeasonType.POOR.ordinal()).chance().likely();
    double other = chance / (1 - chanceOfPoor * (1 - poor));
    double between = poor * other + 1e-6;
    assertThat(between).isLessThan(chance);
    assertThat(costs(SeasonType.POOR.ordinal(), between)[3]).isPositive();
    assertThat(costs(SeasonType.GOOD.ordinal(), between)[3]).isZero();
    assertThat(costs(SeasonType.GOOD.ordinal(), other + 1e-6)[3]).isPositive();
    assertThat(costs(meanSeason, chance - 1e-6)[3]).isZero();
    assertThat(costs(meanSeason, chance + 1e-6)[3]).isPositive();
  }

  /** Costs are a sum over years, so their mean over luck is that of the path without draws. */
  @Test
  void costs_overManyDrawsOfLuck_haveTheMeanOfThePathWithoutDraws() {
    SplittableRandom random = new SplittableRandom(7);
    int draws = 20_000;
    double[] sum = new double[model.years()];
    for (int d = 0; d < draws; d++) {
      double[] costs =
          costs(meanSeason, random.nextDouble(), random.nextDouble(), random.nextDouble());
      for (int t = 0; t < sum.length; t++) {
        sum[t] += costs[t] / draws;
      }
    }
    function.set(model.inputs().likely());
    function.evaluate(plan, outcome);
    for (int t = 0; t < sum.length; t++) {
      // A cost of c is paid or not: four standard errors are at most 4 x c / 2 / sqrt(draws).
      double error = 2 * outcome.actionCost(2) / Math.sqrt(draws);
      assertThat(sum[t]).isCloseTo(outcome.actionCost(t), within(error + 1e-9));
    }
    assertThat(outcome.actionCost(3)).isPositive().isLessThan(outcome.actionCost(2));
  }
}
