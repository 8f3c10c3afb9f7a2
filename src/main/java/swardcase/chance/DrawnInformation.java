package swardcase.chance;

import java.util.Arrays;
import swardcase.check.Check;

/**
 * What it is worth to know more before choosing, from simulated payoffs: {@code payoff[a][d]} of
 * choice a in draw d, the same draw for every choice.
 *
 * <pre>
 * EVPI  = mean over d of max_a payoff - max over a of mean payoff
 * EVPPI = mean over d of payoff of the choice picked from what is known in d - the same maximum
 * </pre>
 *
 * <p>EVPI is also the least expected regret of any choice. For EVPPI, and for the result of a test,
 * the draws are put in order by what would be known and cut into {@link #CELLS} cells; in each, the
 * choice is picked that pays best on average. To pick it by the same draws that value it would
 * promise too much, so the draws with an even place are valued by a choice picked from the odd ones
 * and the other way round. The mean is therefore a little too low, never too high on average, and
 * it is never above EVPI in the same draws; below zero it is reported as zero, because nobody has
 * to act on what he learnt.
 *
 * @param value in the unit of the payoffs, zero or more
 * @param standardError of {@code value}, as if the draws were independent
 */
public record DrawnInformation(double value, double standardError) {

  /** Most cells the draws are cut into. */
  public static final int CELLS = 16;

  private static final int LEAST_PER_CELL = 50;

  /** Checks that information is not worth less than nothing. */
  public DrawnInformation {
    Check.notNegative(value, "value of information");
    Check.notNegative(standardError, "standard error of a value of information");
  }

  /** Place of the choice that pays most on average; the first of equals. */
  public static int best(double[][] payoff) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int a = 0; a < payoff.length; a++) {
      double mean = Sample.mean(payoff[a]);
      if (mean > most) {
        most = mean;
        best = a;
      }
    }
    return best;
  }

  /** Expected value of perfect information. */
  public static DrawnInformation perfect(double[][] payoff) {
    double[] best = payoff[best(payoff)];
    double[] gain = new double[best.length];
    for (int d = 0; d < gain.length; d++) {
      double most = best[d];
      for (double[] choice : payoff) {
        most = Math.max(most, choice[d]);
      }
      gain[d] = most - best[d];
    }
    return of(gain);
  }

  /** Mean over the draws of what each choice falls short of the best one of the draw. */
  public static double[] expectedRegret(double[][] payoff) {
    double[] regret = new double[payoff.length];
    int draws = payoff[0].length;
    for (int d = 0; d < draws; d++) {
      double most = Double.NEGATIVE_INFINITY;
      for (double[] choice : payoff) {
        most = Math.max(most, choice[d]);
      }
      for (int a = 0; a < payoff.length; a++) {
        regret[a] += (most - payoff[a][d]) / draws;
      }
    }
    return regret;
  }

  /**
   * Expected value of knowing one number before choosing.
   *
   * @param known what would be known in each draw: an input, or a simulated test result
   */
  public static DrawnInformation partial(double[][] payoff, double[] known) {
    int draws = known.length;
    Check.that(payoff[0].length == draws, "there must be a known value for every draw");
    int cells = Math.max(1, Math.min(CELLS, draws / LEAST_PER_CELL));
    double[] best = payoff[best(payoff)];
    double[] gain = new double[draws];
    int[] order = order(known);
    int[] shown = new int[draws];
    int[] end = new int[2 * cells];
    int count = 0;
    for (int cell = 0; cell < end.length; cell++) {
      for (int k = from(cell / 2, cells, draws); k < from(cell / 2 + 1, cells, draws); k++) {
        if ((order[k] & 1) != cell % 2) {
          shown[count++] = order[k];
        }
      }
      end[cell] = count;
    }
    int[] pick = picks(payoff, shown, end);
    for (int c = 0; c < cells; c++) {
      for (int k = from(c, cells, draws); k < from(c + 1, cells, draws); k++) {
        int d = order[k];
        gain[d] = payoff[pick[2 * c + (d & 1)]][d] - best[d];
      }
    }
    return of(gain);
  }

  private static int from(int cell, int cells, int draws) {
    return (int) ((long) cell * draws / cells);
  }

  /**
   * For each cell the place of the choice that pays most over its draws, the first of equals. Goes
   * through the choices one after the other, because all draws of one lie together in memory.
   *
   * @param shown draws of all cells, one cell after the other
   * @param end where each cell ends
   */
  private static int[] picks(double[][] payoff, int[] shown, int[] end) {
    int[] pick = new int[end.length];
    double[] most = new double[end.length];
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (int a = 0; a < payoff.length; a++) {
      double[] choice = payoff[a];
      int k = 0;
      for (int cell = 0; cell < end.length; cell++) {
        double sum = 0;
        for (; k < end[cell]; k++) {
          sum += choice[shown[k]];
        }
        if (sum > most[cell]) {
          most[cell] = sum;
          pick[cell] = a;
        }
      }
    }
    return pick;
  }

  /** Places of the values in rising order; equal ones in the order of the draws. */
  private static int[] order(double[] values) {
    long[] ranked = new long[values.length];
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    for (int d = 0; d < values.length; d++) {
      long rank = Arrays.binarySearch(sorted, values[d]);
      while (rank > 0 && sorted[(int) rank - 1] == values[d]) {
        rank--;
      }
      ranked[d] = rank << 32 | d;
    }
    Arrays.sort(ranked);
    int[] order = new int[values.length];
    for (int k = 0; k < order.length; k++) {
      order[k] = (int) ranked[k];
    }
    return order;
  }

  private static DrawnInformation of(double[] gain) {
    return new DrawnInformation(
        Math.max(0, Sample.mean(gain)), Sample.standardDeviation(gain) / Math.sqrt(gain.length));
  }
}
