package swardcase.plan;

import java.util.Arrays;

/**
 * What every choice adds to those sums that have a price, in rows without holes, so that choices
 * are priced by one pass over memory.
 *
 * <p>A sum has no price where it says nothing new: margins and costs without a limit are counted
 * with the choice, mobs on the same paddocks share their sums, and a limit that even the choices
 * that use it most keep within binds nobody.
 */
final class PricedSums {

  private final int[] place;
  private final int[] sign;
  private final double[] rows;

  PricedSums(PlanTable table) {
    int size = table.years() * table.sums();
    int[] places = new int[size];
    int count = 0;
    for (int k = 0; k < size; k++) {
      if (isPriced(table, k)) {
        places[count++] = k;
      }
    }
    place = Arrays.copyOf(places, count);
    sign = new int[count];
    rows = new double[table.choices() * count];
    for (int j = 0; j < count; j++) {
      int sum = place[j] % table.sums();
      sign[j] = isUpperLimit(sum) ? -1 : YearSums.isSafe(sum) ? 1 : 0;
      for (int c = 0; c < table.choices(); c++) {
        rows[c * count + j] = table.added(c, place[j]);
      }
    }
  }

  private static boolean isUpperLimit(int sum) {
    return sum == YearSums.COST || sum == YearSums.OUT;
  }

  private static boolean isPriced(PlanTable table, int k) {
    int sum = k % table.sums();
    if (sum == YearSums.MARGIN) {
      return false;
    }
    if (isUpperLimit(sum)) {
      return table.highest(k, 1) > table.most(k);
    }
    if (YearSums.isSafe(sum)) {
      return -table.highest(k, -1) < table.least(k);
    }
    int mob = YearSums.mob(sum);
    return mob < 0 || table.run().firstAlike(mob) == mob;
  }

  /** How many there are. */
  int size() {
    return place.length;
  }

  /** Where a priced sum stands among all. */
  int place(int j) {
    return place[j];
  }

  /** Whether it is one that the farm sets a limit to. */
  boolean isLimit(int j) {
    return sign[j] != 0;
  }

  /** -1 if its price can only be a cost, 1 if only a reward, 0 if either. */
  int sign(int j) {
    return sign[j];
  }

  /** What a choice adds to a priced sum. */
  double added(int choice, int j) {
    return rows[choice * place.length + j];
  }

  /** What a choice adds, at these prices. */
  double priced(int choice, double[] price) {
    int size = place.length;
    int from = choice * size;
    double one = 0;
    double two = 0;
    double three = 0;
    double four = 0;
    int j = 0;
    for (; j + 3 < size; j += 4) {
      one += price[j] * rows[from + j];
      two += price[j + 1] * rows[from + j + 1];
      three += price[j + 2] * rows[from + j + 2];
      four += price[j + 3] * rows[from + j + 3];
    }
    for (; j < size; j++) {
      one += price[j] * rows[from + j];
    }
    return one + two + (three + four);
  }

  /** Adds what a choice adds. */
  void add(int choice, double[] into) {
    int from = choice * place.length;
    for (int j = 0; j < into.length; j++) {
      into[j] += rows[from + j];
    }
  }

  /** Stretches a span of every sum so that it takes a choice in. */
  void widen(int choice, double[] low, double[] high) {
    int from = choice * place.length;
    for (int j = 0; j < low.length; j++) {
      double value = rows[from + j];
      if (value < low[j]) {
        low[j] = value;
      }
      if (value > high[j]) {
        high[j] = value;
      }
    }
  }
}
