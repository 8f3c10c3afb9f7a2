package swardcase.decision;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Drawn;
import swardcase.chance.Range;

/**
 * How much an explained number is: as it was given, over the draws, worked once at the likely
 * inputs, or several of these, all in one unit. A product of uncertain numbers has a mean that is
 * not the product of theirs, so it is worked at the likely inputs, and the mean stands beside it.
 *
 * @param given of a number that is told and not worked out
 * @param drawn the number that every sheet prints
 * @param mean over the draws; that of {@code drawn}, or alone where only means are kept
 * @param atLikely worked once at the likely inputs
 * @param draws the number in each draw; none unless it is {@code drawn}
 */
public record Amount(
    Optional<Range> given,
    Optional<Drawn> drawn,
    OptionalDouble mean,
    OptionalDouble atLikely,
    double[] draws) {

  private static final double[] NO_DRAWS = {};

  private Amount(Optional<Range> given, OptionalDouble mean, OptionalDouble atLikely) {
    this(given, Optional.empty(), mean, atLikely, NO_DRAWS);
  }

  /** A number that is told. */
  static Amount given(Range range) {
    OptionalDouble mean =
        range.isExact() ? OptionalDouble.of(range.likely()) : OptionalDouble.empty();
    return new Amount(Optional.of(range), mean, OptionalDouble.empty());
  }

  /** A number that is the same in every draw. */
  static Amount fixed(double value) {
    return given(Range.exactly(value));
  }

  /** A mean of the draws. */
  static Amount mean(double mean) {
    return new Amount(Optional.empty(), OptionalDouble.of(mean), OptionalDouble.empty());
  }

  /** A number that is worked once at the likely inputs. */
  static Amount atLikely(double value) {
    return new Amount(Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(value));
  }

  /** The same with what it is at the likely inputs. */
  Amount withLikely(double value) {
    return new Amount(given, drawn, mean, OptionalDouble.of(value), draws);
  }

  /** The number at the likely inputs; empty where only the draws tell it. */
  public OptionalDouble likely() {
    return given.isPresent() ? OptionalDouble.of(given.get().likely()) : atLikely;
  }

  /** Whether no draw moves it. */
  boolean isFixed() {
    return given.map(Range::isExact).orElse(false) || drawn.map(Drawn::isExact).orElse(false);
  }
}
