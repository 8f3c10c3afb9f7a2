package swardcase.draws;

import java.util.Arrays;
import java.util.stream.IntStream;
import swardcase.chance.CountedRandom;
import swardcase.chance.SideBySide;
import swardcase.chance.Weights;
import swardcase.chance.Workspaces;
import swardcase.outcome.Draw;
import swardcase.outcome.OutcomeFunction;

/**
 * The draws of a farm with records: drawn as those of any farm, weighed by how well the farm as it
 * stands explains its own records in them ({@link RecordsFit}), and picked so that all count alike.
 *
 * <p>A pool is weighed by itself, so that pools are independent and a standard error comes from
 * their means. It is grown by as many draws as it gives back at a time, until {@value #EFFECTIVE}
 * draws that count alike would tell as much, or until it holds a stated number. Where growth stops
 * so in a pool, all pools are picked from as one, since a pool of few draws may lie beside the
 * others; standard errors are then too small. A draw that is picked twice has twice what bears on
 * the flock and the feed; its seasons, prices and costs, on which no record bears, are those of the
 * place it is put at.
 */
public final class Weighing {

  /** Effective draws that a pool grows to. */
  public static final int EFFECTIVE = 50;

  /** Growth stops at so many draws in a pool. */
  public static final int MOST_IN_POOL = 2500;

  /** The same in the one pool of draws that a search looks at. */
  static final int MOST_IN_SEARCH = 20_000;

  private final int[] number;
  private final int[] tries;
  private double effective;
  private int made;
  private boolean stopped;

  /** A farm that is set to one candidate after another. */
  private static final class Candidate {
    private final OutcomeFunction run;
    private final Draw draw;
    private final CountedRandom random = new CountedRandom(0);
    private final RecordsFit fit;

    Candidate(Draws draws) {
      run = draws.model().newRun();
      draw = new Draw(draws.model());
      fit = new RecordsFit(draws.model());
    }

    double logWeight(Draws draws, int number, int tries) {
      draws.fillFrom(number, number, tries, random, draw);
      run.set(draw);
      return run.isPossible() ? fit.logWeight(run) : Double.NEGATIVE_INFINITY;
    }
  }

  private Weighing(Draws draws) {
    number = new int[draws.count()];
    tries = new int[draws.count()];
  }

  /**
   * Weighs draws in so many pools of the same size.
   *
   * @param effective effective draws a pool is grown to
   * @param most draws in a pool at which growth stops
   */
  static Weighing of(Draws draws, int pools, int effective, int most) {
    Weighing weighing = new Weighing(draws);
    Workspaces<Candidate> workspaces = new Workspaces<>(() -> new Candidate(draws));
    int size = draws.count() / pools;
    double[][] logWeight = new double[pools][];
    for (int pool = 0; pool < pools; pool++) {
      int from = pool * size;
      logWeight[pool] = weighing.weigh(draws, workspaces, from, size, effective, most);
    }
    if (weighing.stopped) {
      weighing.pick(draws, 0, logWeight, size);
      weighing.effective = Weights.effective(joined(logWeight));
    } else {
      for (int pool = 0; pool < pools; pool++) {
        weighing.pick(draws, pool, new double[][] {logWeight[pool]}, size);
      }
    }
    return weighing;
  }

  private static double[] joined(double[][] logWeight) {
    return Arrays.stream(logWeight).flatMapToDouble(Arrays::stream).toArray();
  }

  /** Makes the draws of a pool, each of its places again and again, and weighs them. */
  private double[] weigh(
      Draws draws, Workspaces<Candidate> workspaces, int from, int size, int enough, int most) {
    double[] logWeight = {};
    double found = 0;
    for (int times = 0; times == 0 || found < enough && logWeight.length + size <= most; times++) {
      int at = logWeight.length;
      double[] into = Arrays.copyOf(logWeight, at + size);
      int of = times;
      SideBySide.of(IntStream.range(0, size))
          .forEach(
              d ->
                  workspaces.use(
                      candidate -> into[at + d] = candidate.logWeight(draws, from + d, of)));
      logWeight = into;
      found = Weights.effective(logWeight);
    }
    effective += found;
    made += logWeight.length;
    stopped |= found < enough;
    return logWeight;
  }

  /** Picks the draws of a pool, or of all pools as one. */
  private void pick(Draws draws, int pool, double[][] logWeight, int size) {
    int[] picked = new int[size * logWeight.length];
    CountedRandom random = new CountedRandom(0);
    random.restart(draws.seed(), pool, CountedRandom.part("records"));
    Weights.pick(joined(logWeight), random.nextDouble(), picked);
    shuffle(picked, random);
    int[] begins = new int[logWeight.length];
    for (int k = 1; k < begins.length; k++) {
      begins[k] = begins[k - 1] + logWeight[k - 1].length;
    }
    for (int d = 0; d < picked.length; d++) {
      int k = begins.length - 1;
      while (picked[d] < begins[k]) {
        k--;
      }
      int place = picked[d] - begins[k];
      number[pool * size + d] = (pool + k) * size + place % size;
      tries[pool * size + d] = place / size;
    }
  }

  /** Draws are halved, and cut into stages, by their order, with which a weight must not go. */
  private static void shuffle(int[] picked, CountedRandom random) {
    for (int i = picked.length - 1; i > 0; i--) {
      int k = random.nextInt(i + 1);
      int held = picked[i];
      picked[i] = picked[k];
      picked[k] = held;
    }
  }

  /** The draw that stands at a place. */
  int number(int place) {
    return number[place];
  }

  /** How many times that draw had been drawn anew. */
  int tries(int place) {
    return tries[place];
  }

  /** Effective draws of all pools together. */
  public double effective() {
    return effective;
  }

  /** Draws made. */
  public int made() {
    return made;
  }

  /** Whether growth stopped at its limit in a pool. */
  public boolean stopped() {
    return stopped;
  }
}
