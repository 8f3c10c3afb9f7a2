package swardcase.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import swardcase.check.Fault;
import swardcase.farm.Farm;
import swardcase.farm.Identification;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockShape;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Spot;
import swardcase.tables.CsvTable;
import swardcase.tables.Tables;

/** Puts a farm together from its keys and its tables, wherever those come from. */
final class FarmReader {

  private final Tables tables;
  private final FaultList faults;
  private final List<Fault> ofTables;

  /**
   * A reader for one farm.
   *
   * @param faults takes the faults of keys and whole files, and in the end all of them
   * @param ofTables takes those of rows and cells
   */
  FarmReader(Tables tables, FaultList faults, List<Fault> ofTables) {
    this.tables = tables;
    this.faults = faults;
    this.ofTables = ofTables;
  }

  /**
   * The farm.
   *
   * @param whole what a fault of the farm as a whole points to
   * @param top its keys; empty after a fault
   * @param paddocks finds its table of paddocks, or nothing and a fault
   * @param plants finds what was found on the walk, if there is such a table
   * @param records finds what was written down in past years, if there is such a table
   * @param map finds where the paddocks of these names lie, if anything says so
   * @throws swardcase.check.FaultsException with all faults at once
   */
  LoadedFarm read(
      Spot whole,
      Optional<Entries> top,
      Supplier<Optional<CsvTable>> paddocks,
      Supplier<Optional<CsvTable>> plants,
      Supplier<Optional<CsvTable>> records,
      Function<List<String>, List<PaddockShape>> map) {
    Defaults defaults = new Defaults(tables);
    Optional<FarmYaml> yaml =
        top.map(keys -> FarmYaml.read(new Fields(keys, whole, "", faults), tables, defaults));
    Optional<List<Mob>> mobs = faults.count() == 0 ? yaml.map(FarmYaml::mobs) : Optional.empty();
    Optional<CsvTable> rows = paddocks.get();
    List<String> names = rows.map(PaddocksCsv::names).orElse(List.of());
    Optional<RecordsCsv> told = records.get().map(table -> RecordsCsv.read(table, mobs, names));
    List<Paddock> read = paddocks(new PaddocksCsv(defaults, mobs), rows, names, plants);
    List<PaddockShape> shapes = map.apply(names);
    faults.throwIfAny();
    Optional<Farm> farm =
        faults.build(
            0,
            new Place(whole, ""),
            () -> {
              Farm without = yaml.orElseThrow().farm(read);
              return told.map(found -> found.with(without)).orElse(without);
            });
    faults.throwIfAny();
    Optional<LocalDate> priceDate = yaml.flatMap(FarmYaml::priceDate);
    return new LoadedFarm(
        farm.orElseThrow(),
        Stream.concat(
                Doubts.of(farm.get(), tables).stream(),
                PaddocksGeoJson.doubts(farm.get(), shapes).stream())
            .toList(),
        Notices.of(farm.get(), defaults, priceDate),
        priceDate,
        shapes);
  }

  private List<Paddock> paddocks(
      PaddocksCsv reader,
      Optional<CsvTable> rows,
      List<String> names,
      Supplier<Optional<CsvTable>> plants) {
    Map<String, Paddock> paddocks =
        rows.map(table -> reader.read(table, ofTables)).orElse(Map.of());
    String from = rows.map(CsvTable::name).orElse("");
    Map<String, List<Identification>> found =
        plants.get().map(table -> new PlantsCsv(tables).read(table, names, from)).orElse(Map.of());
    faults.addAll(ofTables);
    List<Paddock> whole = new ArrayList<>();
    for (Map.Entry<String, Paddock> paddock : paddocks.entrySet()) {
      whole.add(
          PaddocksCsv.with(paddock.getValue(), found.getOrDefault(paddock.getKey(), List.of())));
    }
    return whole;
  }
}
