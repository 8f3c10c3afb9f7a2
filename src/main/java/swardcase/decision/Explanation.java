package swardcase.decision;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.evidence.Assumption;

/**
 * Where a number comes from: how it is put together, from which parts, and which inputs move it.
 *
 * @param what what it is
 * @param names of which paddock, mob, cultivar, action or year it is, as its words need them; of an
 *     input its name
 * @param amount how much
 * @param parts what it is made from
 * @param input of an input, where it is from
 * @param movers the inputs that move it in the draws, most first; told of the number that is asked
 *     for, not of its parts
 */
public record Explanation(
    Quantity what,
    List<String> names,
    Amount amount,
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

  /** An input by itself. */
  static Explanation of(Assumption input) {
    return new Explanation(
        Quantity.INPUT,
        List.of(input.name()),
        Amount.given(input.range()),
        List.of(),
        Optional.of(input),
        List.of());
  }

  /** A number with its parts. */
  static Explanation of(Quantity what, Amount amount, Explanation... parts) {
    return of(what, List.of(), amount, parts);
  }

  /** A number of something that has a name. */
  static Explanation of(Quantity what, String name, Amount amount, Explanation... parts) {
    return of(what, List.of(name), amount, parts);
  }

  static Explanation of(Quantity what, List<String> names, Amount amount, Explanation... parts) {
    return new Explanation(what, names, amount, List.of(parts), Optional.empty(), List.of());
  }

  /** The same number with what moves it. */
  Explanation movedBy(List<Mover> by) {
    return new Explanation(what, names, amount, parts, input, by);
  }

  /** Its unit; {@code money} for a sum in the farm's currency. */
  public String unit() {
    return input.map(Assumption::unit).orElse(what.unit());
  }

  /** How the parts make the number. */
  public Joined joined() {
    return what.joined();
  }

  /**
   * Whether the means of the parts make the mean: means of the same draws add up, and may be
   * multiplied by what no draw moves. Where not, the parts are worked once at the likely inputs.
   */
  public boolean isOfMeans() {
    boolean straight =
        switch (joined()) {
          case SUM, DIFFERENCE -> true;
          case PRODUCT -> parts.stream().filter(part -> !part.amount.isFixed()).count() <= 1;
          case EXCESS, QUOTIENT, MODEL, INPUT -> false;
        };
    return straight
        && Stream.concat(Stream.of(this), parts.stream())
            .allMatch(one -> one.amount.mean().isPresent());
  }
}
