package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
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
import swardcase.outcome.FarmModel;

/**
 * The risky farm, whose break comes at the beginning of April and whose weeks before joining go
 * from March to July, with a break that moves by other numbers of half-months.
 */
class MovingBreakTest {

  private static final int SECOND_HALF_OF_MARCH = 5;
  private static final int SECOND_HALF_OF_APRIL = 7;
  private static final int LAGOON = 0;

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
    return JoiningPlan.of(new Draws(model, 1, 20, 10)).orElseThrow();
  }

  @Test
  void chanceRight_whereFeedIsDryUntilTheBreak_fallsAsTheBreakOfGoodSeasonsComesEarlier() {
    assertThat(fallen(plan(0, 0), plan(0, 2), SECOND_HALF_OF_MARCH, true)).isPositive();
  }

  @Test
  void chanceRight_whereFeedIsGreenFromTheBreak_fallsAsTheBreakOfPoorSeasonsComesLater() {
    assertThat(fallen(plan(0, 0), plan(3, 0), SECOND_HALF_OF_APRIL, false)).isPositive();
  }

  /** Of the paddocks rated the same way in both plans those whose chance fell; none may rise. */
  private static int fallen(JoiningPlan usual, JoiningPlan moved, int halfMonth, boolean open) {
    int fell = 0;
    for (int g = 0; g < 2; g++) {
      for (int i = 0; i < usual.farm().paddocks().size(); i++) {
        if (isOpen(usual, g, halfMonth, i) == open && isOpen(moved, g, halfMonth, i) == open) {
          double before = usual.chanceRight(g, halfMonth, i);
          double after = moved.chanceRight(g, halfMonth, i);
          assertThat(after).as(usual.farm().paddocks().get(i).name()).isLessThanOrEqualTo(before);
          fell += after < before ? 1 : 0;
        }
      }
    }
    return fell;
  }

  private static boolean isOpen(JoiningPlan plan, int mob, int halfMonth, int paddock) {
    return plan.daysAllowed(mob, halfMonth, paddock) == plan.daysIn(halfMonth);
  }

  @Test
  void points_ofAHalfMonthBeforeTheBreak_areThoseOfTheSeasonThatIsDrawn() {
    JoiningPlan usual = plan(0, 0);
    JoiningPlan early = plan(0, 2);
    assertThat(early.points(0, SECOND_HALF_OF_MARCH, LAGOON).high())
        .isGreaterThan(2 * usual.points(0, SECOND_HALF_OF_MARCH, LAGOON).high());
  }
}
