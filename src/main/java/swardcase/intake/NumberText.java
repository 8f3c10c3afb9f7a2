package swardcase.intake;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads numbers as people write them, and refuses what could be read in two ways. */
final class NumberText {

  private static final Pattern PLAIN = Pattern.compile("[+-]?(0|[1-9]\\d{0,14})(\\.\\d{1,15})?");
  private static final Pattern WITH_COMMA = Pattern.compile("[+-]?(0|[1-9]\\d{0,14}),\\d{1,15}");
  private static final Pattern THOUSAND = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

  private NumberText() {}

  /** A number with a decimal point or none: no thousands, no exponent, no leading zero. */
  static OptionalDouble find(String text) {
    return PLAIN.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text) + 0d)
        : OptionalDouble.empty();
  }

  /**
   * The same, and a decimal comma too: {@code 0,5} is a half. {@code 1,234} is refused, because it
   * may be a thousand or a little more than one.
   */
  static OptionalDouble findWithComma(String text) {
    return WITH_COMMA.matcher(text).matches() && !THOUSAND.matcher(text).matches()
        ? find(text.replace(',', '.'))
        : find(text);
  }
}
