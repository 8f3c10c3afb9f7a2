package swardcase.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.decision.Decision;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Plan;
import swardcase.search.FixedChoice;
import swardcase.search.Found;
import swardcase.search.PlanLimit;

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
  public record LiftedLimit(PlanLimit limit, double worth) {}

  /** More plans as good as the plan would only blur it. */
  private static final int NEAR_EQUAL = 6;

  static HowFound of(Decision decision, int firstYear) {
    Found found = decision.found();
    Farm farm = decision.model().farm();
    double mostOut = farm.finance().mostOutOfGrazing().likely() * farm.areaHa();
    return new HowFound(
        found.others().size(),
        found.stillToFind().mean(),
        found.stillToFind().error(),
        found.nearEqual().stream()
            .limit(NEAR_EQUAL)
            .map(
                near ->
                    new NearEqual(
                        choice(decision, near.paddock(), near.course(), firstYear), near.behind()))
            .toList(),
        mostOut,
        farm.paddocks().stream()
            .filter(paddock -> paddock.areaHa() > mostOut)
            .map(Paddock::name)
            .toList(),
        found.worthOfLifting().entrySet().stream()
            .filter(lifted -> lifted.getValue() > 1)
            .map(lifted -> new LiftedLimit(lifted.getKey(), lifted.getValue()))
            .toList(),
        decision.fixed().stream()
            .map(FixedChoice::paddock)
            .map(i -> choice(decision, i, decision.plan().course(i), firstYear))
            .toList(),
        decision.costOfFixing());
  }

  /** Where another plan differs from the plan. */
  static List<Choice> changes(Decision decision, Plan other, int firstYear) {
    return IntStream.range(0, other.paddocks())
        .filter(i -> !other.course(i).equals(decision.plan().course(i)))
        .mapToObj(i -> choice(decision, i, other.course(i), firstYear))
        .toList();
  }

  private static Choice choice(Decision decision, int paddock, Course course, int firstYear) {
    FarmModel model = decision.model();
    Action of = model.actions().get(course.action());
    return new Choice(
        model.farm().paddocks().get(paddock).name(),
        of.key(),
        of.name(),
        course.action() == model.keep()
            ? OptionalInt.empty()
            : OptionalInt.of(firstYear + course.start()));
  }
}
