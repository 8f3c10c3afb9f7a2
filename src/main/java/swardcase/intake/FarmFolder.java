package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import swardcase.check.FaultsException;
import swardcase.reading.Faults;
import swardcase.reading.FileText;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Spot;
import swardcase.reading.YamlTree;
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
          FarmReader.FILE,
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
    return read(folder, tables, Scenario.NONE);
  }

  /**
   * Reads the files of a farm that alone is without faults, with a scenario laid over them.
   *
   * @throws FaultsException with all faults of the scenario
   */
  public static LoadedFarm read(Path folder, Tables tables, Scenario scenario) {
    Faults faults = new Faults();
    if (!Files.isDirectory(folder)) {
      faults.add(folder.toString(), "must be a folder");
      faults.throwIfAny();
    }
    Optional<Entries> top =
        FileText.find(folder.resolve(FarmReader.FILE), FarmReader.FILE, faults)
            .flatMap(text -> YamlTree.find(FarmReader.FILE, text, faults))
            .map(keys -> scenario.over(keys, faults));
    FarmTables files = new FarmTables(folder, faults);
    try {
      return new FarmReader(
              tables,
              faults,
              name ->
                  name.equals(PaddocksCsv.TABLE)
                      ? files.get(name).map(rows -> scenario.over(rows, faults))
                      : files.find(name))
          .read(
              new Spot(FarmReader.FILE, 0),
              top,
              names -> PaddocksGeoJson.read(folder, names, faults));
    } catch (FaultsException found) {
      throw new FaultsException(found.faults().stream().map(scenario::own).toList());
    }
  }
}
