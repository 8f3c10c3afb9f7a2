package swardcase.outcome;

import java.util.Arrays;
import swardcase.check.Check;

/**
 * An action and a start year for every paddock. Immutable; places are those of the farm's lists.
 */
public final class Plan {

  private final int[] action;
  private final int[] start;

  private Plan(int[] action, int[] start) {
    this.action = action;
    this.start = start;
  }

  /** Every paddock has the action at place {@code keep}, from the coming year. */
  public static Plan keepAll(int paddocks, int keep) {
    int[] action = new int[paddocks];
    Arrays.fill(action, keep);
    return new Plan(action, new int[paddocks]);
  }

  /** This plan with another choice for one paddock; year 0 is the coming one. */
  public Plan with(int paddock, int newAction, int newStart) {
    Check.that(newStart >= 0, "start year must be zero or more, but was %s", newStart);
    int[] actions = action.clone();
    int[] starts = start.clone();
    actions[paddock] = newAction;
    starts[paddock] = newStart;
    return new Plan(actions, starts);
  }

  /** Paddocks in the plan. */
  public int paddocks() {
    return action.length;
  }

  /** Place of the paddock's action. */
  public int action(int paddock) {
    return action[paddock];
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
