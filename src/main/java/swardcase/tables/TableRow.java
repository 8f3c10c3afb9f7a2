package swardcase.tables;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;

/**
 * A row of a reference table together with whose it is.
 *
 * @param cells the row itself
 * @param setBy the program or the user
 * @param sourceKeys every key that a source cell may name
 */
record TableRow(CsvRow cells, SetBy setBy, Set<String> sourceKeys) {

  private static final Map<String, Evidence> ALL_MARKS =
      Stream.of(Evidence.values())
          .collect(Collectors.toUnmodifiableMap(Evidence::label, Function.identity()));

  private static final Map<String, Evidence> REFERENCE_MARKS =
      Stream.of(Evidence.values())
          .filter(mark -> mark != Evidence.FARM)
          .collect(Collectors.toUnmodifiableMap(Evidence::label, Function.identity()));

  /**
   * The mark in this cell. In a user's table {@code farm} and a blank cell mean that the farm says
   * so; in the program's tables both are faults.
   */
  Evidence evidence(String column) {
    Optional<Evidence> mark =
        setBy == SetBy.OVERRIDE
            ? cells.findChoice(column, ALL_MARKS)
            : cells.choice(column, REFERENCE_MARKS);
    return mark.orElse(Evidence.FARM);
  }

  /** Checks a mark that belongs to a value that may be blank: both are there or neither. */
  void evidenceOf(String valueColumn, String markColumn) {
    if (cells.findText(valueColumn).isPresent()) {
      evidence(markColumn);
    } else if (cells.findText(markColumn).isPresent()) {
      cells.fault(markColumn, "must be blank where " + valueColumn + " is blank");
    }
  }

  /**
   * The source keys in this cell, joined by semicolons; each must be known, and a published number
   * must have one.
   */
  String source(String column, Evidence evidence) {
    for (String key : cells.list(column)) {
      if (!sourceKeys.contains(key)) {
        cells.faultName(column, "must name a key of sources.csv, which has no " + key, sourceKeys);
      }
    }
    String joined = String.join(";", cells.list(column));
    if (joined.isEmpty() && evidence == Evidence.PUBLISHED) {
      cells.fault(column, "must be given for a published number");
    }
    return joined;
  }

  /**
   * A number with its range, mark and source; nothing if any part is at fault. Mark and source are
   * checked even without a range, so that one run reports everything.
   */
  Optional<Assumption> assumption(
      String name, Optional<Range> range, String unit, String markColumn, String sourceColumn) {
    Evidence evidence = evidence(markColumn);
    String source = source(sourceColumn, evidence);
    return range.flatMap(
        found -> cells.make(() -> new Assumption(name, found, unit, evidence, source, setBy)));
  }

  /** The row for a person to read: its key, and the other cells that are not blank. */
  TableListing.Row listed(TableFile file) {
    String title =
        file.key().stream()
            .flatMap(c -> cells.findText(c).stream())
            .collect(Collectors.joining(", "));
    return new TableListing.Row(
        title,
        setBy == SetBy.OVERRIDE,
        file.columns().stream()
            .filter(column -> !file.key().contains(column))
            .flatMap(c -> cells.findText(c).map(text -> new TableListing.Cell(c, text)).stream())
            .toList());
  }
}
