package swardcase.decision;

import java.util.Arrays;
import java.util.stream.IntStream;
import swardcase.chance.Sample;
import swardcase.check.Check;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.draws.Alternatives;
import swardcase.draws.Draws;
import swardcase.draws.Spread;

/**
 * What another farm brings more than a first one, in the same draws: first by itself, then through
 * its plan. Present values, each over the years and at the discount rate of its own farm, the
 * coming year not discounted; below nothing where the other brings less.
 *
 * <p>A farm has its standing result as long as nothing is changed: the worth of its lambs, less dry
 * ewes and supplement. With 8,000 a year here, 10,000 there, 15 years and 7 % the other is better
 * by 2,000 x 9.745 = 19,491 by itself; if its plan gains 5,000 where the first gains 8,000, the
 * plan adds -3,000, together 16,491. An unknown that both farms have is drawn alike in both, so
 * what they share falls out of the difference.
 *
 * @param byItself the other's standing result less the first farm's
 * @param planAdds the gain of the other's plan less that of the first
 * @param together the sum of both in each draw
 */
public record FarmDifference(Spread byItself, Spread planAdds, Spread together) {

  /**
   * The difference from {@code first} to {@code other}.
   *
   * @throws IllegalArgumentException if they were not decided by the same seed and number of draws
   */
  public static FarmDifference of(Decision first, Decision other) {
    Draws draws = first.simulation().draws();
    Draws others = other.simulation().draws();
    Check.that(
        draws.seed() == others.seed() && draws.count() == others.count(),
        "farms are compared in the same draws, but these have %s from seed %s and %s from seed %s",
        draws.count(),
        draws.seed(),
        others.count(),
        others.seed());
    double[] byItself = Sample.difference(standing(other), standing(first));
    double[] planAdds =
        Sample.difference(
            other.simulation().npv(Alternatives.PLAN), first.simulation().npv(Alternatives.PLAN));
    double[] together = new double[byItself.length];
    Arrays.setAll(together, d -> byItself[d] + planAdds[d]);
    return new FarmDifference(
        first.spread(byItself), first.spread(planAdds), first.spread(together));
  }

  /** The standing result in each draw, over the years counted. */
  private static double[] standing(Decision decision) {
    double years =
        IntStream.range(0, decision.model().years()).mapToDouble(decision.likely()::discount).sum();
    return Arrays.stream(decision.drawn(OfFarm.STANDING_RESULT))
        .map(year -> year * years)
        .toArray();
  }
}
