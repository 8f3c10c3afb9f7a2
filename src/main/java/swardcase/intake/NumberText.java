package swardcase.intake;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads plain numbers, and refuses what could be read in two ways. */
final class NumberText {

  private static final Pattern PLAIN = Pattern.compile("[+-]?(0|[1-9]\\d{0,14})(\\.\\d{1,15})?");

  private NumberText() {}

  /** A number with a decimal point or none: no thousands, no exponent, no leading zero. */
  static OptionalDouble find(String text) {
    return PLAIN.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text) + 0d)
        : OptionalDouble.empty();
  }
}
