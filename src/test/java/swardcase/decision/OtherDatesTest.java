package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.Answers;
import swardcase.Answers.Answer;
import swardcase.RandomFarms;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.report.Reproduction.OtherDate;
import swardcase.search.PlanFarms;

/** The other day for the rams, against all 24 dates worked one by one. */
class OtherDatesTest {

  private static double lost(OutcomeFunction run, int mob, MonthDay date) {
    double[] dose =
        IntStream.range(0, HalfMonths.COUNT).mapToDouble(run.flock(mob)::doseNow).toArray();
    return run.flock(mob).lossOfJoining(dose, HalfMonths.dayOfYear(date));
  }

  private static int away(MonthDay from, MonthDay to) {
    int days = Math.abs(HalfMonths.dayOfYear(from) - HalfMonths.dayOfYear(to));
    return Math.min(days, HalfMonths.DAYS - days);
  }

  @ParameterizedTest
  @ValueSource(strings = {"mixed-farm", "risky-farm", "northern-farm", "current-farm"})
  void otherDate_ofAMob_isTheNearestOfThoseThatLoseLeast(String name) {
    FarmModel model = PlanFarms.model(RandomFarms.demo(name));
    OutcomeFunction run = model.newRun();
    OtherDates dates = OtherDates.of(model, run);
    List<MonthDay> all =
        IntStream.range(0, 24).mapToObj(k -> MonthDay.of(1 + k / 2, k % 2 == 0 ? 1 : 16)).toList();
    for (int g = 0; g < model.farm().mobs().size(); g++) {
      int mob = g;
      MonthDay today = model.farm().mobs().get(g).joiningStart();
      double now = lost(run, mob, today);
      double least = all.stream().mapToDouble(date -> lost(run, mob, date)).min().orElseThrow();
      assertThat(dates.days().get(mob).isPresent()).isEqualTo(now > least + 0.001);
      if (!dates.days().get(mob).isPresent()) {
        assertThat(dates.saved(run, mob)).isZero();
        continue;
      }
      MonthDay found = dates.days().get(mob).orElseThrow();
      assertThat(dates.saved(run, mob))
          .isCloseTo(now - lost(run, mob, found), within(1e-12))
          .isGreaterThan(now - least - 0.001 - 1e-12);
      assertThat(all)
          .filteredOn(date -> lost(run, mob, date) <= least + 0.001)
          .allSatisfy(
              date -> assertThat(away(today, date)).isGreaterThanOrEqualTo(away(today, found)));
    }
  }

  /** At least a lamb for 100 ewes, and never more than oestrogen costs the mob. */
  @Test
  void otherDates_thatArePrinted_saveSomethingAndNoMoreThanIsLost() {
    Answer answer = Answers.of("risky-farm", RandomFarms.demo("risky-farm"), 1, 100);
    List<OtherDate> dates = answer.report().reproduction().otherDates();
    assertThat(dates).isNotEmpty();
    for (int g = 0; g < answer.model().farm().mobs().size(); g++) {
      String mob = answer.model().farm().mobs().get(g).name();
      double lost = answer.decision().of(g, FarmMeasures.OfMob.LAMBS_LOST).mean();
      double ewes = answer.model().farm().mobs().get(g).ewes();
      assertThat(dates)
          .filteredOn(date -> date.mob().equals(mob))
          .allSatisfy(
              date ->
                  assertThat(date.lambsSavedPerYear().mean()).isBetween(ewes / 100, lost + 1e-9));
    }
  }
}
