package swardcase.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import swardcase.check.Fault;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Scalar;
import swardcase.intake.YamlNode.Spot;
import swardcase.tables.CsvRow;
import swardcase.tables.CsvTable;

/** Named changes to a farm: keys of {@code farm.yaml}, and cells of paddocks by paddock name. */
public final class Scenario {

  private final String name;
  private final Spot at;
  private final Entries keys;
  private final Entries paddocks;

  Scenario(String name, Spot at, Entries keys, Entries paddocks) {
    this.name = name;
    this.at = at;
    this.keys = keys;
    this.paddocks = paddocks;
  }

  /** What it is called in its file. */
  public String name() {
    return name;
  }

  Entries over(Entries farm, FaultList faults) {
    return new Overlay(faults).over(farm, keys);
  }

  /** The table of paddocks with the cells this scenario changes. */
  CsvTable over(CsvTable table, FaultList faults) {
    List<String> names = PaddocksCsv.names(table);
    Set<String> known = names.stream().map(Names::key).collect(Collectors.toSet());
    Map<String, Entry> changes = new LinkedHashMap<>();
    paddocks
        .entries()
        .forEach(
            (paddock, entry) -> {
              if (!known.contains(Names.key(paddock))) {
                Place place = new Place(entry.at(), ScenarioFile.PADDOCKS);
                faults.add(place, "must be a paddock of the farm", paddock, names);
              }
              changes.put(Names.key(paddock), entry);
            });
    return table.with(
        table.rows().stream()
            .map(
                row -> {
                  Entry entry = changes.get(Names.key(row.findText("paddock").orElse("")));
                  return entry == null ? row : over(row, entry, faults);
                })
            .toList());
  }

  private static CsvRow over(CsvRow row, Entry entry, FaultList faults) {
    Map<String, String> cells = new LinkedHashMap<>();
    String path = ScenarioFile.PADDOCKS + "." + row.findText("paddock").orElse("");
    if (!(entry.value() instanceof Entries columns)) {
      faults.add(
          new Place(entry.at(), path),
          "must have columns below it, such as 'clover_percent: 40'",
          "");
      return row;
    }
    columns.entries().forEach((column, cell) -> cell(row, column, cell, path, faults, cells));
    return row.with(entry.at().file(), entry.at().line(), cells);
  }

  private static void cell(
      CsvRow row,
      String column,
      Entry cell,
      String path,
      FaultList faults,
      Map<String, String> cells) {
    Place place = new Place(cell.at(), path + "." + column);
    if (!PaddocksCsv.CHANGEABLE.contains(column)) {
      faults.add(
          new Place(cell.at(), path),
          "must be a column of paddocks.csv other than 'paddock'",
          column,
          PaddocksCsv.CHANGEABLE);
    } else if (!(cell.value() instanceof Scalar scalar)) {
      faults.add(place, "must be one value, as in a cell", "");
    } else {
      Optional<PerCent> change = PerCent.find(scalar.text());
      Optional<String> text =
          change.isPresent()
              ? row.findText(column).flatMap(change.get()::of)
              : Optional.of(scalar.isEmpty() ? "" : scalar.text());
      if (text.isEmpty()) {
        faults.add(
            place,
            "must be the value itself: the paddock has no number here to be changed by per cent",
            scalar.text());
      }
      text.ifPresent(value -> cells.put(column, value));
    }
  }

  /**
   * A fault as it is printed: one that shows in a file of the farm, which alone is sound, belongs
   * to this scenario.
   */
  Fault own(Fault fault) {
    return fault.file().equals(at.file())
        ? fault
        : new Fault(
            at.file(),
            at.line(),
            fault.column().isBlank() ? name : name + ": " + fault.column(),
            fault.rule(),
            fault.found(),
            fault.nearest());
  }
}
