package swardcase.joining;

import java.util.Arrays;
import swardcase.farm.HalfMonths;

/**
 * Days that a mob may spend in a paddock in each half-month of its own weeks.
 *
 * <p>For every half-month the ewes in lamb per 100 joined are found that so many days on the green
 * feed of the paddock cost, the mob being on safe feed at all other times. A stay counts at the end
 * of the half-month or at its beginning, whichever costs more. The tolerance for one half-month is
 * the largest at which all stays of the paddock together, used to the full, cost no more than what
 * can be told from normal variation (3 per 100). A half-month with no days, or fewer than {@value
 * #FEWEST_DAYS}, is kept off: nobody moves a mob for less.
 */
final class JoiningCalendar {

  static final int FEWEST_DAYS = 3;
  private static final int HALVINGS = 12;

  /** Points so few that days within the half-month need no telling apart. */
  private static final double NEXT_TO_NOTHING = 0.02;

  private static final int NOT_RATED = -1;
  private static final int[] FIRST_DAY = firstDays();

  private final JoiningCase setting;
  private final double tellablePoints;
  private final int[][][] daysAllowed;
  private final double[][] tolerance;

  JoiningCalendar(JoiningCase setting) {
    this.setting = setting;
    tellablePoints = setting.model.tables().parameter("oestrogen.distinguishable-points").likely();
    daysAllowed = new int[setting.mobs()][HalfMonths.COUNT][setting.paddocks()];
    tolerance = new double[setting.mobs()][setting.paddocks()];
    for (int i = 0; i < setting.paddocks(); i++) {
      rate(i, setting.strength[i]);
    }
  }

  private JoiningCalendar(JoiningCalendar from) {
    setting = from.setting;
    tellablePoints = from.tellablePoints;
    daysAllowed = new int[from.daysAllowed.length][][];
    tolerance = new double[from.tolerance.length][];
    for (int g = 0; g < daysAllowed.length; g++) {
      daysAllowed[g] = Arrays.stream(from.daysAllowed[g]).map(int[]::clone).toArray(int[][]::new);
      tolerance[g] = from.tolerance[g].clone();
    }
  }

  /** The calendar with one paddock of another strength. */
  JoiningCalendar with(int paddock, double strength) {
    JoiningCalendar other = new JoiningCalendar(this);
    other.rate(paddock, strength);
    return other;
  }

  private void rate(int paddock, double strength) {
    for (int g = 0; g < setting.mobs(); g++) {
      boolean[] own = new boolean[HalfMonths.COUNT];
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        own[p] = setting.matters(g, p);
      }
      rate(g, paddock, strength, own);
    }
  }

  private void rate(int mob, int paddock, double strength, boolean[] own) {
    double[][] lost = new double[HalfMonths.COUNT][];
    double most = 0;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      daysAllowed[mob][p][paddock] = NOT_RATED;
      if (own[p]) {
        lost[p] = lostByDays(mob, p, strength * setting.run.greenShare(p));
        most = Math.max(most, lost[p][lost[p].length - 1]);
      }
    }
    double low = 0;
    double high = Math.max(most, 1e-12);
    if (together(mob, strength, lost, high) <= tellablePoints) {
      low = tellablePoints;
    } else {
      for (int step = 0; step < HALVINGS; step++) {
        double middle = (low + high) / 2;
        if (together(mob, strength, lost, middle) <= tellablePoints) {
          low = middle;
        } else {
          high = middle;
        }
      }
    }
    tolerance[mob][paddock] = low;
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      if (own[p]) {
        int days = daysAt(lost[p], low);
        boolean tooFew = days < FEWEST_DAYS;
        daysAllowed[mob][p][paddock] = tooFew ? 0 : days;
      }
    }
  }

  /** Points lost to 0, 1, 2 ... days in a half-month, never falling with days. */
  private double[] lostByDays(int mob, int p, double dose) {
    int first = firstDay(p);
    int length = firstDay(p + 1) - first;
    double[] lost = new double[length + 1];
    if (dose <= 0) {
      return lost;
    }
    double[] early = Losses.noDoseByDay();
    double[] late = Losses.noDoseByDay();
    Arrays.fill(late, first, first + length, dose);
    double whole = points(mob, late);
    if (whole < NEXT_TO_NOTHING) {
      Arrays.fill(lost, 1, length + 1, whole);
      return lost;
    }
    Arrays.fill(late, first, first + length, 0);
    for (int n = 1; n <= length; n++) {
      early[first + n - 1] = dose;
      late[first + length - n] = dose;
      double worse = Math.max(points(mob, early), points(mob, late));
      lost[n] = Math.max(lost[n - 1], worse);
    }
    return lost;
  }

  /** Points lost if every half-month is used as far as the tolerance lets it be. */
  private double together(int mob, double strength, double[][] lost, double tolerated) {
    double[] early = Losses.noDoseByDay();
    double[] late = Losses.noDoseByDay();
    for (int p = 0; p < HalfMonths.COUNT; p++) {
      if (lost[p] == null) {
        continue;
      }
      int days = daysAt(lost[p], tolerated);
      double dose = strength * setting.run.greenShare(p);
      int first = firstDay(p);
      int end = firstDay(p + 1);
      Arrays.fill(early, first, first + days, dose);
      Arrays.fill(late, end - days, end, dose);
    }
    return Math.max(points(mob, early), points(mob, late));
  }

  private double points(int mob, double[] byDay) {
    return Losses.points(setting.run, mob, byDay, setting.joiningDay[mob]);
  }

  private static int daysAt(double[] lost, double tolerated) {
    int days = 0;
    while (days + 1 < lost.length && lost[days + 1] <= tolerated) {
      days++;
    }
    return days;
  }

  /** First day of the year of half-month {@code p}; 24 is the day after the last. */
  static int firstDay(int p) {
    return FIRST_DAY[p];
  }

  private static int[] firstDays() {
    int[] days = new int[HalfMonths.COUNT + 1];
    for (int day = 0; day < HalfMonths.DAYS; day++) {
      days[HalfMonths.ofDay(day) + 1] = day + 1;
    }
    return days;
  }

  /** Whether the calendar speaks of a half-month at all for a mob. */
  boolean isRated(int mob, int halfMonth) {
    return setting.matters(mob, halfMonth);
  }

  /** Days the mob may graze it; all days of the half-month where it is open or not rated. */
  int daysAllowed(int mob, int halfMonth, int paddock) {
    int days = daysAllowed[mob][halfMonth][paddock];
    return days == NOT_RATED ? firstDay(halfMonth + 1) - firstDay(halfMonth) : days;
  }

  boolean isKeptOff(int mob, int halfMonth, int paddock) {
    return daysAllowed[mob][halfMonth][paddock] == 0;
  }

  boolean isOpen(int mob, int halfMonth, int paddock) {
    return daysAllowed(mob, halfMonth, paddock) == firstDay(halfMonth + 1) - firstDay(halfMonth);
  }

  /** Points that one half-month may cost, of a mob in a paddock. */
  double tolerance(int mob, int paddock) {
    return tolerance[mob][paddock];
  }
}
