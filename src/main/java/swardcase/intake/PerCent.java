package swardcase.intake;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A change such as {@code -20 %}, to be applied to a number as it stands in a file.
 *
 * @param factor what the number is multiplied by: 0.8 for {@code -20 %}
 */
record PerCent(BigDecimal factor) {

  private static final Pattern CHANGE = Pattern.compile("([+-]\\d{1,4}(?:\\.\\d{1,6})?) ?%");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,15}([.,]\\d{0,15})?|[.,]\\d{1,15})");

  /** The change, if the text is one: a sign, a number and the sign for per cent. */
  static Optional<PerCent> find(String text) {
    Matcher change = CHANGE.matcher(text);
    return change.matches()
        ? Optional.of(
            new PerCent(new BigDecimal(change.group(1)).movePointLeft(2).add(BigDecimal.ONE)))
        : Optional.empty();
  }

  /**
   * The number after the change, without rounding: 120 becomes 96. A decimal comma, as a cell may
   * have it, becomes a point. Empty if the text is no plain number.
   */
  Optional<String> of(String number) {
    return NUMBER.matcher(number).matches()
        ? Optional.of(
            new BigDecimal(number.replace(',', '.'))
                .multiply(factor)
                .stripTrailingZeros()
                .toPlainString())
        : Optional.empty();
  }
}
