package swardcase.decision;

import java.util.OptionalDouble;
import swardcase.evidence.Assumption;

/**
 * The value of one input at which a gain turns into a loss, the others staying likely.
 *
 * @param input the number
 * @param paddock place of the paddock whose gain is meant; -1 for the whole plan
 * @param low lower end of what was searched
 * @param high upper end of what was searched
 * @param value the crossing nearest to the likely value; empty if there is none in between
 * @param gainAtLikely net present value with everything likely
 */
public record BreakEvenValue(
    Assumption input,
    int paddock,
    double low,
    double high,
    OptionalDouble value,
    double gainAtLikely) {

  /** Whether the crossing lies between the input's own low and high end: it may well happen. */
  public boolean isWithinRange() {
    return value.isPresent()
        && value.getAsDouble() >= input.range().low()
        && value.getAsDouble() <= input.range().high();
  }
}
