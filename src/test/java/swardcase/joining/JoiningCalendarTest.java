package swardcase.joining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.farm.HalfMonths;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/** The calendar of paddocks from safe to strong, every stay of it reckoned again. */
class JoiningCalendarTest {

  private static final double[] STRENGTH = {0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6, 0.8, 1.2};

  /** Halving twelve times leaves the tolerance this close, as a share of the dearest half-month. */
  private static final double HALVED = 1.0 / 2048;

  private final FarmModel model = new FarmModel(RandomFarms.demo("risky-farm"), RandomFarms.TABLES);
  private final OutcomeFunction run = model.newRun();
  private final JoiningCase setting =
      new JoiningCase(model, run, STRENGTH, 0, new ComingYear(model, run, model.keepAll()));
  private final JoiningCalendar calendar = new JoiningCalendar(setting);

  private double dose(int p, int i) {
    return STRENGTH[i] * run.greenShare(p);
  }

  private double points(int mob, double[] byDay) {
    return 100 * run.flock(mob).lossOfJoining(byDay, setting.joiningDay[mob]);
  }

  /** The dearer of the first and the last {@code days[p]} days of every half-month. */
  private double lost(int mob, int paddock, int[] days) {
    double[] early = new double[365];
    double[] late = new double[365];
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      int first = JoiningCalendar.firstDay(p);
      int end = JoiningCalendar.firstDay(p + 1);
      Arrays.fill(early, first, first + days[p], dose(p, paddock));
      Arrays.fill(late, end - days[p], end, dose(p, paddock));
    }
    return Math.max(points(mob, early), points(mob, late));
  }

  private double lostInOne(int mob, int p, int paddock, int days) {
    int[] only = new int[HalfMonths.COUNT];
    only[p] = days;
    return lost(mob, paddock, only);
  }

  private int length(int p) {
    return JoiningCalendar.firstDay(p + 1) - JoiningCalendar.firstDay(p);
  }

  /** Days of each half-month up to which no stay costs more than this. */
  private int[] daysAt(int mob, int paddock, double tolerated) {
    int[] days = new int[HalfMonths.COUNT];
    for (int p = 0; p < days.length; p++) {
      while (setting.matters(mob, p)
          && days[p] < length(p)
          && lostInOne(mob, p, paddock, days[p] + 1) <= tolerated) {
        days[p]++;
      }
    }
    return days;
  }

  @Test
  void firstDay_isTheCalendars() {
    assertThat(JoiningCalendar.firstDay(0)).isZero();
    assertThat(JoiningCalendar.firstDay(1)).isEqualTo(15);
    assertThat(JoiningCalendar.firstDay(2)).isEqualTo(31);
    assertThat(JoiningCalendar.firstDay(8)).isEqualTo(120);
    assertThat(JoiningCalendar.firstDay(24)).isEqualTo(365);
  }

  @Test
  void daysAllowed_ofAnyStrength_areThoseTheToleranceLetsBe() {
    int[] kinds = new int[4];
    for (int g = 0; g < setting.mobs(); g++) {
      for (int i = 0; i < STRENGTH.length; i++) {
        int[] days = daysAt(g, i, calendar.tolerance(g, i));
        for (int p = 0; p < HalfMonths.COUNT; p++) {
          boolean rated = setting.matters(g, p);
          int kept = days[p] < 3 ? 0 : days[p];
          int expected = rated ? kept : length(p);
          assertThat(calendar.isRated(g, p)).isEqualTo(rated);
          assertThat(calendar.daysAllowed(g, p, i)).as("%s %s %s", g, p, i).isEqualTo(expected);
          assertThat(calendar.isKeptOff(g, p, i)).isEqualTo(expected == 0);
          assertThat(calendar.isOpen(g, p, i)).isEqualTo(expected == length(p));
          if (rated) {
            boolean some = days[p] >= 3;
            kinds[days[p] == length(p) ? 3 : some ? 2 : days[p] > 0 ? 1 : 0]++;
          }
        }
      }
    }
    assertThat(kinds).as("none, too few, some and all days").doesNotContain(0);
  }

  /** All stays of a paddock at the tolerance cost 3 in 100 or less; a little more would not. */
  @Test
  void tolerance_isTheLargestThatAllStaysTogetherBear() {
    int limited = 0;
    for (int g = 0; g < setting.mobs(); g++) {
      for (int i = 0; i < STRENGTH.length; i++) {
        double tolerance = calendar.tolerance(g, i);
        assertThat(lost(g, i, daysAt(g, i, tolerance))).isLessThanOrEqualTo(3);
        double dearest = 0;
        for (int p : setting.halfMonths) {
          double whole = setting.matters(g, p) ? lostInOne(g, p, i, length(p)) : 0;
          dearest = Math.max(dearest, whole);
        }
        if (lost(g, i, daysAt(g, i, dearest)) <= 3) {
          assertThat(tolerance).isEqualTo(3);
        } else {
          double more = tolerance + HALVED * dearest;
          assertThat(lost(g, i, daysAt(g, i, more))).isGreaterThan(3);
          limited++;
        }
      }
    }
    assertThat(limited).isBetween(4, 16);
  }

  @Test
  void with_aPaddockOfAnotherStrength_changesThatPaddockAlone() {
    JoiningCalendar other = calendar.with(9, STRENGTH[5]);
    boolean differs = false;
    for (int g = 0; g < setting.mobs(); g++) {
      assertThat(other.tolerance(g, 9)).isEqualTo(calendar.tolerance(g, 5));
      assertThat(other.tolerance(g, 4)).isEqualTo(calendar.tolerance(g, 4));
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        for (int i = 0; i < 9; i++) {
          assertThat(other.daysAllowed(g, p, i)).isEqualTo(calendar.daysAllowed(g, p, i));
        }
        assertThat(other.daysAllowed(g, p, 9)).isEqualTo(calendar.daysAllowed(g, p, 5));
        differs |= calendar.daysAllowed(g, p, 9) != calendar.daysAllowed(g, p, 5);
      }
    }
    assertThat(differs).as("the calendar it came from is as it was").isTrue();
  }
}
