package swardcase.search;

import java.util.OptionalInt;
import swardcase.check.Check;

/**
 * A choice that is made beforehand for a paddock.
 *
 * @param paddock place of the paddock
 * @param action place of the action
 * @param start year it starts, 0 for the coming one; empty if the plan may choose
 */
public record FixedChoice(int paddock, int action, OptionalInt start) {

  /** Checks that a year is not before the coming one. */
  public FixedChoice {
    Check.notNull(start, "start year");
    Check.that(start.orElse(0) >= 0, "start year must be zero or more, but was %s", start);
  }
}
