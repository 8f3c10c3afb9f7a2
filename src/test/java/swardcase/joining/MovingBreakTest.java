package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Range;
import swardcase.draws.Draws;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.SeasonType;
import swardcase.outcome.FarmModel;

/**
 * The risky farm, whose break comes at the beginning of April and whose weeks before joining go
 * from March to July, with a break that moves by other numbers of half-months.
 */
class MovingBreakTest {

  private static final int LAGOON = 2;

  private static Farm farm(double laterInPoor, double earlierInGood) {
    return FarmCopy.withSeasons(
        RandomFarms.demo("risky-farm"), season -> moved(season, laterInPoor, earlierInGood));
  }

  private static SeasonGrowth moved(SeasonGrowth season, double inPoor, double inGood) {
    return new SeasonGrowth(
        season.type(),
        season.chance(),
        season.growthKgDmPerHaPerDay(),
        switch (season.type()) {
          case POOR -> Optional.of(told("later break in a poor season", inPoor));
          case AVERAGE -> Optional.empty();
          case GOOD -> Optional.of(told("earlier break in a good season", inGood));
        },
        season.evidence(),
        season.source(),
        season.setBy());
  }

  private static Assumption told(String name, double halfMonths) {
    return new Assumption(
        name, Range.exactly(halfMonths), "half-months", Evidence.FARM, "", SetBy.USER);
  }

  private static JoiningPlan plan(double laterInPoor, double earlierInGood) {
    FarmModel model = new FarmModel(farm(laterInPoor, earlierInGood), RandomFarms.TABLES);
    int rule =
        IntStream.range(0, model.actions().size())
            .filter(a -> model.actions().get(a).use().isPresent())
            .findFirst()
            .orElseThrow();
    return JoiningPlan.of(new Draws(model, 1, 20, 10), model.keepAll().with(LAGOON, rule, 0))
        .orElseThrow();
  }

  private static int season(JoiningPlan plan, SeasonType type) {
    return plan.farm().feedYear().seasons().stream().map(SeasonGrowth::type).toList().indexOf(type);
  }

  /** First half-month in which feed is green after it was dry. */
  private static int greens(JoiningPlan plan, SeasonType type) {
    int season = season(plan, type);
    assertThat(plan.isGreenAtStart(season)).isFalse();
    assertThat(plan.turns(season)).hasSize(1);
    return plan.turns(season).get(0);
  }

  @Test
  void turns_ofASeason_moveWithItsBreakAlone() {
    JoiningPlan usual = plan(0, 0);
    JoiningPlan late = plan(3, 0);
    JoiningPlan early = plan(0, 2);
    assertThat(greens(late, SeasonType.POOR)).isGreaterThan(greens(usual, SeasonType.POOR));
    assertThat(greens(early, SeasonType.GOOD)).isLessThan(greens(usual, SeasonType.GOOD));
    assertThat(greens(late, SeasonType.AVERAGE)).isEqualTo(greens(usual, SeasonType.AVERAGE));
    assertThat(greens(early, SeasonType.POOR)).isEqualTo(greens(usual, SeasonType.POOR));
  }

  @Test
  void lostNow_inAGoodSeason_risesAsItsBreakComesEarlier() {
    JoiningPlan usual = plan(0, 0);
    JoiningPlan early = plan(0, 2);
    int good = season(usual, SeasonType.GOOD);
    assertThat(early.lostNow(good, 0)).isGreaterThan(usual.lostNow(good, 0));
  }

  @Test
  void lostThere_isThatOfTheSeasonThatIsDrawn() {
    JoiningPlan usual = plan(0, 0);
    JoiningPlan early = plan(0, 2);
    assertThat(early.lostThere(0, LAGOON).mean()).isGreaterThan(usual.lostThere(0, LAGOON).mean());
  }
}
