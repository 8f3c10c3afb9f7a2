package swardcase.decision;

import java.util.List;
import swardcase.outcome.FarmRule;

/**
 * How sure the answer for a rule of the farm is.
 *
 * @param rule the rule
 * @param planned place of the choice that the plan makes; 0 where it goes on as now
 * @param courses every choice, going on as now first, then the planned one if it is another
 */
public record RuleFindings(FarmRule rule, int planned, List<CourseFindings> courses) {

  /** Copies the list. */
  public RuleFindings {
    courses = List.copyOf(courses);
  }

  /** Whether the plan makes the rule. */
  public boolean isPlanned() {
    return planned > 0;
  }

  /** Whether the plan's choice may be followed: going on as now always may. */
  public boolean isSure() {
    return !isPlanned() || courses.get(planned).isSure();
  }
}
