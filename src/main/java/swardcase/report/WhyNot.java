package swardcase.report;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.search.PlanLimit;

/**
 * Why an option was not chosen: the first obstacle that holds. Gains are means over the draws, the
 * rest of the plan being done.
 *
 * @param kind which obstacle
 * @param gain of the option over keeping
 * @param than name of the choice it is compared with; empty where it is with none
 * @param thanGain gain of that over keeping
 * @param limit the limit of the farm that it passes
 */
public record WhyNot(
    Kind kind,
    double gain,
    Optional<String> than,
    OptionalDouble thanGain,
    Optional<PlanLimit> limit) {

  /** Which obstacle. */
  public enum Kind {
    /** It loses on average, or gains nothing. */
    LOSES,
    /** A cheaper choice gains as much or more. */
    CHEAPER,
    /** It gains less than the chosen action. */
    LESS,
    /** It gains more on average, but its bad cases weigh more. */
    RISK,
    /** It gains, but does not keep within a limit of the farm beside the plan. */
    LIMIT,
    /** It gains too little to be told from nothing. */
    LITTLE
  }
}
