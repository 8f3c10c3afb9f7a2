package swardcase.decision;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/**
 * One number in each draw, and at the likely inputs.
 *
 * @param drawn in the order of the draws
 * @param likely at the likely inputs
 */
record Values(double[] drawn, double likely) {

  Values plus(Values other) {
    return with(other, Double::sum);
  }

  Values minus(Values other) {
    return with(other, (a, b) -> a - b);
  }

  Values times(Values other) {
    return with(other, (a, b) -> a * b);
  }

  Values times(double factor) {
    return new Values(Arrays.stream(drawn).map(x -> x * factor).toArray(), likely * factor);
  }

  private Values with(Values other, DoubleBinaryOperator join) {
    double[] joined = new double[drawn.length];
    Arrays.setAll(joined, d -> join.applyAsDouble(drawn[d], other.drawn[d]));
    return new Values(joined, join.applyAsDouble(likely, other.likely));
  }
}
