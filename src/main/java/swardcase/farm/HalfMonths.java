package swardcase.farm;

import java.time.Month;
import java.time.MonthDay;
import swardcase.check.Check;

/**
 * The calendar of the program: a year of 24 half-months and 365 days, in which every half-month is
 * half of its month. Half-month 0 is the first half of January; 12 is the first half of July.
 */
public final class HalfMonths {

  /** Half-months in a year. */
  public static final int COUNT = 24;

  /** Days in the program's year. */
  public static final int DAYS = 365;

  private static final double[] DAYS_IN = new double[COUNT];
  private static final int[] OF_DAY = new int[DAYS];

  static {
    int day = 0;
    for (int p = 0; p < COUNT; p++) {
      int inMonth = month(p).minLength();
      DAYS_IN[p] = inMonth / 2.0;
      int end = p % 2 == 0 ? day + inMonth / 2 : day + inMonth - inMonth / 2;
      while (day < end) {
        OF_DAY[day++] = p;
      }
    }
  }

  private HalfMonths() {}

  /** Days in half-month {@code p}: 15.5 for each half of January, 14 for each half of February. */
  public static double days(int p) {
    return DAYS_IN[p];
  }

  /** The month of half-month {@code p}. */
  public static Month month(int p) {
    return Month.of(p / 2 + 1);
  }

  /** First day of half-month {@code p}: the 1st or the 16th. */
  public static MonthDay start(int p) {
    return MonthDay.of(month(p), p % 2 == 0 ? 1 : 16);
  }

  /** The half-month of a day of the year; days wrap, so that -1 is 31 December. */
  public static int ofDay(int dayOfYear) {
    return OF_DAY[Math.floorMod(dayOfYear, DAYS)];
  }

  /** Day of the year from 0 (1 January); 29 February counts as 28 February. */
  public static int dayOfYear(MonthDay date) {
    Check.notNull(date, "date");
    return MonthDay.of(date.getMonth(), Math.min(date.getDayOfMonth(), date.getMonth().minLength()))
            .atYear(2001)
            .getDayOfYear()
        - 1;
  }
}
