package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.farm.HalfMonths;

class WeeksTest {

  @Test
  void run_overTheTurnOfTheYear_startsInTheOldYear() {
    boolean[] marked = new boolean[HalfMonths.COUNT];
    for (int p : new int[] {0, 1, 3, 21, 23}) {
      marked[p] = true;
    }
    assertThat(Weeks.run(marked)).containsExactly(21, 22, 23, 0, 1, 2, 3);
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
