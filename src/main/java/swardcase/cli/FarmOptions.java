package swardcase.cli;

import java.nio.file.Path;
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
      description = "Farm folder: farm.yaml, paddocks.csv, plants.csv.")
  private Path folder;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with rows of your own that replace rows of the program's tables.")
  private Path tables;

  Tables tables() {
    return TablesOption.loader(tables).load();
  }

  LoadedFarm load(Tables reference) {
    return FarmFolder.read(folder, reference);
  }
}
