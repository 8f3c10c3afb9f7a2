package swardcase.report;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Why a paddock's answer is what it is. The gains it speaks of stand with the paddock and its
 * options.
 *
 * @param kind which reason
 * @param action key of the option it speaks of, of crops alone the best sowing that is judged over
 *     them; empty where it speaks of none
 * @param cost mean cost of that option for the whole paddock, not discounted, in money; empty where
 *     it plays no part
 */
public record Reason(Kind kind, Optional<String> action, OptionalDouble cost) {

  /** Which reason. */
  public enum Kind {
    /** The planned action gains, by its parts. */
    GAINS,
    /** The planned action only crops and gains by that: a matter of land use. */
    CROPS,
    /** Nothing else can be done with the paddock. */
    NOTHING_ELSE,
    /** The best option gains on average, but too little or too seldom for its risk. */
    SELDOM,
    /** No old clover was found and no winter growth is lost. */
    NOTHING_TO_GAIN,
    /** No option gains, and the paddock cannot be resown. */
    NOT_ARABLE,
    /** No option gains, and the years counted are too few to see a sowing through. */
    YEARS_COUNTED,
    /** The best way to resow it would lose. */
    WOULD_LOSE,
    /** An option may gain and may lose. */
    CLOSE,
    /** An option may gain, but does not keep within the limits of the farm beside the plan. */
    LIMIT
  }

  static Reason of(Kind kind, Optional<String> action) {
    return new Reason(kind, action, OptionalDouble.empty());
  }
}
