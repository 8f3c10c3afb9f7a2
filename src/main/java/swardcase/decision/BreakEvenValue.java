package swardcase.decision;

import java.util.OptionalDouble;
import swardcase.evidence.Assumption;

/**
 * The value of one input at which a gain turns into a loss, by the straight line through the draws.
 *
 * @param input the number
 * @param paddock place of the paddock whose gain is meant; -1 for the whole plan
 * @param low lowest that was drawn
 * @param high highest that was drawn
 * @param value the crossing; empty if the line does not cross nothing in between, or if its slope
 *     may be luck
 */
public record BreakEvenValue(
    Assumption input, int paddock, double low, double high, OptionalDouble value) {

  /** Whether the crossing lies between the input's own low and high end: it may well happen. */
  public boolean isWithinRange() {
    return value.isPresent()
        && value.getAsDouble() >= input.range().low()
        && value.getAsDouble() <= input.range().high();
  }
}
