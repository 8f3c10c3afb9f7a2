package swardcase.cli;

import java.time.LocalDate;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import swardcase.farm.Farm;

/** What every printed sheet may be told: its date, and the sign before money. */
final class SheetOptions {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = SheetDate.class,
      description =
          "Date of the sheet; the year after it is the first one planned. Default: today.")
  private LocalDate date;

  @Option(
      names = "--currency",
      paramLabel = "SIGN",
      description = "Sign printed before money instead of the farm's own. Nothing is converted.")
  private String currency;

  LocalDate date() {
    return date == null ? LocalDate.now() : date;
  }

  /** The farm with the sign that was asked for. */
  Farm signed(Farm farm) {
    if (currency == null) {
      return farm;
    }
    if (!currency.equals(PlainText.of(currency)) || !currency.matches(".{1,12}")) {
      throw new ParameterException(spec.commandLine(), "--currency must be 1 to 12 plain signs");
    }
    return farm.withCurrency(currency);
  }
}
