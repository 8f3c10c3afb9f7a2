package swardcase.check;

import java.util.Locale;

/**
 * Preconditions, written as acceptances so that NaN is refused.
 *
 * <p>Each check returns what it checked, so that a constructor line both checks and assigns. Every
 * failure is an {@link IllegalArgumentException} whose message gives the name, the rule and the
 * value found: {@code clover share must be from 0 to 1, but was 1.5}.
 */
public final class Check {

  private Check() {}

  /** Refuses a false condition; {@code message} is a {@link String#format} pattern. */
  public static void that(boolean accepted, String message, Object... arguments) {
    if (!accepted) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, message, arguments));
    }
  }

  /** Refuses null. */
  public static <T> T notNull(T value, String name) {
    that(value != null, "%s must be given", name);
    return value;
  }

  /** Refuses null, the empty string and white space. */
  public static String notBlank(String value, String name) {
    that(value != null && !value.isBlank(), "%s must be given, but was blank", name);
    return value;
  }

  /** Accepts {@code low <= value <= high}. */
  public static double inRange(double value, double low, double high, String name) {
    if (value >= low && value <= high) {
      return value + 0d;
    }
    throw refusal(
        "%s must be from %s to %s, but was %s",
        name, NumberText.plain(low), NumberText.plain(high), value);
  }

  /** Accepts finite values from zero up. */
  public static double notNegative(double value, String name) {
    if (value >= 0 && value < Double.POSITIVE_INFINITY) {
      return value + 0d;
    }
    throw refusal("%s must be zero or more, but was %s", name, value);
  }

  /** Accepts finite values above zero. */
  public static double positive(double value, String name) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    throw refusal("%s must be more than zero, but was %s", name, value);
  }

  /** Words are built only for a refusal, because checks stand in front of every run. */
  private static IllegalArgumentException refusal(String message, Object... arguments) {
    int last = arguments.length - 1;
    arguments[last] = NumberText.plain((double) arguments[last]);
    return new IllegalArgumentException(String.format(Locale.ROOT, message, arguments));
  }
}
