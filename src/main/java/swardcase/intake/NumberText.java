package swardcase.intake;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads and writes plain numbers, and refuses what could be read in two ways. */
final class NumberText {

  private static final Pattern PLAIN = Pattern.compile("[+-]?(0|[1-9]\\d{0,14})(\\.\\d{1,15})?");

  private NumberText() {}

  /** A number with a decimal point or none: no thousands, no exponent, no leading zero. */
  static OptionalDouble find(String text) {
    return PLAIN.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text) + 0d)
        : OptionalDouble.empty();
  }

  /** A number as a person would write it: 1 rather than 1.0. */
  static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  /** Numbers as they would stand in the file: {@code [1, 2.5, 3]}. */
  static String shown(List<Double> numbers) {
    return numbers.stream().map(NumberText::plain).collect(Collectors.joining(", ", "[", "]"));
  }
}
