package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.check.Check;
import swardcase.decision.FarmMeasures.OfFarm;
import swardcase.draws.Alternatives;
import swardcase.draws.Draws;
import swardcase.farm.Action;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Plan;
import swardcase.search.LikelySearch;

/**
 * What another farm brings more than a first one with its plan, in the same draws: first by itself,
 * the plan of the first farm being held, then by a plan of its own. Present values, each over the
 * years and at the discount rate of its own farm, the coming year not discounted; below nothing
 * where the other brings less.
 *
 * <p>A farm has its standing result as long as nothing is changed, the worth of its lambs, less dry
 * ewes and supplement, and the gain of a plan over that. With 8,000 a year here, 10,000 there, 15
 * years and 7 % the other stands better by 2,000 x 9.745 = 19,491. If the first plan gains 8,000
 * here and 3,000 there, the other brings 14,491 by itself; if its own plan gains 5,000, that adds
 * 2,000, together 16,491. An unknown that both farms have is drawn alike in both, so what they
 * share falls out of the difference.
 *
 * @param byItself what the other farm with the first one's plan brings more than the first farm
 *     with it
 * @param planAdds the gain of the other's own plan less that of the plan held
 * @param together the sum of both in each draw
 * @param notHeld paddocks of the first farm on which its plan cannot be held on the other
 * @param heldWithinLimits whether the plan held keeps within the limits of the other farm
 */
public record FarmDifference(
    Spread byItself,
    Spread planAdds,
    Spread together,
    List<String> notHeld,
    boolean heldWithinLimits) {

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
    List<String> notHeld = new ArrayList<>();
    Plan plan = held(first, other, notHeld);
    double[] held = other.npv(plan);
    double[] standing = Sample.difference(standing(other), standing(first));
    double[] kept = Sample.difference(held, first.simulation().npv(Alternatives.PLAN));
    double[] planAdds = Sample.difference(other.simulation().npv(Alternatives.PLAN), held);
    double[] byItself = new double[held.length];
    double[] together = new double[held.length];
    for (int d = 0; d < held.length; d++) {
      byItself[d] = standing[d] + kept[d];
      together[d] = byItself[d] + planAdds[d];
    }
    return new FarmDifference(
        first.spread(byItself),
        first.spread(planAdds),
        first.spread(together),
        List.copyOf(notHeld),
        new LikelySearch(other.model(), List.of()).feasible(plan));
  }

  /**
   * The plan of one farm, held on another: on each paddock of the same name what the plan does with
   * it, in the same year. Where the other farm has no such paddock, or the action cannot be done or
   * seen through there, nothing is done.
   *
   * @param notHeld takes the paddocks of the first farm on which something is planned that is not
   *     held
   */
  static Plan held(Decision first, Decision other, List<String> notHeld) {
    FarmModel there = other.model();
    List<String> names = there.farm().paddocks().stream().map(Paddock::name).toList();
    List<String> keys = there.actions().stream().map(Action::key).toList();
    Plan held = there.keepAll();
    for (int i = 0; i < first.plan().paddocks(); i++) {
      if (first.isActedOn(i)) {
        String name = first.model().farm().paddocks().get(i).name();
        int place = names.indexOf(name);
        int action = keys.indexOf(first.model().actions().get(first.plan().action(i)).key());
        int start = first.plan().start(i);
        if (place >= 0
            && action >= 0
            && other.likely().allowed(place, action)
            && start < there.startYears(action)) {
          held = held.with(place, action, start);
        } else {
          notHeld.add(name);
        }
      }
    }
    for (FarmRule rule : FarmRule.values()) {
      if (first.plan().choice(rule) < there.choices(rule)) {
        held = held.with(names.size() + rule.ordinal(), first.plan().choice(rule), 0);
      }
    }
    return held;
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
