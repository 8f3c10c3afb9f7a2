package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import swardcase.check.FaultsException;
import swardcase.check.ReadLimits;
import swardcase.reading.Faults;
import swardcase.reading.JsonTree;
import swardcase.reading.Node;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Items;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;
import swardcase.reading.Table;
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

  private final Spot whole;
  private final Entries document;
  private final Faults faults;

  private FarmDocument(Spot whole, Entries document, Faults faults) {
    this.whole = whole;
    this.document = document;
    this.faults = faults;
  }

  /**
   * Reads a document.
   *
   * @param name what it is called in faults, such as {@code line 12}
   * @throws FaultsException with all its faults at once
   */
  public static LoadedFarm read(String name, String json, Tables tables) {
    Faults faults = new Faults();
    Optional<Entries> document = JsonTree.find(name, json, faults);
    faults.throwIfAny();
    return new FarmDocument(new Spot(name, 0), document.orElseThrow(), faults).read(tables);
  }

  private LoadedFarm read(Tables tables) {
    for (String part : document.entries().keySet()) {
      if (!PARTS.contains(part)) {
        faults.add(whole, "", "must be one of farm, paddocks, plants, records", part, PARTS);
      }
    }
    Entry farm = document.entries().get(FARM);
    Optional<Entries> keys = Optional.empty();
    if (farm != null && farm.value() instanceof Entries found) {
      keys = Optional.of(found);
    } else {
      faults.add(whole, FARM, "must be given, with the keys of farm.yaml", "");
    }
    return new FarmReader(tables, faults, this::find).read(whole, keys, names -> List.of());
  }

  private Optional<Table> find(String part) {
    Entry entry = document.entries().get(part);
    if (entry == null && !part.equals(PaddocksCsv.TABLE)) {
      return Optional.empty();
    }
    if (entry == null || !(entry.value() instanceof Items rows)) {
      faults.add(whole, part, "must be a list of rows", "");
      return Optional.empty();
    }
    Set<String> columns = new LinkedHashSet<>();
    for (Node row : rows.items()) {
      columns.addAll(row instanceof Entries cells ? cells.entries().keySet() : Set.of());
    }
    if (columns.size() > ReadLimits.COLUMNS) {
      String rule = "must not have more than " + ReadLimits.COLUMNS + " columns";
      faults.add(whole, part, rule, "");
      return Optional.empty();
    }
    List<Table.Line> lines = new ArrayList<>();
    lines.add(new Table.Line(0, List.copyOf(columns)));
    for (int r = 1; r <= rows.items().size(); r++) {
      List<String> cells = cells(rows.items().get(r - 1), columns, part + "[" + r + "]");
      if (!cells.stream().allMatch(String::isEmpty)) {
        lines.add(new Table.Line(r, cells));
      }
    }
    return Optional.of(Table.ofLines(whole.file() + ", " + part, lines, faults));
  }

  private List<String> cells(Node row, Set<String> columns, String path) {
    List<String> cells = new ArrayList<>();
    for (String column : columns) {
      Entry cell = row instanceof Entries entries ? entries.entries().get(column) : null;
      cells.add(cell == null ? "" : text(cell.value(), path + "." + column));
    }
    if (cells.stream().allMatch(String::isEmpty)) {
      faults.add(whole, path, "must have cells such as \"paddock\": \"House\"", "");
    }
    return cells;
  }

  private String text(Node cell, String path) {
    if (cell instanceof Scalar scalar) {
      return scalar.isEmpty() ? "" : scalar.text();
    }
    faults.add(whole, path, "must be one value", "");
    return "";
  }
}
