package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.farm.HalfMonths;

class WeeksTest {

  @Test
  void weeks_ofAJoiningInMay_runFromMarchToTheRamsComingOut() {
    boolean[] weeks = Weeks.of(HalfMonths.dayOfYear(MonthDay.of(5, 1)), 6);
    assertThat(Weeks.run(weeks)).containsExactly(4, 5, 6, 7, 8, 9, 10);
  }

  @Test
  void run_overTheTurnOfTheYear_startsInTheOldYear() {
    boolean[] weeks = Weeks.of(HalfMonths.dayOfYear(MonthDay.of(1, 20)), 5);
    assertThat(Weeks.run(weeks)).startsWith(21, 22, 23, 0).endsWith(3);
  }

  @Test
  void run_ofNothing_isEmpty_andOfEverythingIsTheYear() {
    boolean[] marked = new boolean[HalfMonths.COUNT];
    assertThat(Weeks.run(marked)).isEmpty();
    java.util.Arrays.fill(marked, true);
    assertThat(Weeks.run(marked)).hasSize(HalfMonths.COUNT).doesNotHaveDuplicates();
  }

  @Test
  void run_ofAnyMarks_holdsThemAllAndIsNoLongerThanNeeded() {
    SplittableRandom random = new SplittableRandom(3);
    for (int trial = 0; trial < 200; trial++) {
      boolean[] marked = new boolean[HalfMonths.COUNT];
      int count = random.nextInt(1, 6);
      for (int k = 0; k < count; k++) {
        marked[random.nextInt(HalfMonths.COUNT)] = true;
      }
      var run = Weeks.run(marked);
      assertThat(run).doesNotHaveDuplicates();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        assertThat(!marked[p] || run.contains(p)).as("trial %s", trial).isTrue();
      }
      assertThat(marked[run.get(0)]).isTrue();
      assertThat(marked[run.get(run.size() - 1)]).isTrue();
    }
  }
}
