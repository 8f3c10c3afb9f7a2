package swardcase.decision;

import java.util.Arrays;
import java.util.List;
import swardcase.chance.Range;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * Where a number comes from: how it is put together, from which parts, and which inputs move it.
 *
 * @param what what it is
 * @param names of which paddock, mob, cultivar, action or year it is, as its words need them; of an
 *     input its name
 * @param value the number
 * @param unit its unit; {@code money} for a sum in the farm's currency
 * @param joined how the parts make the number
 * @param parts what it is made from
 * @param movers the inputs that move it, most first; of an input, the input itself
 */
public record Explanation(
    Quantity what,
    List<String> names,
    Range value,
    String unit,
    Joined joined,
    List<Explanation> parts,
    List<Mover> movers) {

  /** How the likely values of the parts make the likely value of the whole. */
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
   * An input and what the number would be with it alone at its ends.
   *
   * @param input with its range, unit, mark, source and who set it
   * @param atLow the number with the input at its low end
   * @param atHigh the same at its high end
   */
  public record Mover(Assumption input, double atLow, double atHigh) {}

  /** Checks that nothing is missing and copies the lists. */
  public Explanation {
    Check.notNull(what, "what a number is");
    Check.notNull(value, "value of " + what);
    Check.notNull(unit, "unit of " + what);
    Check.notNull(joined, "how " + what + " is made");
    names = List.copyOf(names);
    parts = List.copyOf(parts);
    movers = List.copyOf(movers);
  }

  /** An input by itself. */
  static Explanation of(Assumption input) {
    Range range = input.range();
    return new Explanation(
        Quantity.INPUT,
        List.of(input.name()),
        range,
        input.unit(),
        Joined.INPUT,
        List.of(),
        List.of(new Mover(input, range.low(), range.high())));
  }

  /** A number without a range of its own. */
  static Explanation likely(
      Quantity what,
      List<String> names,
      double value,
      String unit,
      Joined joined,
      Explanation... parts) {
    return new Explanation(
        what, names, Range.exactly(value), unit, joined, List.of(parts), List.of());
  }

  /** The likely value that the parts make; of a model or an input, its own. */
  public double joinedValue() {
    double[] of = parts.stream().mapToDouble(part -> part.value().likely()).toArray();
    return switch (joined) {
      case SUM -> Arrays.stream(of).sum();
      case DIFFERENCE -> of[0] - of[1];
      case EXCESS -> Math.max(0, of[0] - of[1]);
      case PRODUCT -> Arrays.stream(of).reduce(1, (a, b) -> a * b);
      case QUOTIENT -> of[0] / of[1];
      case MODEL, INPUT -> value.likely();
    };
  }
}
