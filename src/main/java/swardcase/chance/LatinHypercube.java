package swardcase.chance;

import java.util.List;
import java.util.stream.IntStream;
import swardcase.check.Check;

/**
 * Uniform numbers for a simulation with many inputs, spread more evenly than chance alone would.
 *
 * <p>Latin hypercube sampling (McKay, Beckman and Conover 1979, "A comparison of three methods for
 * selecting values of input variables in the analysis of output from a computer code",
 * Technometrics 21, 239-245): among the m draws of a block every input falls once into each of the
 * m slices of equal probability, in an order of its own. What the inputs do one by one is then
 * averaged nearly without error; what they do together is averaged as by plain draws.
 *
 * <p>Draws within a block are not independent, so a standard error comes from the means of the
 * blocks, which are ({@link #standardError}).
 */
public final class LatinHypercube {

  private final int blocks;
  private final int perBlock;
  private final double[][] uniform;

  private LatinHypercube(int blocks, int perBlock, double[][] uniform) {
    this.blocks = blocks;
    this.perBlock = perBlock;
    this.uniform = uniform;
  }

  /**
   * The same numbers from the same seed, whatever the number of threads.
   *
   * @param blocks blocks of draws, at least 2
   * @param perBlock draws in a block
   * @param keys a key for each input, which has one uniform number a draw; an input is drawn alike
   *     whatever other inputs there are
   */
  public static LatinHypercube of(long seed, int blocks, int perBlock, List<String> keys) {
    Check.that(blocks >= 2, "blocks of draws must be 2 or more, but was %s", blocks);
    Check.that(perBlock >= 1, "draws in a block must be 1 or more, but was %s", perBlock);
    double[][] uniform = new double[keys.size()][];
    SideBySide.of(IntStream.range(0, uniform.length))
        .forEach(
            j -> uniform[j] = ofInput(seed, CountedRandom.part(keys.get(j)), blocks, perBlock));
    return new LatinHypercube(blocks, perBlock, uniform);
  }

  private static double[] ofInput(long seed, long part, int blocks, int perBlock) {
    CountedRandom random = new CountedRandom(seed);
    double[] u = new double[blocks * perBlock];
    for (int b = 0; b < blocks; b++) {
      random.restart(seed, b, part);
      int from = b * perBlock;
      for (int i = 0; i < perBlock; i++) {
        u[from + i] = (i + random.nextDouble()) / perBlock;
      }
      for (int i = perBlock - 1; i > 0; i--) {
        int k = random.nextInt(i + 1);
        double held = u[from + i];
        u[from + i] = u[from + k];
        u[from + k] = held;
      }
    }
    return u;
  }

  /** How many blocks there are. */
  public int blocks() {
    return blocks;
  }

  /** How many draws there are. */
  public int draws() {
    return blocks * perBlock;
  }

  /** The uniform number of an input in a draw, from 0 to below 1. */
  public double uniform(int draw, int input) {
    return uniform[input][draw];
  }

  /**
   * Standard error of the mean of all values: √(Σ(m_b − m)² / B(B − 1)) from the means m_b of B
   * blocks.
   *
   * @param values one a draw, in the order of the draws
   */
  public double standardError(double[] values) {
    Check.that(values.length == draws(), "there must be a value for every draw");
    double[] means = new double[blocks];
    for (int b = 0; b < blocks; b++) {
      for (int i = 0; i < perBlock; i++) {
        means[b] += values[b * perBlock + i] / perBlock;
      }
    }
    double mean = Sample.mean(means);
    double squares = 0;
    for (double of : means) {
      squares += (of - mean) * (of - mean);
    }
    return Math.sqrt(squares / ((double) blocks * (blocks - 1)));
  }
}
