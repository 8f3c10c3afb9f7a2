package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Spot;
import swardcase.tables.Tables;

/**
 * A farm folder: {@code farm.yaml}, {@code paddocks.csv}, {@code plants.csv} and {@code
 * records.csv}, of which the last two may be missing; a workbook {@code farm.xlsx} may hold the
 * tables instead, and a map {@code paddocks.geojson} may say where the paddocks lie. The keys and
 * columns are described in {@code docs/inputs.md}.
 */
public final class FarmFolder {

  /** The names of the files. */
  public static final List<String> FILES =
      List.of(
          Fields.FILE,
          PaddocksCsv.TABLE + ".csv",
          PlantsCsv.TABLE + ".csv",
          RecordsCsv.TABLE + ".csv",
          FarmWorkbook.FILE,
          PaddocksGeoJson.FILE);

  private FarmFolder() {}

  /**
   * Reads the files.
   *
   * @param folder where they are
   * @param tables supplies names that the files may use, and the defaults for what they leave out
   * @throws FaultsException with all faults of all files at once, if there is one
   */
  public static LoadedFarm read(Path folder, Tables tables) {
    return read(folder, tables, Optional.empty());
  }

  /**
   * Reads the files of a farm that alone is without faults, with a scenario laid over them.
   *
   * @throws FaultsException with all faults of the scenario
   */
  public static LoadedFarm read(Path folder, Tables tables, Scenario scenario) {
    try {
      return read(folder, tables, Optional.of(scenario));
    } catch (FaultsException found) {
      throw new FaultsException(found.faults().stream().map(scenario::own).toList());
    }
  }

  private static LoadedFarm read(Path folder, Tables tables, Optional<Scenario> scenario) {
    FaultList faults = new FaultList();
    if (!Files.isDirectory(folder)) {
      faults.add(new Place(folder.toString(), 0, ""), "must be a folder", "");
      faults.throwIfAny();
    }
    Optional<Entries> top =
        FileText.find(folder.resolve(Fields.FILE), faults)
            .flatMap(text -> YamlTree.find(Fields.FILE, text, faults))
            .map(farm -> scenario.map(changes -> changes.over(farm, faults)).orElse(farm));
    List<Fault> ofTables = new ArrayList<>();
    FarmTables files = FarmTables.of(folder, ofTables, faults);
    return new FarmReader(tables, faults, ofTables)
        .read(
            new Spot(Fields.FILE, 0),
            top,
            () ->
                files
                    .get(PaddocksCsv.TABLE)
                    .map(rows -> scenario.map(changes -> changes.over(rows, faults)).orElse(rows)),
            () -> files.find(PlantsCsv.TABLE),
            () -> files.find(RecordsCsv.TABLE),
            names -> PaddocksGeoJson.read(folder, names, faults));
  }
}
