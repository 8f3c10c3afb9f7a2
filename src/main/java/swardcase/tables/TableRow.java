package swardcase.tables;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.reading.Fields;
import swardcase.reading.Node.Scalar;

/** A row of a reference table together with whose it is. */
final class TableRow extends Fields {

  private static final Map<String, Evidence> ALL_MARKS =
      Fields.words(Evidence.values(), Evidence::label);
  private static final Map<String, Evidence> REFERENCE_MARKS = new HashMap<>(ALL_MARKS);

  static {
    REFERENCE_MARKS.remove(Evidence.FARM.label());
  }

  private final SetBy setBy;
  private final Set<String> sourceKeys;

  /** A row of the program or the user; its source cells may name these keys. */
  TableRow(Fields cells, SetBy setBy, Set<String> sourceKeys) {
    super(cells);
    this.setBy = setBy;
    this.sourceKeys = sourceKeys;
  }

  SetBy setBy() {
    return setBy;
  }

  /**
   * The mark in this cell. In a user's table {@code farm} and a blank cell mean that the farm says
   * so; in the program's tables both are faults.
   */
  Evidence evidence(String column) {
    return setBy == SetBy.OVERRIDE
        ? findChoice(column, ALL_MARKS).orElse(Evidence.FARM)
        : Optional.ofNullable(choice(column, REFERENCE_MARKS)).orElse(Evidence.FARM);
  }

  /** Checks a mark that belongs to a value that may be blank: both are there or neither. */
  void evidenceOf(String valueColumn, String markColumn) {
    if (has(valueColumn)) {
      evidence(markColumn);
    } else if (has(markColumn)) {
      fault(markColumn, "must be blank where " + valueColumn + " is blank");
    }
  }

  /**
   * The source keys in this cell, joined by semicolons; each must be known, and a published number
   * must have one.
   */
  String source(String column, Evidence evidence) {
    for (Scalar key : words(column)) {
      if (!sourceKeys.contains(key.text())) {
        String rule = "must name a key of sources.csv, which has no " + key.text();
        fault(column, rule, sourceKeys);
      }
    }
    String joined = words(column).stream().map(Scalar::text).collect(Collectors.joining(";"));
    if (joined.isEmpty() && evidence == Evidence.PUBLISHED) {
      fault(column, "must be given for a published number");
    }
    return joined;
  }

  /**
   * A number with its range, mark and source.
   *
   * @param columns those of its range, with {@code %} for {@code low}, {@code likely} and {@code
   *     high}
   * @param stem what stands before {@code evidence} and {@code source} in their headings; a number
   *     without a source column of its own has that of the row
   */
  Assumption number(
      String name, String unit, String columns, double least, double most, String stem) {
    Optional<Range> range =
        range(column(columns, "low"), likely(columns), column(columns, "high"), least, most);
    return assumption(name, unit, range.orElse(Range.exactly(0)), stem);
  }

  /** The same, unless its cells are blank. */
  Optional<Assumption> findNumber(
      String name, String unit, String columns, double least, double most, String stem) {
    evidenceOf(likely(columns), stem + "evidence");
    return findRange(column(columns, "low"), likely(columns), column(columns, "high"), least, most)
        .map(range -> assumption(name, unit, range, stem));
  }

  /** A fraction that the table gives in per cent. */
  Assumption fraction(String name, String columns, String stem) {
    Assumption percent = number(name, "-", columns, 0, 100, stem);
    return new Assumption(
        name, Fields.fractions(percent.range()), "-", percent.evidence(), percent.source(), setBy);
  }

  private Assumption assumption(String name, String unit, Range range, String stem) {
    Evidence evidence = evidence(stem + "evidence");
    String own = stem + "source";
    String source = source(keys().contains(own) ? own : "source", evidence);
    return new Assumption(name, range, unit, evidence, source, setBy);
  }

  private static String likely(String columns) {
    return column(columns, "likely");
  }

  private static String column(String columns, String which) {
    return columns.replace("%", which);
  }

  /** The row for a person to read: its key, and the other cells that are not blank. */
  TableListing.Row listed(TableFile file) {
    Map<String, String> cells = new LinkedHashMap<>();
    keys().stream()
        .filter(column -> !file.key().contains(column) && has(column))
        .forEach(column -> cells.put(column, text(column)));
    return new TableListing.Row(title(file), setBy == SetBy.OVERRIDE, cells);
  }

  /** What its key says, such as {@code barley}. */
  String title(TableFile file) {
    return file.key().stream().filter(this::has).map(this::text).collect(Collectors.joining(", "));
  }
}
