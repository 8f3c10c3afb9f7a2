package swardcase.outcome;

import java.util.Arrays;
import swardcase.check.Check;

/**
 * An action and a start year for every paddock, and a choice for every {@link FarmRule} behind
 * them. Immutable; places are those of the farm's lists.
 */
public final class Plan {

  private static final int RULES = FarmRule.values().length;

  private final int[] action;
  private final int[] start;

  private Plan(int[] action, int[] start) {
    this.action = action;
    this.start = start;
  }

  /** Every paddock has the action at place {@code keep}, from the coming year; no rule holds. */
  public static Plan keepAll(int paddocks, int keep) {
    int[] action = new int[paddocks + RULES];
    Arrays.fill(action, 0, paddocks, keep);
    return new Plan(action, new int[action.length]);
  }

  /** This plan with another choice for one place; year 0 is the coming one. */
  public Plan with(int place, int newAction, int newStart) {
    Check.that(newStart >= 0, "start year must be zero or more, but was %s", newStart);
    int[] actions = action.clone();
    int[] starts = start.clone();
    actions[place] = newAction;
    starts[place] = newStart;
    return new Plan(actions, starts);
  }

  /** Paddocks in the plan. */
  public int paddocks() {
    return action.length - RULES;
  }

  /** Places in the plan: its paddocks, then the rules of the farm. */
  public int places() {
    return action.length;
  }

  /** Place of the action of a paddock, or the choice of a rule. */
  public int action(int place) {
    return action[place];
  }

  /** The choice of a rule, 0 to go on as now. */
  public int choice(FarmRule rule) {
    return action[paddocks() + rule.ordinal()];
  }

  /** Its action and start. */
  public Course course(int paddock) {
    return new Course(action[paddock], start[paddock]);
  }

  /** Year its action starts, 0 for the coming year. */
  public int start(int paddock) {
    return start[paddock];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Plan plan
        && Arrays.equals(action, plan.action)
        && Arrays.equals(start, plan.start);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(action) + Arrays.hashCode(start);
  }

  @Override
  public String toString() {
    return Arrays.toString(action) + " from " + Arrays.toString(start);
  }
}
