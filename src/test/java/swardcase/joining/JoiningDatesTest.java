package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

class JoiningDatesTest {

  @Test
  void date_isTheFirstAndTheSixteenthOfEveryMonth() {
    List<MonthDay> dates = List.of(HalfMonths.start(0), HalfMonths.start(1), HalfMonths.start(8));
    assertThat(dates).containsExactly(MonthDay.of(1, 1), MonthDay.of(1, 16), MonthDay.of(5, 1));
    assertThat(HalfMonths.start(23)).isEqualTo(MonthDay.of(12, 16));
  }

  /** The farm's own doses and the day of that date, put to the dose-response. */
  @Test
  void points_ofADate_areThoseOfTheFarmsDosesFromThatDay() {
    FarmModel model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
    OutcomeFunction run = model.newRun();
    for (int g = 0; g < 2; g++) {
      int mob = g;
      double[] doses = new double[24];
      Arrays.setAll(doses, p -> run.flock(mob).doseNow(p));
      assertThat(JoiningDates.points(run, g, 8))
          .isEqualTo(100 * run.flock(g).lossOfJoining(doses, 120))
          .isGreaterThan(3);
      assertThat(JoiningDates.points(run, g, 11))
          .isEqualTo(100 * run.flock(g).lossOfJoining(doses, 166));
    }
  }
}
