package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the plan was found: how good it is, what hems it in, what comes next.
 *
 * @param effortPerHaAndYear what a change must gain to count, in money per hectare and year
 * @param starts plans the search began at
 * @param value what the plan gains beyond effort at likely inputs
 * @param mostBehind how far below that the worst of the other starts ended
 * @param notSure paddocks that the plan acts on, but which the draws do not speak for
 * @param better a change that would gain more on average over the draws, if there is one
 * @param mostOutOfGrazingHa hectares that may be out of grazing at once
 * @param tooLarge paddocks larger than that
 * @param limits what lifting the limits that bind would bring, at least
 * @param nextBest the best plan found that has another action for some paddock
 * @param fixed choices made beforehand; none if empty
 * @param costOfFixing what they cost against the best plan found without them
 */
public record HowFound(
    double effortPerHaAndYear,
    int starts,
    double value,
    double mostBehind,
    List<String> notSure,
    Optional<Better> better,
    double mostOutOfGrazingHa,
    List<String> tooLarge,
    List<LiftedLimit> limits,
    Optional<NextBest> nextBest,
    List<Choice> fixed,
    double costOfFixing) {

  /** Copies the lists. */
  public HowFound {
    notSure = List.copyOf(notSure);
    tooLarge = List.copyOf(tooLarge);
    limits = List.copyOf(limits);
    fixed = List.copyOf(fixed);
  }

  /**
   * What is done with a paddock.
   *
   * @param paddock its name
   * @param action key of the action
   * @param actionName its name
   * @param start calendar year it starts; empty for keeping
   */
  public record Choice(String paddock, String action, String actionName, OptionalInt start) {}

  /**
   * A change of the plan that gains more on average.
   *
   * @param choice the change
   * @param gain mean over the draws of what the plan with it brings more, in money
   */
  public record Better(Choice choice, double gain) {}

  /**
   * A limit that binds.
   *
   * @param limit which
   * @param worth what a plan without it could gain more, at least, in money
   */
  public record LiftedLimit(Limit limit, double worth) {}

  /** What a plan has to keep within. */
  public enum Limit {
    /** Money that may be spent in one year. */
    MONEY,
    /** Share of the farm that may be out of grazing at once. */
    OUT_OF_GRAZING,
    /** Feed that the ewes must find at joining on paddocks they are not kept off. */
    FEED_AT_JOINING
  }

  /**
   * The next-best plan.
   *
   * @param changes where it differs
   * @param behind what it gains less, in money
   */
  public record NextBest(List<Choice> changes, double behind) {

    /** Copies the list. */
    public NextBest {
      changes = List.copyOf(changes);
    }
  }
}
