package swardcase.intake;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.check.Fault;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Names;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;
import swardcase.reading.Table;

/** Named changes to a farm: keys of {@code farm.yaml}, and cells of paddocks by paddock name. */
public final class Scenario {

  /** The key below which cells of paddocks are changed. */
  static final String PADDOCKS = "paddocks";

  /** The farm as it is. */
  static final Scenario NONE = new Scenario("", new Spot("", 0), Map.of());

  private final String name;
  private final Spot at;
  private final Map<String, Entry> keys;

  Scenario(String name, Spot at, Map<String, Entry> keys) {
    this.name = name;
    this.at = at;
    this.keys = keys;
  }

  /** What it is called in its file. */
  public String name() {
    return name;
  }

  /** The keys of the farm with those this scenario changes. */
  Entries over(Entries farm, Faults faults) {
    Map<String, Entry> changed = new LinkedHashMap<>(keys);
    changed.remove(PADDOCKS);
    return new Overlay(faults).over(farm, new Entries(at, changed));
  }

  /** The table of paddocks with the cells this scenario changes. */
  Table over(Table table, Faults faults) {
    Entry paddocks = keys.get(PADDOCKS);
    if (paddocks == null || !(paddocks.value() instanceof Entries named)) {
      return table;
    }
    List<String> names = PaddocksCsv.names(table);
    Map<String, Entry> changes = new HashMap<>();
    named
        .entries()
        .forEach(
            (paddock, entry) -> {
              changes.put(Names.key(paddock), entry);
              if (Names.find(paddock, names).isEmpty()) {
                faults.add(entry.at(), PADDOCKS, "must be a paddock of the farm", paddock, names);
              }
            });
    return table.with(
        row -> {
          String paddock = row.findText("paddock").orElse("");
          Entry entry = changes.get(Names.key(paddock));
          return entry == null ? row : row.with(cells(row, entry, PADDOCKS + "." + paddock));
        });
  }

  private static Map<String, Entry> cells(Fields row, Entry entry, String path) {
    Map<String, Entry> cells = new HashMap<>();
    if (entry.value() instanceof Entries columns) {
      columns
          .entries()
          .forEach(
              (column, cell) ->
                  cell(row, column, cell, path + "." + column)
                      .ifPresent(changed -> cells.put(column, changed)));
    } else {
      String rule = "must have columns below it, such as 'clover_percent: 40'";
      row.faults().add(entry.at(), path, rule, "");
    }
    return cells;
  }

  private static Optional<Entry> cell(Fields row, String column, Entry cell, String path) {
    if (column.equals("paddock")) {
      row.faults().add(cell.at(), path, "must stay as it is", "");
      return Optional.empty();
    }
    if (!(cell.value() instanceof Scalar scalar)) {
      row.faults().add(cell.at(), path, "must be one value, as in a cell", "");
      return Optional.empty();
    }
    Optional<PerCent> change = PerCent.find(scalar.text());
    Optional<String> text =
        change.isPresent()
            ? row.findText(column).flatMap(change.get()::of)
            : Optional.of(scalar.isEmpty() ? "" : scalar.text());
    if (text.isEmpty()) {
      String rule =
          "must be the value itself: the paddock has no number here to be changed by per cent";
      row.faults().add(cell.at(), path, rule, scalar.text());
    }
    return text.map(it -> new Entry(cell.at(), new Scalar(cell.at(), it, Form.CELL)));
  }

  /**
   * A fault as it is printed: one that shows in a file of the farm, which alone is sound, belongs
   * to this scenario.
   */
  Fault own(Fault fault) {
    return this == NONE || fault.file().equals(at.file())
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
