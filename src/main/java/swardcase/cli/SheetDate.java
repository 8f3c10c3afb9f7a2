package swardcase.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the date of a sheet. */
final class SheetDate implements ITypeConverter<LocalDate> {

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2999;

  @Override
  public LocalDate convert(String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
        return date;
      }
    } catch (DateTimeException notADate) {
      // The refusal below says what is wanted.
    }
    throw new TypeConversionException(
        "'"
            + text
            + "' must be a date such as 2026-11-25, from "
            + FIRST_YEAR
            + " to "
            + LAST_YEAR);
  }
}
