package swardcase.serve;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.UnaryOperator;
import swardcase.farm.Farm;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;

/**
 * What the page was opened with.
 *
 * @param folder the farm folder
 * @param tables the reference data
 * @param signed gives a farm the sign before money that was asked for
 * @param day the date of the sheet
 * @param draws how many, for an answer that is saved or printed
 * @param seed where they start
 * @param program name and version of the program
 */
public record Setup(
    Path folder,
    Tables tables,
    UnaryOperator<Farm> signed,
    LocalDate day,
    int draws,
    long seed,
    String program) {

  /** Whether no farm stands in the folder yet. */
  boolean isEmpty() {
    return FarmFolder.FILES.stream().map(folder::resolve).noneMatch(Files::exists);
  }
}
