package swardcase.decision;

import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Drawn;
import swardcase.chance.Range;
import swardcase.check.Check;

/**
 * How much an explained number is: as it was given, over the draws, worked once at the likely
 * inputs, or several of these, all in one unit. A product of uncertain numbers has a mean that is
 * not the product of theirs, so it is worked at the likely inputs, and the mean stands beside it.
 *
 * @param given of a number that is told and not worked out
 * @param drawn the number that every sheet prints
 * @param mean over the draws; that of {@code drawn}, or alone where only means are kept
 * @param atLikely worked once at the likely inputs
 */
public record Amount(
    Optional<Range> given, Optional<Drawn> drawn, OptionalDouble mean, OptionalDouble atLikely) {

  /** Checks that there is a number at all, and one mean only. */
  public Amount {
    Check.that(
        given.isPresent() || mean.isPresent() || atLikely.isPresent(), "an amount needs a number");
    Check.that(
        drawn.isEmpty() || mean.orElseThrow() == drawn.get().mean(), "an amount has one mean only");
  }

  /** A number that is told. */
  static Amount given(Range range) {
    OptionalDouble mean =
        range.isExact() ? OptionalDouble.of(range.likely()) : OptionalDouble.empty();
    return new Amount(Optional.of(range), Optional.empty(), mean, OptionalDouble.empty());
  }

  /** A number that is the same in every draw. */
  static Amount fixed(double value) {
    return given(Range.exactly(value));
  }

  /** A number of the draws. */
  static Amount drawn(Drawn drawn) {
    return new Amount(
        Optional.empty(),
        Optional.of(drawn),
        OptionalDouble.of(drawn.mean()),
        OptionalDouble.empty());
  }

  /** A mean of the draws. */
  static Amount mean(double mean) {
    return new Amount(
        Optional.empty(), Optional.empty(), OptionalDouble.of(mean), OptionalDouble.empty());
  }

  /** A number that is worked once at the likely inputs. */
  static Amount atLikely(double value) {
    return new Amount(
        Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(value));
  }

  /** The same with what it is at the likely inputs. */
  Amount withLikely(double value) {
    return new Amount(given, drawn, mean, OptionalDouble.of(value));
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
