package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import swardcase.reading.Faults;
import swardcase.reading.FileText;
import swardcase.reading.Table;

/**
 * The tables of a farm folder, each from its CSV file or from the sheet of the same name in the
 * workbook, never from both.
 */
final class FarmTables {

  private final Path folder;
  private final boolean hasWorkbook;
  private final Faults faults;
  private Optional<Map<String, Table>> opened;

  FarmTables(Path folder, Faults faults) {
    this.folder = folder;
    this.faults = faults;
    hasWorkbook = Files.exists(folder.resolve(FarmWorkbook.FILE), LinkOption.NOFOLLOW_LINKS);
  }

  /** A table that must be there. */
  Optional<Table> get(String name) {
    boolean missing = !isCsv(name) && sheet(name).isEmpty();
    if (missing && sheets().isPresent()) {
      String rule = "must have a sheet '" + name + "' if there is no " + name + ".csv";
      faults.add(FarmWorkbook.FILE, rule);
    }
    return missing && !hasWorkbook ? csv(name) : find(name);
  }

  /** A table that may be missing. */
  Optional<Table> find(String name) {
    if (isCsv(name) && sheet(name).isPresent()) {
      faults.add(
          name + ".csv",
          "must not stand beside the sheet '"
              + name
              + "' of "
              + FarmWorkbook.FILE
              + ": delete the one that is not kept up");
      return Optional.empty();
    }
    return isCsv(name) ? csv(name) : sheet(name);
  }

  private boolean isCsv(String name) {
    return Files.exists(folder.resolve(name + ".csv"), LinkOption.NOFOLLOW_LINKS);
  }

  private Optional<Table> sheet(String name) {
    return sheets().map(tables -> tables.get(name));
  }

  /** The sheets of the workbook, which is opened when the first table is asked for. */
  private Optional<Map<String, Table>> sheets() {
    if (opened == null) {
      Path file = folder.resolve(FarmWorkbook.FILE);
      opened = hasWorkbook ? FarmWorkbook.find(file, faults) : Optional.empty();
    }
    return opened;
  }

  private Optional<Table> csv(String name) {
    String file = name + ".csv";
    return FileText.find(folder.resolve(file), file, faults)
        .map(text -> Table.of(file, text, faults));
  }
}
