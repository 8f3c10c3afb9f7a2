package swardcase.joining;

import java.util.ArrayList;
import java.util.List;
import swardcase.farm.HalfMonths;

/**
 * The half-months in which it matters what ewes graze: from {@value #WEEKS_BEFORE} weeks before the
 * rams go in to the day they come out. Eight weeks, because after six weeks off the clover no
 * effect was found (see {@link swardcase.reproduction.JoiningExposure}) and half-months are coarse.
 */
final class Weeks {

  static final int WEEKS_BEFORE = 8;

  private Weeks() {}

  /** Which of the 24 half-months belong to one joining. */
  static boolean[] of(int joiningDay, double joiningWeeks) {
    boolean[] belongs = new boolean[HalfMonths.COUNT];
    int first = joiningDay - 7 * WEEKS_BEFORE;
    int last = joiningDay + (int) Math.ceil(7 * joiningWeeks) - 1;
    for (int day = first; day <= last; day++) {
      belongs[HalfMonths.ofDay(day)] = true;
    }
    return belongs;
  }

  /**
   * The shortest run of half-months, in order and over the turn of the year if need be, that holds
   * every marked one; empty if none is marked.
   */
  static List<Integer> run(boolean[] marked) {
    int start = 0;
    int longestGap = -1;
    for (int p = 0; p < marked.length; p++) {
      if (!marked[p]) {
        continue;
      }
      int gap = 0;
      while (gap < marked.length - 1 && !marked[Math.floorMod(p - 1 - gap, marked.length)]) {
        gap++;
      }
      if (gap > longestGap) {
        longestGap = gap;
        start = p;
      }
    }
    List<Integer> run = new ArrayList<>();
    if (longestGap >= 0) {
      for (int k = 0; k < marked.length - longestGap; k++) {
        run.add((start + k) % marked.length);
      }
    }
    return run;
  }
}
