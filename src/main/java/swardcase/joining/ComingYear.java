package swardcase.joining;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.farm.Action;
import swardcase.farm.UseRule;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;

/**
 * What the plan of the farm says of its coming year: which paddocks are shut, and who is kept off
 * which. The joining sheet is that year, so that the two cannot disagree.
 */
public final class ComingYear {

  /**
   * What is said of a paddock.
   *
   * @param paddock its place
   * @param action what the plan does with it
   * @param isShut whether it is out of grazing in the coming year
   */
  public record Instruction(int paddock, Action action, boolean isShut) {}

  private final FarmModel model;
  private final OutcomeFunction likely;
  private final Plan plan;

  ComingYear(FarmModel model, OutcomeFunction likely, Plan plan) {
    this.model = model;
    this.likely = likely;
    this.plan = plan;
  }

  /** Whether a paddock is out of grazing for the whole year or a part of it. */
  boolean isShut(int paddock) {
    return plan.start(paddock) == 0 && likely.isShut(plan.action(paddock), 0);
  }

  /**
   * Whether a rule keeps a mob off a paddock in a half-month.
   *
   * @param inItsWeeks whether the half-month is one of those before and during the mob's joining
   */
  boolean isOff(int mob, int halfMonth, boolean inItsWeeks, int paddock) {
    return rule(paddock)
        .filter(rule -> rule.keepsOff(mob))
        .filter(
            rule ->
                rule.when() == UseRule.When.WHILE_GREEN ? likely.isGreen(halfMonth) : inItsWeeks)
        .isPresent();
  }

  private Optional<UseRule> rule(int paddock) {
    return model.actions().get(plan.action(paddock)).use();
  }

  /** Whether the cleanest paddocks go to the mob nearest joining. */
  boolean inOrder() {
    return plan.choice(FarmRule.IN_ORDER) > 0;
  }

  /** What the plan says of paddocks that are shut, or that somebody is kept off. */
  List<Instruction> instructions() {
    return IntStream.range(0, plan.paddocks())
        .filter(i -> isShut(i) || rule(i).isPresent())
        .mapToObj(i -> new Instruction(i, model.actions().get(plan.action(i)), isShut(i)))
        .toList();
  }
}
