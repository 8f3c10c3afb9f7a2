package swardcase.grazing;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import swardcase.farm.Mob;

/**
 * The cleanest paddocks to the mob that strong clover hurts most, its weeks before and during
 * joining taken as one time: mobs in order take paddocks by rising strength until their need is met
 * (north-west corner). For one time and common access that is the cheapest way (Hoffman 1963, on
 * arrays with the Monge property; told in {@code docs/method/grazing.md}).
 *
 * <p>Paddocks are told by {@value #BINS} classes of strength, each with its feed and its mean
 * strength, so that a plan's paddocks are sums. Paddocks of one class are eaten evenly. Other stock
 * take what is left. 10 ha of feed at strength 0 and 20 at 0.6: a mob that needs 10 is on 0, the
 * next that needs 10 on 0.6, where as now both are on 0.4.
 */
public final class InOrder {

  /** Classes of strength. */
  public static final int BINS = 8;

  private final int[] order;
  private final boolean[] moves;
  private final double[] strength;
  private double binsPerStrength;

  /** For mobs as they stand on the farm. */
  public InOrder(List<Mob> mobs) {
    order =
        IntStream.range(0, mobs.size())
            .boxed()
            .sorted(Comparator.comparingDouble(g -> -mobs.get(g).ageShares().get(0)))
            .mapToInt(g -> g)
            .toArray();
    moves = new boolean[mobs.size()];
    for (int g = 0; g < moves.length; g++) {
      moves[g] = mobs.get(g).mayMove();
    }
    strength = new double[moves.length];
  }

  /** Takes a run; {@code strongest} is the strongest clover of any paddock in it. */
  public void set(double strongest) {
    binsPerStrength = strongest > 0 ? BINS / strongest : 0;
  }

  /** The class of a strength. */
  public int bin(double ofPaddock) {
    return Math.min(BINS - 1, (int) (ofPaddock * binsPerStrength));
  }

  /**
   * Finds what each mob is on.
   *
   * @param sums feed of each class from {@code at} on, and behind them strength x feed
   * @param needed feed that each mob needs, in their unit
   */
  public void find(double[] sums, int at, IntToDoubleFunction needed) {
    int bin = 0;
    double taken = 0;
    for (int g : order) {
      double need = moves[g] ? needed.applyAsDouble(g) : 0;
      double left = need;
      double dose = 0;
      while (bin < BINS && left > 0) {
        double feed = sums[at + bin];
        double take = Math.min(left, feed - taken);
        if (take > 0) {
          left -= take;
          taken += take;
          dose += take * sums[at + BINS + bin] / feed;
        }
        if (left > 0) {
          bin++;
          taken = 0;
        }
      }
      strength[g] = need > left ? dose / (need - left) : Double.NaN;
    }
  }

  /** Strength of what a mob is on; not a number where it does not move or finds nothing. */
  public double strength(int mob) {
    return strength[mob];
  }
}
