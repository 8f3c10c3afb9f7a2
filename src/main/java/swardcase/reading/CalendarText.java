package swardcase.reading;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads months and days of the year. */
public final class CalendarText {

  private static final Pattern DAY_MONTH = Pattern.compile("(\\d{1,2})\\.?\\s+(\\p{L}+)\\.?");
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");

  private CalendarText() {}

  /** The twelve names, {@code January} first. */
  static List<String> monthNames() {
    return Arrays.stream(Month.values()).map(CalendarText::name).toList();
  }

  /** {@code January}. */
  static String name(Month month) {
    return month.name().charAt(0) + month.name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** A month by its English name or at least its first three letters: {@code June, Jun}. */
  static Optional<Month> findMonth(String text) {
    String wanted = text.strip().toUpperCase(Locale.ROOT);
    return Arrays.stream(Month.values())
        .filter(month -> wanted.length() >= 3 && month.name().startsWith(wanted))
        .findFirst();
  }

  /** A day of the year, as {@code 30 January}, {@code 30 Jan} or {@code 2027-01-30}. */
  public static Optional<MonthDay> findDay(String text) {
    Matcher named = DAY_MONTH.matcher(text.strip());
    Matcher iso = ISO.matcher(text.strip());
    try {
      if (named.matches()) {
        int day = Integer.parseInt(named.group(1));
        return findMonth(named.group(2)).map(month -> MonthDay.of(month, day));
      }
      return iso.matches()
          ? Optional.of(MonthDay.from(LocalDate.parse(text.strip())))
          : Optional.empty();
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }
}
