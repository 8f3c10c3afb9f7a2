package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Spot;
import swardcase.tables.CsvTable;
import swardcase.tables.Tables;

/**
 * A farm folder: {@code farm.yaml}, {@code paddocks.csv} and {@code plants.csv}, of which the last
 * may be missing; a workbook {@code farm.xlsx} may hold the two tables instead. The keys and
 * columns are described in {@code docs/inputs.md}.
 */
public final class FarmFolder {

  /** The names of the files. */
  public static final List<String> FILES =
      List.of(Fields.FILE, PaddocksCsv.TABLE + ".csv", PlantsCsv.TABLE + ".csv", FarmWorkbook.FILE);

  private static final Spot WHOLE = new Spot(Fields.FILE, 0);

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
    Defaults defaults = new Defaults(tables);
    Optional<FarmYaml> yaml =
        FileText.find(folder.resolve(Fields.FILE), faults)
            .flatMap(text -> YamlTree.find(Fields.FILE, text, faults))
            .map(top -> scenario.map(changes -> changes.over(top, faults)).orElse(top))
            .map(top -> FarmYaml.read(new Fields(top, WHOLE, "", faults), tables, defaults));
    Optional<List<Mob>> mobs = faults.count() == 0 ? yaml.map(FarmYaml::mobs) : Optional.empty();
    List<Paddock> paddocks =
        paddocks(folder, tables, new PaddocksCsv(defaults, mobs), scenario, faults);
    faults.throwIfAny();
    Optional<Farm> farm =
        faults.build(0, new Place(WHOLE, ""), () -> yaml.orElseThrow().farm(paddocks));
    faults.throwIfAny();
    Optional<LocalDate> priceDate = yaml.flatMap(FarmYaml::priceDate);
    return new LoadedFarm(
        farm.orElseThrow(),
        Doubts.of(farm.get(), tables),
        Notices.of(farm.get(), defaults, priceDate),
        priceDate);
  }

  private static List<Paddock> paddocks(
      Path folder,
      Tables tables,
      PaddocksCsv reader,
      Optional<Scenario> scenario,
      FaultList faults) {
    List<Fault> ofTables = new ArrayList<>();
    FarmTables files = FarmTables.of(folder, ofTables, faults);
    Optional<CsvTable> rows =
        files
            .get(PaddocksCsv.TABLE)
            .map(table -> scenario.map(changes -> changes.over(table, faults)).orElse(table));
    Map<String, Paddock> paddocks =
        rows.map(table -> reader.read(table, ofTables)).orElse(Map.of());
    List<String> names = rows.map(PaddocksCsv::names).orElse(List.of());
    String from = rows.map(CsvTable::name).orElse("");
    Map<String, List<Identification>> found =
        files
            .find(PlantsCsv.TABLE)
            .map(table -> new PlantsCsv(tables).read(table, names, from))
            .orElse(Map.of());
    faults.addAll(ofTables);
    List<Paddock> whole = new ArrayList<>();
    for (Map.Entry<String, Paddock> paddock : paddocks.entrySet()) {
      whole.add(
          PaddocksCsv.with(paddock.getValue(), found.getOrDefault(paddock.getKey(), List.of())));
    }
    return whole;
  }
}
