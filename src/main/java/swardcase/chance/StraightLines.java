package swardcase.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/** What a number rises by with each of several others while the rest stay, by least squares. */
public final class StraightLines {

  private StraightLines() {}

  /**
   * The slopes.
   *
   * @param x the others, each in every draw
   * @param y the number in every draw
   * @return one for each of {@code x}; 0 for one that never varies, and all 0 if two move as one
   */
  public static double[] slopes(List<double[]> x, double[] y) {
    double[] slopes = new double[x.size()];
    List<Integer> vary = new ArrayList<>();
    for (int k = 0; k < slopes.length; k++) {
      double[] of = x.get(k);
      if (Arrays.stream(of).anyMatch(value -> value != of[0])) {
        vary.add(k);
      }
    }
    if (vary.isEmpty() || y.length < vary.size() + 2) {
      return slopes;
    }
    double[][] rows = new double[y.length][vary.size()];
    for (int d = 0; d < y.length; d++) {
      for (int k = 0; k < rows[d].length; k++) {
        rows[d][k] = x.get(vary.get(k))[d];
      }
    }
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.newSampleData(y, rows);
    try {
      double[] found = regression.estimateRegressionParameters();
      for (int k = 0; k < vary.size(); k++) {
        slopes[vary.get(k)] = found[k + 1];
      }
    } catch (SingularMatrixException alike) {
      return slopes;
    }
    return slopes;
  }
}
