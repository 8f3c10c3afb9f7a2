package swardcase.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import swardcase.folder.Inputs;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.tables.Tables;

/** A command about a farm: it is told the farm folder and the tables. */
abstract class FarmTask extends Task {

  @Parameters(
      index = "0",
      paramLabel = "FARM",
      description = "Farm folder: farm.yaml, paddocks.csv, plants.csv (or farm.xlsx).")
  private Path folder;

  @Mixin private TablesOption tables;

  final Tables tables() {
    return tables.loader().load();
  }

  final Path folder() {
    return folder;
  }

  final LoadedFarm load(Tables reference) {
    return FarmFolder.read(folder, reference);
  }

  /** The files that the command is made to read. */
  final Inputs inputs() {
    Inputs ofFarm = new Inputs(files(folder).toList(), List.of());
    return tables.folder() == null ? ofFarm : ofFarm.andTables(tables.folder());
  }

  /** The files of a farm folder. */
  static Stream<Path> files(Path folder) {
    return FarmFolder.FILES.stream().map(folder::resolve);
  }
}
