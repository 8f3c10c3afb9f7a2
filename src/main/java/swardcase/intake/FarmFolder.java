package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.Path;
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
import swardcase.tables.CsvTable;
import swardcase.tables.Tables;

/**
 * A farm folder: {@code farm.yaml}, {@code paddocks.csv} and {@code plants.csv}, of which the last
 * may be missing. The keys and columns are described in {@code docs/inputs.md}.
 */
public final class FarmFolder {

  private FarmFolder() {}

  /**
   * Reads the three files.
   *
   * @param folder where they are
   * @param tables supplies names that the files may use, and the defaults for what they leave out
   * @throws FaultsException with all faults of all files at once, if there is one
   */
  public static LoadedFarm read(Path folder, Tables tables) {
    FaultList faults = new FaultList();
    if (!Files.isDirectory(folder)) {
      faults.add(new Place(folder.toString(), 0, ""), "must be a folder", "");
      faults.throwIfAny();
    }
    Defaults defaults = new Defaults(tables);
    Optional<FarmYaml> yaml =
        FileText.find(folder.resolve(Fields.FILE), faults)
            .flatMap(text -> YamlTree.find(Fields.FILE, text, faults))
            .map(top -> FarmYaml.read(new Fields(top, 0, "", faults), tables, defaults));
    Optional<List<Mob>> mobs = faults.count() == 0 ? yaml.map(FarmYaml::mobs) : Optional.empty();
    List<Paddock> paddocks = paddocks(folder, tables, new PaddocksCsv(defaults, mobs), faults);
    faults.throwIfAny();
    Optional<Farm> farm =
        faults.build(0, new Place(Fields.FILE, 0, ""), () -> yaml.orElseThrow().farm(paddocks));
    faults.throwIfAny();
    return new LoadedFarm(farm.orElseThrow(), Notices.of(farm.get(), tables, defaults));
  }

  private static List<Paddock> paddocks(
      Path folder, Tables tables, PaddocksCsv reader, FaultList faults) {
    List<Fault> ofTables = new ArrayList<>();
    Optional<CsvTable> rows = table(folder.resolve(PaddocksCsv.FILE), ofTables, faults);
    Map<String, Paddock> paddocks =
        rows.map(table -> reader.read(table, ofTables)).orElse(Map.of());
    Path plants = folder.resolve(PlantsCsv.FILE);
    Map<String, List<Identification>> found = Map.of();
    if (Files.exists(plants)) {
      List<String> names = rows.map(PaddocksCsv::names).orElse(List.of());
      found =
          table(plants, ofTables, faults)
              .map(table -> new PlantsCsv(tables).read(table, names))
              .orElse(Map.of());
    }
    faults.addAll(ofTables);
    List<Paddock> whole = new ArrayList<>();
    for (Map.Entry<String, Paddock> paddock : paddocks.entrySet()) {
      whole.add(
          PaddocksCsv.with(paddock.getValue(), found.getOrDefault(paddock.getKey(), List.of())));
    }
    return whole;
  }

  /** A table whose file is there, is text and is not too large. */
  private static Optional<CsvTable> table(Path file, List<Fault> ofTables, FaultList faults) {
    return FileText.find(file, faults).map(text -> CsvTable.read(file, ofTables));
  }
}
