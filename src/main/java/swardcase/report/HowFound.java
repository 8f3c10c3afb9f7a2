package swardcase.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How the plan was found: how good it is, what hems it in, what is as good.
 *
 * @param otherEnds plans, other than this one, in which other starts of the search ended
 * @param stillToFind what the search could still find, in certainty equivalent: mean over batches
 * @param stillToFindError its standard error
 * @param nearEqual changes of one paddock after which the plan is as good within that
 * @param mostOutOfGrazingHa hectares that may be out of grazing at once
 * @param tooLarge paddocks larger than that
 * @param limits what lifting the limits that stop something would bring, at least
 * @param fixed choices made beforehand; none if empty
 * @param costOfFixing what they cost in certainty equivalent against the plan found without them;
 *     empty without such choices
 */
public record HowFound(
    int otherEnds,
    double stillToFind,
    double stillToFindError,
    List<NearEqual> nearEqual,
    double mostOutOfGrazingHa,
    List<String> tooLarge,
    List<LiftedLimit> limits,
    List<Choice> fixed,
    OptionalDouble costOfFixing) {

  /** Copies the lists. */
  public HowFound {
    nearEqual = List.copyOf(nearEqual);
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
   * A change of the plan that costs next to nothing.
   *
   * @param choice the change
   * @param behind what the plan has more in certainty equivalent; below nothing if it has less
   */
  public record NearEqual(Choice choice, double behind) {}

  /**
   * A limit that stops something.
   *
   * @param limit which
   * @param worth what a plan without it could have more in certainty equivalent, at least
   */
  public record LiftedLimit(Limit limit, double worth) {}

  /** What a plan has to keep within. */
  public enum Limit {
    /** Money that may be spent in one year. */
    MONEY,
    /** Share of the farm that may be out of grazing at once. */
    OUT_OF_GRAZING,
    /** Hectares that may be in crop at once. */
    CROP,
    /** Feed that the ewes must find at joining on paddocks they are not kept off. */
    FEED_AT_JOINING
  }
}
