package swardcase.joining;

import java.util.Arrays;

/**
 * The simplex method in two phases on a tableau of sparse rows (Dantzig 1963, Linear programming
 * and extensions; textbook knowledge, from memory).
 *
 * <p>Columns are the variables, then a slack for each row that is not an equality, then an
 * artificial variable for each row that neither has a slack to start from nor a variable of its
 * own. The first phase drives the artificial ones to zero, the second finds the least cost. Among
 * rows that bind equally an artificial variable leaves first, then the one of lowest column. Most
 * rows of a farm speak of one paddock, so that few numbers of the tableau are ever anything but
 * zero.
 */
final class Simplex {

  /** How the column that enters is chosen. */
  enum Rule {
    /** Dantzig's: the one whose cost falls fastest. Quick. */
    STEEPEST,
    /** Bland's: the first whose cost falls. Never goes round in circles. */
    FIRST
  }

  /** How an attempt ended. */
  enum End {
    /** The least cost was found. */
    OPTIMAL,
    /** No values keep all rows. */
    INFEASIBLE,
    /** The cost has no floor. */
    UNBOUNDED,
    /** It took more pivots than are allowed. */
    TOO_LONG
  }

  /** What a falling cost, or the sum of the artificial variables, may be and still count as 0. */
  private static final double NOTHING = 1e-6;

  private static final double LEAST_PIVOT = 1e-10;
  private static final int MOST_PIVOTS = 50_000;
  private static final int NONE = -1;

  private final Rule rule;
  private final int variables;
  private final int firstArtificial;
  private final SparseRow[] rows;
  private final int[] basic;
  private final double[] costs;
  private final double[] artificialCosts;
  private final boolean[] closed;
  private final SparseRow room = new SparseRow();
  private double artificialSum;
  private int pivots;

  /**
   * @param costs of the variables
   * @param rows numbers of the variables and right sides, which are zero or more
   * @param slacks by row: 1 where it says "at most", -1 for "at least", 0 for "exactly"
   */
  Simplex(double[] costs, SparseRow[] rows, int[] slacks, Rule rule) {
    this.rule = rule;
    this.rows = rows;
    variables = costs.length;
    int[] holders = new int[variables];
    Arrays.stream(rows).forEach(row -> row.count(holders));
    firstArtificial = variables + (int) Arrays.stream(slacks).filter(slack -> slack != 0).count();
    basic = new int[rows.length];
    int nextSlack = variables;
    int nextArtificial = firstArtificial;
    for (int r = 0; r < rows.length; r++) {
      basic[r] = slacks[r] > 0 ? nextSlack : rows[r].ownPlace(holders);
      if (slacks[r] != 0) {
        rows[r].append(nextSlack++, slacks[r]);
      }
      if (basic[r] == NONE) {
        basic[r] = nextArtificial;
        rows[r].append(nextArtificial++, 1);
      }
    }
    this.costs = Arrays.copyOf(costs, nextArtificial);
    artificialCosts = new double[nextArtificial];
    closed = new boolean[nextArtificial];
    for (int r = 0; r < rows.length; r++) {
      rows[r].divideBy(rows[r].at(basic[r]));
      if (basic[r] < firstArtificial) {
        rows[r].takeFrom(this.costs, this.costs[basic[r]]);
      } else {
        artificialCosts[basic[r]] = 1;
        rows[r].takeFrom(artificialCosts, 1);
        artificialSum += rows[r].right();
      }
    }
  }

  /** Runs both phases. */
  End run() {
    if (firstArtificial < costs.length) {
      End first = descend(artificialCosts);
      if (first != End.OPTIMAL) {
        return first;
      }
      if (Math.abs(artificialSum) > NOTHING) {
        return End.INFEASIBLE;
      }
      close();
    }
    return descend(costs);
  }

  /** The variables as they stand. */
  double[] values() {
    double[] values = new double[variables];
    for (int r = 0; r < rows.length; r++) {
      if (basic[r] < variables) {
        values[basic[r]] = rows[r].right();
      }
    }
    return values;
  }

  /** Bars from the second phase what would bring the artificial variables back. */
  private void close() {
    Arrays.fill(closed, firstArtificial, closed.length, true);
    for (int column = 0; column < firstArtificial; column++) {
      closed[column] = artificialCosts[column] > NOTHING;
    }
    Arrays.fill(artificialCosts, 0);
  }

  private End descend(double[] falling) {
    for (int column = entering(falling); column != NONE; column = entering(falling)) {
      int row = leaving(column);
      if (row == NONE) {
        return End.UNBOUNDED;
      }
      if (++pivots > MOST_PIVOTS) {
        return End.TOO_LONG;
      }
      pivot(row, column);
    }
    return End.OPTIMAL;
  }

  private int entering(double[] falling) {
    int best = NONE;
    double least = -NOTHING;
    for (int column = 0; column < falling.length; column++) {
      if (falling[column] < least && !closed[column]) {
        if (rule == Rule.FIRST) {
          return column;
        }
        least = falling[column];
        best = column;
      }
    }
    return best;
  }

  private int leaving(int column) {
    int best = NONE;
    double least = Double.POSITIVE_INFINITY;
    for (int r = 0; r < rows.length; r++) {
      double number = rows[r].at(column);
      if (number > LEAST_PIVOT) {
        double ratio = Math.abs(rows[r].right() / number);
        if (ratio < least || ratio == least && leavesBefore(r, best)) {
          least = ratio;
          best = r;
        }
      }
    }
    return best;
  }

  private boolean leavesBefore(int row, int other) {
    boolean artificial = basic[row] >= firstArtificial;
    return artificial == basic[other] >= firstArtificial ? basic[row] < basic[other] : artificial;
  }

  private void pivot(int row, int column) {
    SparseRow own = rows[row];
    own.divideBy(own.at(column));
    for (SparseRow other : rows) {
      double factor = other == own ? 0 : other.at(column);
      if (factor != 0) {
        other.take(own, factor, room);
      }
    }
    own.takeFrom(costs, costs[column]);
    artificialSum += own.right() * artificialCosts[column];
    own.takeFrom(artificialCosts, artificialCosts[column]);
    basic[row] = column;
  }
}
