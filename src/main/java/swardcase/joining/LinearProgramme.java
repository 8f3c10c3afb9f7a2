package swardcase.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.linear.UnboundedSolutionException;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import swardcase.check.Check;

/**
 * A linear programme: the least cost of variables that are zero or more, under rows that say "at
 * most", "at least" or "exactly".
 *
 * <p>Solved by the simplex method with Dantzig's rule. Every row is first divided by the power of
 * two next to its largest coefficient, because rows of very different size make the method call
 * programmes infeasible that are not. Every answer is put back into the rows as they were given; if
 * it breaks one by more than {@value #TOLERANCE} of the row's size, or if the first rule found
 * nothing, Bland's rule tries again.
 */
final class LinearProgramme {

  /** How an attempt ended. */
  enum Status {
    /** The least cost was found and keeps every row. */
    OPTIMAL,
    /** No values keep all rows. */
    INFEASIBLE,
    /** The cost has no floor. */
    UNBOUNDED,
    /** The method stopped without an answer that keeps every row. */
    NOT_SOLVED
  }

  /**
   * An answer; {@code value} and {@code at} mean something only where the status is optimal.
   *
   * @param status how it ended
   * @param value the least cost
   * @param at the variables
   */
  record Solution(Status status, double value, double[] at) {

    boolean isOptimal() {
      return status == Status.OPTIMAL;
    }
  }

  private record Row(int[] places, double[] coefficients, Relationship kind, double rightSide) {}

  static final double TOLERANCE = 1e-6;
  private static final int MOST_PIVOTS = 50_000;

  private final double[] costs;
  private final List<Row> rows = new ArrayList<>();
  private Solution solved;

  /** A programme without rows; one cost for each variable. */
  LinearProgramme(double[] costs) {
    this.costs = costs.clone();
  }

  int variables() {
    return costs.length;
  }

  int rows() {
    return rows.size();
  }

  /** Adds a row: coefficients times the variables at these places, at most the right side. */
  int atMost(int[] places, double[] coefficients, double rightSide) {
    return add(places, coefficients, Relationship.LEQ, rightSide);
  }

  /** The same, at least the right side. */
  int atLeast(int[] places, double[] coefficients, double rightSide) {
    return add(places, coefficients, Relationship.GEQ, rightSide);
  }

  /** The same, exactly the right side. */
  int exactly(int[] places, double[] coefficients, double rightSide) {
    return add(places, coefficients, Relationship.EQ, rightSide);
  }

  private int add(int[] places, double[] coefficients, Relationship kind, double rightSide) {
    Check.that(places.length == coefficients.length, "a row must have a place for each number");
    Check.that(Double.isFinite(rightSide), "right side must be a number, but was %s", rightSide);
    for (int k = 0; k < places.length; k++) {
      Check.that(places[k] >= 0 && places[k] < costs.length, "no variable %s", places[k]);
      Check.that(Double.isFinite(coefficients[k]), "coefficient must be a number");
    }
    solved = null;
    rows.add(new Row(places.clone(), coefficients.clone(), kind, rightSide));
    return rows.size() - 1;
  }

  /** Finds the least cost. */
  Solution solve() {
    Solution first = solve(PivotSelectionRule.DANTZIG);
    if (first.isOptimal() || first.status() == Status.UNBOUNDED) {
      return first;
    }
    Solution second = solve(PivotSelectionRule.BLAND);
    return second.status() == Status.NOT_SOLVED ? first : second;
  }

  /**
   * What one more unit on the right side of a row adds to the least cost: the programme is solved
   * again with the right side moved by {@code step}. Empty if that has no answer.
   */
  OptionalDouble shadowPrice(int row, double step) {
    if (solved == null) {
      solved = solve();
    }
    Solution now = solved;
    Row given = rows.get(row);
    rows.set(
        row, new Row(given.places(), given.coefficients(), given.kind(), given.rightSide() + step));
    Solution moved = solve();
    rows.set(row, given);
    return now.isOptimal() && moved.isOptimal()
        ? OptionalDouble.of((moved.value() - now.value()) / step)
        : OptionalDouble.empty();
  }

  private Solution solve(PivotSelectionRule rule) {
    double costScale = scale(costs);
    try {
      PointValuePair pair =
          new SimplexSolver(1e-6, 10, 1e-10)
              .optimize(
                  new MaxIter(MOST_PIVOTS),
                  new LinearObjectiveFunction(scaled(costs, costScale), 0),
                  new LinearConstraintSet(constraints()),
                  GoalType.MINIMIZE,
                  new NonNegativeConstraint(true),
                  rule);
      double[] at = pair.getPoint();
      return keepsRows(at)
          ? new Solution(Status.OPTIMAL, cost(at), at)
          : new Solution(Status.NOT_SOLVED, Double.NaN, at);
    } catch (NoFeasibleSolutionException none) {
      return new Solution(Status.INFEASIBLE, Double.NaN, new double[costs.length]);
    } catch (UnboundedSolutionException endless) {
      return new Solution(Status.UNBOUNDED, Double.NaN, new double[costs.length]);
    } catch (MathIllegalStateException stopped) {
      return new Solution(Status.NOT_SOLVED, Double.NaN, new double[costs.length]);
    }
  }

  private double cost(double[] at) {
    double sum = 0;
    for (int k = 0; k < costs.length; k++) {
      sum += costs[k] * at[k];
    }
    return sum;
  }

  private List<LinearConstraint> constraints() {
    List<LinearConstraint> constraints = new ArrayList<>(rows.size());
    for (Row row : rows) {
      double scale = scale(row.coefficients());
      double[] whole = new double[costs.length];
      for (int k = 0; k < row.places().length; k++) {
        whole[row.places()[k]] += row.coefficients()[k] * scale;
      }
      constraints.add(new LinearConstraint(whole, row.kind(), row.rightSide() * scale));
    }
    return constraints;
  }

  /** The power of two that brings the largest number between 1 and 2. */
  private static double scale(double[] numbers) {
    double largest = 0;
    for (double number : numbers) {
      largest = Math.max(largest, Math.abs(number));
    }
    return largest == 0 ? 1 : Math.scalb(1.0, -Math.getExponent(largest));
  }

  private static double[] scaled(double[] numbers, double scale) {
    double[] scaled = numbers.clone();
    for (int k = 0; k < scaled.length; k++) {
      scaled[k] *= scale;
    }
    return scaled;
  }

  private boolean keepsRows(double[] at) {
    for (double value : at) {
      if (!(value >= -TOLERANCE)) {
        return false;
      }
    }
    for (Row row : rows) {
      double sum = 0;
      double size = Math.abs(row.rightSide());
      for (int k = 0; k < row.places().length; k++) {
        double part = row.coefficients()[k] * at[row.places()[k]];
        sum += part;
        size = Math.max(size, Math.max(Math.abs(part), Math.abs(row.coefficients()[k])));
      }
      double over = sum - row.rightSide();
      boolean broken =
          switch (row.kind()) {
            case LEQ -> over > TOLERANCE * size;
            case GEQ -> -over > TOLERANCE * size;
            case EQ -> Math.abs(over) > TOLERANCE * size;
          };
      if (broken) {
        return false;
      }
    }
    return true;
  }
}
