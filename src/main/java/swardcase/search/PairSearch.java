package swardcase.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import swardcase.search.Aim.Gain;

/**
 * Changes of two paddocks together: one makes room within a limit for the other, or each is worth
 * more with the other.
 *
 * <p>Pairs are looked at in falling order of what both would gain alone, so that the work can end
 * after a number of them that rises in line with the paddocks. A choice that passes a limit is
 * tried only with one that makes room for it there.
 */
final class PairSearch {

  /** Choices tried of each paddock: the best few, and on a small farm so many in all. */
  private static final int TRIED = 3;

  private static final int TRIED_IN_ALL = 500;
  private static final int LEAST_WORK = 5_000;
  private static final int WORK_PER_PADDOCK = 300;
  private static final int WORK_OF_A_VALUE = 10;

  /** Two candidates by their places, the second of lower gain. */
  private record Pair(int one, int two, double gain) {}

  private static final Comparator<Pair> BEST_FIRST =
      Comparator.comparingDouble((Pair pair) -> -pair.gain())
          .thenComparingInt(Pair::one)
          .thenComparingInt(Pair::two);

  private final PlanTable table;
  private final Position at;
  private final int[] passed;
  private final double[] passedBy;

  /** Changes of a pick. */
  PairSearch(PlanTable table, int[] pick) {
    this.table = table;
    at = new Position(table);
    at.set(pick);
    passed = new int[table.choices()];
    passedBy = new double[table.choices()];
  }

  /**
   * Pairs that keep within the limits, in falling order of what both gain alone.
   *
   * @param alone what single changes gain, limits aside; no others are tried
   */
  List<Change> withinLimits(List<Gain> alone) {
    double[] gain = new double[table.choices()];
    Arrays.fill(gain, Double.NEGATIVE_INFINITY);
    alone.forEach(of -> gain[of.change().one()] = of.gain());
    int[] candidate = candidates(gain);
    for (int c : candidate) {
      findPassed(c);
    }
    PriorityQueue<Pair> next = new PriorityQueue<>(BEST_FIRST);
    for (int a = 0; a + 1 < candidate.length; a++) {
      next.add(new Pair(a, a + 1, gain[candidate[a]] + gain[candidate[a + 1]]));
    }
    List<Change> found = new ArrayList<>();
    long work = Math.max(LEAST_WORK, (long) WORK_PER_PADDOCK * table.paddocks());
    while (work > 0 && !next.isEmpty()) {
      Pair pair = next.poll();
      int one = candidate[pair.one()];
      int two = candidate[pair.two()];
      work--;
      if (pair.two() + 1 < candidate.length) {
        double both = gain[one] + gain[candidate[pair.two() + 1]];
        next.add(new Pair(pair.one(), pair.two() + 1, both));
      }
      if (table.paddock(one) != table.paddock(two) && makesRoom(one, two) && makesRoom(two, one)) {
        work -= WORK_OF_A_VALUE;
        Change change = new Change(one, two);
        if (at.fits(change)) {
          found.add(change);
        }
      }
    }
    return found;
  }

  /** Finds the limit that a choice alone passes most, if any. */
  private void findPassed(int choice) {
    passed[choice] = -1;
    passedBy[choice] = 0;
    for (int k = 0; k < at.sums().length; k++) {
      double sum = at.sums()[k] + at.change(choice, k);
      double over = Math.max(sum - table.most(k), table.least(k) - sum);
      if (over > passedBy[choice]) {
        passed[choice] = k;
        passedBy[choice] = over;
      }
    }
  }

  private boolean makesRoom(int choice, int other) {
    int k = passed[choice];
    if (k < 0) {
      return true;
    }
    double change = at.change(other, k);
    return (Double.isInfinite(table.most(k)) ? change : -change) >= passedBy[choice] - 1e-9;
  }

  /** Choices worth trying in pairs, best first. */
  private int[] candidates(double[] gain) {
    int[] found = new int[table.choices()];
    int count = 0;
    int tried = Math.max(TRIED, TRIED_IN_ALL / table.paddocks());
    for (int i = 0; i < table.places(); i++) {
      int from = count;
      for (int c = table.first(i); c < table.first(i + 1); c++) {
        if (c != at.choice(i) && gain[c] > Double.NEGATIVE_INFINITY) {
          found[count++] = c;
        }
      }
      sort(found, from, count, gain);
      count = Math.min(count, from + tried);
    }
    sort(found, 0, count, gain);
    return Arrays.copyOf(found, count);
  }

  private static void sort(int[] choices, int from, int to, double[] gain) {
    int[] sorted =
        Arrays.stream(choices, from, to)
            .boxed()
            .sorted((a, b) -> Double.compare(gain[b], gain[a]))
            .mapToInt(Integer::intValue)
            .toArray();
    System.arraycopy(sorted, 0, choices, from, sorted.length);
  }
}
