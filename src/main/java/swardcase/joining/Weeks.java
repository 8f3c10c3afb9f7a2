package swardcase.joining;

import java.util.ArrayList;
import java.util.List;

/** Half-months in the order of a season, which may run over the turn of the year. */
final class Weeks {

  private Weeks() {}

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
