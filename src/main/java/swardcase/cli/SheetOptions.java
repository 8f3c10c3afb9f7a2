package swardcase.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import swardcase.check.VisibleText;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.farm.Farm;
import swardcase.intake.LoadedFarm;
import swardcase.report.ComparisonReport.Decided;
import swardcase.report.ReportBuilder;

/** What every printed sheet may be told: its draws, its date, and the sign before money. */
final class SheetOptions extends DrawOptions {

  /** The date that stands for the day of the run. */
  static final String TODAY = "today";

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2999;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      defaultValue = TODAY,
      description =
          "Date of the sheet; the year after it is the first one planned. Default: today.")
  private LocalDate date;

  @Option(
      names = "--currency",
      paramLabel = "SIGN",
      description = "Sign printed before money instead of the farm's own. Nothing is converted.")
  private String currency;

  LocalDate date() {
    return date;
  }

  /** Reads a date. */
  static LocalDate day(String text) {
    try {
      LocalDate date = text.equals(TODAY) ? LocalDate.now() : LocalDate.parse(text);
      if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
        return date;
      }
    } catch (DateTimeException notADate) {
      // The refusal below says what is wanted.
    }
    throw new TypeConversionException(
        "'%s' must be a date such as 2026-11-25, from %d to %d"
            .formatted(text, FIRST_YEAR, LAST_YEAR));
  }

  /** The farm with the sign that was asked for. */
  Farm signed(Farm farm) {
    if (currency == null) {
      return farm;
    }
    if (!currency.equals(VisibleText.of(currency)) || !currency.matches(".{1,12}")) {
      throw wrong("--currency must be 1 to 12 plain signs");
    }
    return farm.withCurrency(currency);
  }

  /** What was decided about a farm, with its report. */
  Decided decided(String folder, Optional<String> scenario, LoadedFarm loaded, Decision decision) {
    return new Decided(
        folder,
        scenario,
        decision,
        ReportBuilder.build(
            decision, HowSure.of(decision), Version.text(), date, loaded.on(date).remarks()));
  }
}
