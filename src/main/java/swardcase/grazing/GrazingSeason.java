package swardcase.grazing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import swardcase.check.Check;

/**
 * Feed of the paddocks and need of the classes of stock over some half-months, with what it costs a
 * class to eat a kg there. Nothing is copied or written to.
 *
 * <pre>
 *   sum over half-months r up to q, over classes, of eaten(g, r, i) / kept(i, r) at most feed(i, q)
 * </pre>
 *
 * <p>Feed is told at the first half-month's measure: a kg of it has become {@code kept} kg when
 * half-month p is grazed. 100 kg at the start of which nine tenths are kept a half-month, all left
 * alone, are 90 in the second; then 45 of them eaten leave 50 of the hundred.
 *
 * @param feedKg feed that may have been eaten by the end of a half-month, by paddock and
 *     half-month, at the first one's measure, kg DM; what must be left is taken off
 * @param kept what is left of a kg when a half-month is grazed, by paddock and half-month; above 0
 * @param needKg need by class and half-month, kg DM
 * @param lossPerKg money lost if the class eats a kg there, by class, half-month and paddock;
 *     infinite where it must not go
 * @param pricePerKg money for a kg bought instead, by half-month
 * @param strength clover's strength, by which classes that nothing hurts take the worst first
 * @param mostShare largest sum, over the half-months, of the shares of its need that a class takes
 *     from risky paddocks, each times {@code risk}; infinite where it is not limited
 * @param risk weight of a risky paddock, by half-month and paddock; 0 where it is not risky
 */
public record GrazingSeason(
    double[][] feedKg,
    double[][] kept,
    double[][] needKg,
    double[][][] lossPerKg,
    double[] pricePerKg,
    double[] strength,
    double[] mostShare,
    double[][] risk) {

  /** Checks that the lists fit each other. */
  public GrazingSeason {
    Check.that(kept.length == feedKg.length && strength.length == feedKg.length, "paddocks differ");
    Check.that(mostShare.length == needKg.length, "classes differ");
    Check.that(risk.length == pricePerKg.length, "half-months differ");
  }

  int classes() {
    return needKg.length;
  }

  int paddocks() {
    return feedKg.length;
  }

  int halfMonths() {
    return pricePerKg.length;
  }

  /** Paddocks by how fast their feed goes, the weaker clover last among equals. */
  int[] fastestFirst() {
    return sorted(
        Comparator.<Integer>comparingDouble(i -> kept(i)).thenComparingDouble(i -> -strength[i]));
  }

  /** Paddocks by the strength of their clover, the one whose feed lasts first among equals. */
  int[] weakestFirst() {
    return sorted(
        Comparator.<Integer>comparingDouble(i -> strength[i]).thenComparingDouble(i -> -kept(i)));
  }

  private double kept(int paddock) {
    return kept[paddock][halfMonths() - 1];
  }

  private int[] sorted(Comparator<Integer> order) {
    return IntStream.range(0, paddocks()).boxed().sorted(order).mapToInt(i -> i).toArray();
  }

  /** Classes by how few paddocks they may use. */
  int[] narrowestFirst() {
    return IntStream.range(0, classes())
        .boxed()
        .sorted(Comparator.comparingLong(this::open))
        .mapToInt(g -> g)
        .toArray();
  }

  private long open(int g) {
    return Arrays.stream(lossPerKg[g])
        .flatMapToDouble(Arrays::stream)
        .filter(Double::isFinite)
        .count();
  }
}
