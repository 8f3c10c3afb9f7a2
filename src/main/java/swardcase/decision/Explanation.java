package swardcase.decision;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * Where a number comes from: how it is put together, from which parts, and which inputs move it.
 *
 * @param what what it is
 * @param names of which paddock, mob, cultivar, action or year it is, as its words need them; of an
 *     input its name
 * @param amount how much
 * @param unit its unit; {@code money} for a sum in the farm's currency
 * @param joined how the parts make the number
 * @param parts what it is made from
 * @param input of an input, where it is from
 * @param movers the inputs that move it in the draws, most first; told of the number that is asked
 *     for, not of its parts
 */
public record Explanation(
    Quantity what,
    List<String> names,
    Amount amount,
    String unit,
    Joined joined,
    List<Explanation> parts,
    Optional<Assumption> input,
    List<Mover> movers) {

  /** How the parts make the whole. */
  public enum Joined {
    /** The first plus all others. */
    SUM,
    /** The first less the second. */
    DIFFERENCE,
    /** The first less the second, but never below nothing. */
    EXCESS,
    /** All multiplied. */
    PRODUCT,
    /** The first divided by the second. */
    QUOTIENT,
    /** A model that is not one line of arithmetic, or a number counted or written down. */
    MODEL,
    /** A number of the farm folder or of a table. */
    INPUT
  }

  /**
   * An input and what the number is with it at its ends, by the straight line of the one over the
   * other in the draws; never beyond what any draw brought.
   *
   * @param name of the input, without the action where several share it
   * @param input with its range, unit, mark, source and who set it
   * @param atLow the number with the input at its low end
   * @param atHigh the same at its high end
   */
  public record Mover(String name, Assumption input, double atLow, double atHigh) {}

  /** Checks that nothing is missing and copies the lists. */
  public Explanation {
    Check.notNull(what, "what a number is");
    Check.notNull(amount, "amount of " + what);
    Check.notNull(unit, "unit of " + what);
    Check.notNull(joined, "how " + what + " is made");
    Check.notNull(input, "input of " + what);
    names = List.copyOf(names);
    parts = List.copyOf(parts);
    movers = List.copyOf(movers);
  }

  /** An input by itself. */
  static Explanation of(Assumption input) {
    return new Explanation(
        Quantity.INPUT,
        List.of(input.name()),
        Amount.given(input.range()),
        input.unit(),
        Joined.INPUT,
        List.of(),
        Optional.of(input),
        List.of());
  }

  /** A number with its parts. */
  static Explanation of(
      Quantity what,
      List<String> names,
      Amount amount,
      String unit,
      Joined joined,
      Explanation... parts) {
    return new Explanation(
        what, names, amount, unit, joined, List.of(parts), Optional.empty(), List.of());
  }

  /** The same number with what moves it. */
  Explanation movedBy(List<Mover> by) {
    return new Explanation(what, names, amount, unit, joined, parts, input, by);
  }

  /**
   * Whether the means of the parts make the mean: means of the same draws add up, and may be
   * multiplied by what no draw moves. Where not, the parts are worked once at the likely inputs.
   */
  public boolean isOfMeans() {
    boolean straight =
        switch (joined) {
          case SUM, DIFFERENCE -> true;
          case PRODUCT -> parts.stream().filter(part -> !part.amount.isFixed()).count() <= 1;
          case EXCESS, QUOTIENT, MODEL, INPUT -> false;
        };
    return straight
        && Stream.concat(Stream.of(this), parts.stream())
            .allMatch(one -> one.amount.mean().isPresent());
  }

  /** What the parts make; of a model or an input, its own. */
  public double joinedValue() {
    Function<Explanation, OptionalDouble> value =
        one -> isOfMeans() ? one.amount.mean() : one.amount.likely();
    double[] of = parts.stream().mapToDouble(part -> value.apply(part).orElseThrow()).toArray();
    return switch (joined) {
      case SUM -> Arrays.stream(of).sum();
      case DIFFERENCE -> of[0] - of[1];
      case EXCESS -> Math.max(0, of[0] - of[1]);
      case PRODUCT -> Arrays.stream(of).reduce(1, (a, b) -> a * b);
      case QUOTIENT -> of[0] / of[1];
      case MODEL, INPUT -> amount.mean().orElseGet(() -> amount.likely().orElseThrow());
    };
  }
}
