package swardcase.chance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.check.Check;

/**
 * What each choice pays in each of many draws, the same draw for every choice, and what it is worth
 * to know more before choosing.
 *
 * <pre>
 * EVPI  = mean over draws of the most that any choice pays - the most that any pays on average
 * EVPPI = mean over draws of what the choice pays that is picked from what is known - the same
 * </pre>
 *
 * <p>EVPI is also the least expected regret of any choice. For EVPPI, and for the result of a test,
 * the draws are put in order by what would be known and cut into {@link #CELLS} cells; in each, the
 * choice is picked that pays best on average. To pick it by the same draws that value it would
 * promise too much, so draws of even number are valued by a choice picked from the odd ones and the
 * other way round. The mean is therefore a little too low, never too high on average, and it is
 * never above EVPI in the same draws; below zero it is reported as zero, because nobody has to act
 * on what he learnt.
 */
public final class Payoffs {

  /** Most cells the draws are cut into. */
  public static final int CELLS = 16;

  private static final int LEAST_PER_CELL = 50;

  private final double[][] payoff;
  private final int draws;
  private final double[] byDraw;
  private final int best;

  /**
   * The payoffs.
   *
   * @param payoff by choice and draw; taken over, not copied
   */
  public Payoffs(double[][] payoff) {
    this.payoff = payoff;
    draws = payoff[0].length;
    byDraw = new double[payoff.length * draws];
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int a = 0; a < payoff.length; a++) {
      Check.that(payoff[a].length == draws, "every choice must have a payoff in every draw");
      for (int d = 0; d < draws; d++) {
        byDraw[d * payoff.length + a] = payoff[a][d];
      }
      double mean = Sample.mean(payoff[a]);
      if (mean > most) {
        most = mean;
        best = a;
      }
    }
    this.best = best;
  }

  /** Expected value of perfect information. */
  public DrawnInformation perfect() {
    double[] gain = new double[draws];
    for (int d = 0; d < draws; d++) {
      gain[d] = most(d) - payoff[best][d];
    }
    return DrawnInformation.of(gain);
  }

  /** Mean over the draws of what each choice falls short of the best one of the draw. */
  public double[] expectedRegret() {
    double[] regret = new double[payoff.length];
    for (int d = 0; d < draws; d++) {
      double most = most(d);
      for (int a = 0; a < payoff.length; a++) {
        regret[a] += (most - payoff[a][d]) / draws;
      }
    }
    return regret;
  }

  private double most(int draw) {
    int from = draw * payoff.length;
    double most = byDraw[from];
    for (int a = 1; a < payoff.length; a++) {
      most = Math.max(most, byDraw[from + a]);
    }
    return most;
  }

  /**
   * Expected value of knowing one number before choosing, and the choices that would be picked.
   *
   * @param known what would be known in each draw: an input, or a simulated test result
   */
  public Learnt learnt(double[] known) {
    Check.that(known.length == draws, "there must be a known value for every draw");
    int cells = Math.max(1, Math.min(CELLS, draws / LEAST_PER_CELL));
    int[] cell = cells(known, cells);
    int choices = payoff.length;
    double[] sums = new double[2 * cells * choices];
    for (int d = 0; d < draws; d++) {
      int into = (2 * cell[d] + (d & 1)) * choices;
      int from = d * choices;
      for (int a = 0; a < choices; a++) {
        sums[into + a] += byDraw[from + a];
      }
    }
    int[] pick = new int[2 * cells];
    Arrays.setAll(pick, half -> greatest(sums, half * choices, choices));
    double[] gain = new double[draws];
    int[] picked = new int[choices];
    long[] inCell = new long[choices];
    for (int d = 0; d < draws; d++) {
      int choice = pick[2 * cell[d] + 1 - (d & 1)];
      gain[d] = payoff[choice][d] - payoff[best][d];
      picked[choice]++;
      inCell[choice] += cell[d];
    }
    long ofAll = Arrays.stream(inCell).sum();
    List<Learnt.Pick> picks =
        IntStream.range(0, choices)
            .filter(a -> picked[a] > 0)
            .mapToObj(
                a ->
                    new Learnt.Pick(
                        a, (double) picked[a] / draws, inCell[a] * draws > ofAll * picked[a]))
            .sorted(Comparator.comparingDouble(each -> -each.chance()))
            .toList();
    return new Learnt(DrawnInformation.of(gain), picks);
  }

  /** Place of the greatest of some values; the first of equals. */
  private static int greatest(double[] values, int from, int count) {
    int greatest = 0;
    for (int a = 1; a < count; a++) {
      greatest = values[from + a] > values[from + greatest] ? a : greatest;
    }
    return greatest;
  }

  /**
   * The cell of each draw when the values are put in rising order, equal ones in the order of the
   * draws, and cut into parts alike.
   */
  private static int[] cells(double[] values, int cells) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double[] start = new double[cells - 1];
    int[] equalBefore = new int[cells - 1];
    for (int c = 0; c < start.length; c++) {
      int at = (int) ((long) (c + 1) * values.length / cells);
      start[c] = sorted[at];
      while (at > 0 && sorted[at - 1] == start[c]) {
        at--;
        equalBefore[c]++;
      }
    }
    int[] cell = new int[values.length];
    for (int d = 0; d < cell.length; d++) {
      for (int c = 0; c < start.length; c++) {
        if (values[d] > start[c] || values[d] == start[c] && equalBefore[c]-- <= 0) {
          cell[d]++;
        }
      }
    }
    return cell;
  }
}
