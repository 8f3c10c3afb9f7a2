package swardcase.plan;

import java.util.Arrays;

/**
 * Between what values a plan better than the one in hand can lie: the sums of every year, at {@code
 * year * sums + sum}, and the strengths of every mob's clover, at {@code mob * years + year}.
 */
record Span(
    double[] low,
    double[] high,
    double[] least,
    double[] most,
    double[] leastHeld,
    double[] mostHeld) {

  /** Anything at all. */
  static Span all(PlanTable table) {
    int size = table.years() * table.sums();
    int strengths = table.run().mobs() * table.years();
    Span span =
        new Span(
            filled(size, Double.NEGATIVE_INFINITY),
            filled(size, Double.POSITIVE_INFINITY),
            new double[strengths],
            new double[strengths],
            new double[strengths],
            new double[strengths]);
    for (int g = 0; g < table.run().mobs(); g++) {
      FlockEffect effect = table.run().flock(g);
      double top = effect.spacing() * (StrengthGrid.NODES - 1);
      for (int t = 0; t < table.years(); t++) {
        span.most[g * table.years() + t] = top;
        span.mostHeld[g * table.years() + t] = top;
      }
    }
    return span;
  }

  private static double[] filled(int size, double value) {
    double[] array = new double[size];
    Arrays.fill(array, value);
    return array;
  }

  Span copy() {
    return new Span(
        low.clone(),
        high.clone(),
        least.clone(),
        most.clone(),
        leastHeld.clone(),
        mostHeld.clone());
  }
}
