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
 * draws that count alike would tell as much, or until it holds a stated number. A draw that is
 * picked twice has twice what bears on the flock and the feed; its seasons, prices and costs, on
 * which no record bears, are those of the place it is put at.
 */
public final class Weighing {

  /** Effective draws that a pool grows to. */
  public static final int EFFECTIVE = 50;

  /** Growth stops at so many draws in a pool. */
  public static final int MOST_IN_POOL = 2500;

  /** The same in the one pool of draws that a search looks at. */
  static final int MOST_IN_SEARCH = 20_000;

  private final int pools;
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

  private Weighing(Draws draws, int pools) {
    this.pools = pools;
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
    Weighing weighing = new Weighing(draws, pools);
    Workspaces<Candidate> workspaces = new Workspaces<>(() -> new Candidate(draws));
    int times = Math.max(1, most * pools / draws.count());
    for (int pool = 0; pool < pools; pool++) {
      weighing.weigh(draws, workspaces, pool, effective, times);
    }
    return weighing;
  }

  private void weigh(
      Draws draws, Workspaces<Candidate> workspaces, int pool, int enough, int mostTimes) {
    int size = number.length / pools;
    int from = pool * size;
    double[] logWeight = new double[size];
    double found = 0;
    int count = 0;
    for (int times = 0; times < mostTimes && found < enough; times++) {
      logWeight = Arrays.copyOf(logWeight, count + size);
      double[] into = logWeight;
      int of = times;
      int at = count;
      SideBySide.of(IntStream.range(0, size))
          .forEach(
              d ->
                  workspaces.use(
                      candidate -> into[at + d] = candidate.logWeight(draws, from + d, of)));
      count += size;
      found = Weights.effective(logWeight, count);
    }
    int[] picked = new int[size];
    CountedRandom random = new CountedRandom(0);
    random.restart(draws.seed(), pool, CountedRandom.part("records"));
    Weights.pick(logWeight, count, random.nextDouble(), picked);
    shuffle(picked, random);
    for (int d = 0; d < size; d++) {
      number[from + d] = from + picked[d] % size;
      tries[from + d] = picked[d] / size;
    }
    effective += found;
    made += count;
    stopped |= found < enough;
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
