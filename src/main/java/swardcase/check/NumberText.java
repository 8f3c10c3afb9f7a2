package swardcase.check;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads and writes plain numbers, and refuses what could be read in two ways. */
public final class NumberText {

  private static final Pattern PLAIN = Pattern.compile("[+-]?(0|[1-9]\\d{0,14})(\\.\\d{1,15})?");
  private static final Pattern CELL =
      Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d+)?");

  /** 12,500 may be twelve and a half or twelve thousand five hundred. */
  private static final Pattern AMBIGUOUS = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");

  private NumberText() {}

  /** A number with a decimal point or none: no thousands, no exponent, no leading zero. */
  public static OptionalDouble find(String text) {
    return PLAIN.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text) + 0d)
        : OptionalDouble.empty();
  }

  /** A finite number as a spreadsheet may write it, with a decimal comma among others. */
  public static OptionalDouble findInCell(String text) {
    if (!CELL.matcher(text).matches() || isAmbiguous(text)) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(text.replace(',', '.')) + 0d;
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /** Whether its comma may stand before decimals or between thousands. */
  public static boolean isAmbiguous(String text) {
    return AMBIGUOUS.matcher(text).matches();
  }

  /** A number as a person would write it: 1 rather than 1.0. */
  public static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
