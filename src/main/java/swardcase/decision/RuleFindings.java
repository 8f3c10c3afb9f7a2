package swardcase.decision;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swardcase.outcome.FarmRule;

/**
 * How sure the answer for a rule of the farm is.
 *
 * @param rule the rule
 * @param planned place of the choice that the plan makes; 0 where it goes on as now
 * @param courses every choice, going on as now first, then the planned one if it is another
 */
public record RuleFindings(FarmRule rule, int planned, List<CourseFindings> courses) {

  /** The choice that the plan makes, or the best of those it does not; empty if there is none. */
  public Optional<CourseFindings> told() {
    return isPlanned()
        ? Optional.of(courses.get(planned))
        : courses.stream().skip(1).max(Comparator.comparingDouble(course -> course.gain().mean()));
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
