package swardcase.cli;

import java.nio.file.Path;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.tables.Tables;

/** The farm folder and the tables: what every command about a farm is told. */
final class FarmOptions {

  @Parameters(
      index = "0",
      paramLabel = "FARM",
      description = "Farm folder: farm.yaml, paddocks.csv, plants.csv (or farm.xlsx).")
  private Path folder;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with rows of your own that replace rows of the program's tables.")
  private Path tables;

  Tables tables() {
    return TablesOption.loader(tables).load();
  }

  Path folder() {
    return folder;
  }

  LoadedFarm load(Tables reference) {
    return FarmFolder.read(folder, reference);
  }

  /** The files that these options make the program read. */
  Inputs inputs() {
    Inputs ofFarm = Inputs.of(files(folder).toList());
    return tables == null ? ofFarm : ofFarm.andTables(tables);
  }

  /** The files of a farm folder. */
  static Stream<Path> files(Path folder) {
    return FarmFolder.FILES.stream().map(folder::resolve);
  }
}
