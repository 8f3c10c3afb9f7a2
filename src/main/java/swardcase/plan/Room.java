package swardcase.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * Closes choices that alone pass a limit of the farm, even if every other paddock uses as little of
 * it as its open choices can. Prices cannot tell: at prices a paddock may be taken in part.
 */
final class Room {

  private static final int ROUNDS = 3;

  private final PlanTable table;
  private final PricedSums sums;
  private final int[] limit;
  private final double[] capacity;
  private final double[] left;
  private final double[][] least;

  Room(PlanTable table, PricedSums sums) {
    this.table = table;
    this.sums = sums;
    int[] limits = new int[sums.size()];
    int count = 0;
    for (int j = 0; j < sums.size(); j++) {
      if (sums.isLimit(j)) {
        limits[count++] = j;
      }
    }
    limit = Arrays.copyOf(limits, count);
    capacity = new double[count];
    Arrays.setAll(
        capacity,
        r -> {
          int k = sums.place(limit[r]);
          return sums.sign(limit[r]) < 0 ? table.most(k) : -table.least(k);
        });
    left = new double[count];
    least = new double[table.paddocks()][count];
  }

  /** The choices for which there is room; empty if a paddock has none. */
  Optional<Open> of(Open open) {
    Open fitting = open;
    for (int round = 0; round < ROUNDS && limit.length > 0; round++) {
      setLeft(fitting);
      Optional<Open> next = fitting.where(c -> fits(table.paddock(c), c));
      if (next.isEmpty() || next.get().size() == fitting.size()) {
        return next;
      }
      fitting = next.get();
    }
    return Optional.of(fitting);
  }

  private void setLeft(Open open) {
    System.arraycopy(capacity, 0, left, 0, left.length);
    for (int i = 0; i < open.paddocks(); i++) {
      Arrays.fill(least[i], Double.POSITIVE_INFINITY);
      for (int k = open.first(i); k < open.first(i + 1); k++) {
        for (int r = 0; r < limit.length; r++) {
          least[i][r] = Math.min(least[i][r], use(open.choice(k), r));
        }
      }
      for (int r = 0; r < limit.length; r++) {
        left[r] -= least[i][r];
      }
    }
  }

  private boolean fits(int paddock, int choice) {
    for (int r = 0; r < limit.length; r++) {
      double slack = 1e-9 * Math.max(1, Math.abs(capacity[r]));
      if (use(choice, r) - least[paddock][r] > left[r] + slack) {
        return false;
      }
    }
    return true;
  }

  private double use(int choice, int r) {
    double added = sums.added(choice, limit[r]);
    return sums.sign(limit[r]) < 0 ? added : -added;
  }
}
