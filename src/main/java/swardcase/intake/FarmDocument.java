package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.ReadLimits;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Items;
import swardcase.intake.YamlNode.Scalar;
import swardcase.intake.YamlNode.Spot;
import swardcase.tables.CsvTable;
import swardcase.tables.Tables;

/**
 * A farm as one JSON document: {@code farm} with the keys of {@code farm.yaml}, {@code paddocks},
 * {@code plants} and {@code records} as lists of rows, each row with the columns of the table of
 * that name. Yes and no may be {@code true} and {@code false}.
 */
public final class FarmDocument {

  private static final String FARM = "farm";
  private static final Set<String> PARTS =
      Set.of(FARM, PaddocksCsv.TABLE, PlantsCsv.TABLE, RecordsCsv.TABLE);

  private final String name;
  private final FaultList faults;
  private final List<Fault> ofTables = new ArrayList<>();

  private FarmDocument(String name, FaultList faults) {
    this.name = name;
    this.faults = faults;
  }

  /**
   * Reads a document.
   *
   * @param name what it is called in faults, such as {@code line 12}
   * @throws FaultsException with all its faults at once
   */
  public static LoadedFarm read(String name, String json, Tables tables) {
    FaultList faults = new FaultList();
    Optional<Entries> document = JsonTree.find(name, json, faults);
    faults.throwIfAny();
    FarmDocument parts = new FarmDocument(name, faults);
    return parts.read(document.orElseThrow(), tables);
  }

  private LoadedFarm read(Entries document, Tables tables) {
    for (String part : document.entries().keySet()) {
      if (!PARTS.contains(part)) {
        faults.add(
            new Place(name, 0, ""), "must be one of farm, paddocks, plants, records", part, PARTS);
      }
    }
    Entry farm = document.entries().get(FARM);
    Optional<Entries> keys = Optional.empty();
    if (farm != null && farm.value() instanceof Entries found) {
      keys = Optional.of(found);
    } else {
      faults.add(new Place(name, 0, FARM), "must be given, with the keys of farm.yaml", "");
    }
    return new FarmReader(tables, faults, ofTables)
        .read(
            new Spot(name, 0),
            keys,
            () -> table(document, PaddocksCsv.TABLE),
            () -> find(document, PlantsCsv.TABLE),
            () -> find(document, RecordsCsv.TABLE),
            names -> List.of());
  }

  private Optional<CsvTable> find(Entries document, String part) {
    return document.entries().containsKey(part) ? table(document, part) : Optional.empty();
  }

  private Optional<CsvTable> table(Entries document, String part) {
    Entry entry = document.entries().get(part);
    if (entry == null || !(entry.value() instanceof Items rows)) {
      faults.add(new Place(name, 0, part), "must be a list of rows", "");
      return Optional.empty();
    }
    Set<String> columns = new LinkedHashSet<>();
    for (YamlNode row : rows.items()) {
      if (row instanceof Entries cells) {
        columns.addAll(cells.entries().keySet());
      }
    }
    if (columns.size() > ReadLimits.COLUMNS) {
      String rule = "must not have more than " + ReadLimits.COLUMNS + " columns";
      faults.add(new Place(name, 0, part), rule, "");
      return Optional.empty();
    }
    List<String> headings = List.copyOf(columns);
    SortedMap<Integer, List<String>> cells = new TreeMap<>();
    cells.put(0, headings);
    for (int r = 0; r < rows.items().size(); r++) {
      cells.put(r + 1, cells(rows.items().get(r), headings, part + "[" + (r + 1) + "]"));
    }
    return Optional.of(CsvTable.ofCells(name + ", " + part, cells, ofTables));
  }

  private List<String> cells(YamlNode row, List<String> headings, String path) {
    List<String> cells = new ArrayList<>();
    for (String heading : headings) {
      Entry cell = row instanceof Entries entries ? entries.entries().get(heading) : null;
      cells.add(cell == null ? "" : text(cell.value(), path + "." + heading));
    }
    if (!(row instanceof Entries) || cells.stream().allMatch(String::isEmpty)) {
      faults.add(new Place(name, 0, path), "must have cells such as \"paddock\": \"House\"", "");
    } else if (cells.get(0).startsWith("# ")) {
      faults.add(new Place(name, 0, path), "must not begin as a comment does", cells.get(0));
    }
    return cells;
  }

  private String text(YamlNode cell, String path) {
    if (cell instanceof Scalar scalar) {
      return scalar.isEmpty() ? "" : scalar.text();
    }
    faults.add(new Place(name, 0, path), "must be one value", "");
    return "";
  }
}
