package swardcase.chance;

import java.util.random.RandomGenerator;

/**
 * A stream of random numbers that can be started anywhere: the numbers of draw 17 are the same
 * whatever was drawn before and by whichever thread. {@link #restart} allocates nothing.
 *
 * <p>The generator is SplitMix64 of Steele, Lea and Flood (2014, "Fast splittable pseudorandom
 * number generators", Proceedings of OOPSLA 2014, 453-472) with the mixing function that {@link
 * java.util.SplittableRandom} uses, so that from one seed both give the same numbers.
 */
public final class CountedRandom implements RandomGenerator {

  private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;

  private long state;

  /** A stream that starts as {@code new SplittableRandom(seed)} does. */
  public CountedRandom(long seed) {
    state = seed;
  }

  /** Starts the stream of one draw and one part of it. */
  public void restart(long seed, long draw, long part) {
    state = mix(mix(mix(seed) + draw * GOLDEN_GAMMA) + part * GOLDEN_GAMMA);
  }

  /**
   * The part of a stream that belongs to a name, so that a number is drawn alike whatever else is
   * drawn beside it: FNV-1a over the UTF-16 units of the name, 64 bits (Fowler, Noll and Vo; IETF
   * draft-eastlake-fnv).
   */
  public static long part(String name) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < name.length(); i++) {
      hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
    }
    return hash;
  }

  @Override
  public long nextLong() {
    state += GOLDEN_GAMMA;
    return mix(state);
  }

  private static long mix(long value) {
    long z = value;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }
}
