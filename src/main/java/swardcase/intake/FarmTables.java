package swardcase.intake;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import swardcase.check.Fault;
import swardcase.intake.FaultList.Place;
import swardcase.tables.CsvTable;

/**
 * The tables of a farm folder, each from its CSV file or from the sheet of the same name in the
 * workbook, never from both.
 */
final class FarmTables {

  private final Path folder;
  private final boolean hasWorkbook;
  private final Optional<FarmWorkbook> workbook;
  private final List<Fault> ofTables;
  private final FaultList faults;

  private FarmTables(
      Path folder,
      boolean hasWorkbook,
      Optional<FarmWorkbook> workbook,
      List<Fault> ofTables,
      FaultList faults) {
    this.folder = folder;
    this.hasWorkbook = hasWorkbook;
    this.workbook = workbook;
    this.ofTables = ofTables;
    this.faults = faults;
  }

  /**
   * Opens the workbook, if there is one.
   *
   * @param ofTables takes the faults of rows and cells
   * @param faults takes those of whole files
   */
  static FarmTables of(Path folder, List<Fault> ofTables, FaultList faults) {
    Path file = folder.resolve(FarmWorkbook.FILE);
    boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    Optional<FarmWorkbook> workbook =
        there ? FarmWorkbook.find(file, ofTables, faults) : Optional.empty();
    return new FarmTables(folder, there, workbook, ofTables, faults);
  }

  /** A table that must be there. */
  Optional<CsvTable> get(String name) {
    if (isCsv(name) || isSheet(name)) {
      return find(name);
    }
    if (!hasWorkbook) {
      return csv(name);
    }
    if (workbook.isPresent()) {
      faults.add(
          new Place(FarmWorkbook.FILE, 0, ""),
          "must have a sheet '" + name + "' if there is no " + name + ".csv",
          "");
    }
    return Optional.empty();
  }

  /** A table that may be missing. */
  Optional<CsvTable> find(String name) {
    if (isCsv(name) && isSheet(name)) {
      faults.add(
          new Place(name + ".csv", 0, ""),
          "must not stand beside the sheet '"
              + name
              + "' of "
              + FarmWorkbook.FILE
              + ": delete the one that is not kept up",
          "");
      return Optional.empty();
    }
    if (isSheet(name)) {
      return workbook.flatMap(book -> book.find(name));
    }
    return isCsv(name) ? csv(name) : Optional.empty();
  }

  private boolean isCsv(String name) {
    return Files.exists(folder.resolve(name + ".csv"), LinkOption.NOFOLLOW_LINKS);
  }

  private boolean isSheet(String name) {
    return workbook.flatMap(book -> book.find(name)).isPresent();
  }

  /** A file that is there, is text and is not too large. */
  private Optional<CsvTable> csv(String name) {
    Path file = folder.resolve(name + ".csv");
    return FileText.find(file, faults)
        .map(text -> CsvTable.of(name + ".csv", text.getBytes(StandardCharsets.UTF_8), ofTables));
  }
}
