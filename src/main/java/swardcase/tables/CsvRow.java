package swardcase.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.check.NearestName;
import swardcase.check.ReadLimits;

/**
 * A row of a {@link CsvTable}. Methods that begin with {@code find} accept a blank cell or a column
 * that is not there, and then give nothing; the others report a fault. After a fault a method gives
 * a harmless value (an empty text, NaN, nothing), and {@link #make} builds nothing.
 */
public final class CsvRow {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d+)?");

  /** 12,500 may be twelve and a half or twelve thousand five hundred. */
  private static final Pattern AMBIGUOUS = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");

  private final String file;
  private final CsvText.Line cells;
  private final Map<String, Integer> places;
  private final List<Fault> faults;
  private boolean good = true;

  CsvRow(String file, CsvText.Line cells, Map<String, Integer> places, List<Fault> faults) {
    this.file = file;
    this.cells = cells;
    this.places = places;
    this.faults = faults;
  }

  /**
   * The same row with other cells, some of them perhaps in columns that the table does not have.
   *
   * @param otherFile where the cells come from; faults of this row are reported there
   * @param line the line there
   * @param changed cells by column
   */
  public CsvRow with(String otherFile, int line, Map<String, String> changed) {
    Map<String, Integer> extended = new HashMap<>(places);
    List<String> texts = new ArrayList<>(cells.cells());
    changed.forEach(
        (column, cell) -> {
          Integer place = extended.putIfAbsent(column, texts.size());
          if (place == null) {
            texts.add(cell);
          } else {
            texts.set(place, cell);
          }
        });
    return new CsvRow(otherFile, new CsvText.Line(line, List.copyOf(texts)), extended, faults);
  }

  /** Line number in the file, from 1. */
  public int line() {
    return cells.number();
  }

  /** Whether no fault of this row has been reported so far. */
  public boolean isGood() {
    return good;
  }

  /** The cell, which must not be blank. */
  public String text(String column) {
    return findText(column)
        .orElseGet(
            () -> {
              fault(column, "must be given");
              return "";
            });
  }

  /** The cell, unless it is blank. */
  public Optional<String> findText(String column) {
    Integer place = places.get(column);
    return place == null
        ? Optional.empty()
        : Optional.of(cells.cells().get(place)).filter(cell -> !cell.isEmpty());
  }

  /** A finite number; NaN after a fault. */
  public double number(String column) {
    return number(column, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** A number from {@code least} to {@code most}; NaN after a fault. */
  public double number(String column, double least, double most) {
    return text(column).isEmpty() ? Double.NaN : findNumber(column, least, most).orElse(Double.NaN);
  }

  /** A number from {@code least} to {@code most}, unless the cell is blank. */
  public OptionalDouble findNumber(String column, double least, double most) {
    Optional<String> cell = findText(column);
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    String text = cell.get();
    if (AMBIGUOUS.matcher(text).matches()) {
      return refused(column, "must be a number that can be read one way only, without thousands");
    }
    if (!NUMBER.matcher(text).matches()) {
      return refused(column, "must be a number");
    }
    double value = Double.parseDouble(text.replace(',', '.')) + 0d;
    return value >= least && value <= most && Double.isFinite(value)
        ? OptionalDouble.of(value)
        : refused(column, rule(least, most));
  }

  /** A whole number from {@code least} to {@code most}, unless the cell is blank. */
  public OptionalInt findWhole(String column, int least, int most) {
    OptionalDouble value = findNumber(column, least, most);
    if (value.isEmpty()) {
      return OptionalInt.empty();
    }
    if (value.getAsDouble() != Math.rint(value.getAsDouble())) {
      refused(column, "must be a whole number");
      return OptionalInt.empty();
    }
    return OptionalInt.of((int) value.getAsDouble());
  }

  /** A whole number from {@code least} to {@code most}; {@code least} after a fault. */
  public int whole(String column, int least, int most) {
    return text(column).isEmpty() ? least : findWhole(column, least, most).orElse(least);
  }

  /**
   * Low, likely and high from three columns, in rising order, all from {@code least} to {@code
   * most}; nothing after a fault.
   */
  public Optional<Range> range(String low, String likely, String high, double least, double most) {
    double from = number(low, least, most);
    double middle = number(likely, least, most);
    double to = number(high, least, most);
    if (Double.isNaN(from) || Double.isNaN(middle) || Double.isNaN(to)) {
      return Optional.empty();
    }
    if (from <= middle && middle <= to) {
      return Optional.of(Range.of(from, middle, to));
    }
    report(
        likely,
        String.format(Locale.ROOT, "%s, %s and %s must be in rising order", low, likely, high),
        Stream.of(low, likely, high).map(this::text).toList().toString(),
        () -> "");
    return Optional.empty();
  }

  /** As {@link #range}, but nothing without a fault if all three cells are blank. */
  public Optional<Range> findRange(
      String low, String likely, String high, double least, double most) {
    return Stream.of(low, likely, high).allMatch(column -> findText(column).isEmpty())
        ? Optional.empty()
        : range(low, likely, high, least, most);
  }

  /** {@code yes} or {@code no}; false after a fault. */
  public boolean yes(String column) {
    return choice(column, Map.of("yes", true, "no", false)).orElse(false);
  }

  /** What the cell stands for, case aside; an unknown word is a fault with the nearest word. */
  public <T> Optional<T> choice(String column, Map<String, T> words) {
    return text(column).isEmpty() ? Optional.empty() : findChoice(column, words);
  }

  /** As {@link #choice}, but a blank cell is no fault. */
  public <T> Optional<T> findChoice(String column, Map<String, T> words) {
    Optional<String> cell = findText(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> found =
        words.entrySet().stream()
            .filter(entry -> entry.getKey().equalsIgnoreCase(cell.get()))
            .map(Map.Entry::getValue)
            .findFirst();
    if (found.isEmpty()) {
      List<String> sorted = words.keySet().stream().sorted().toList();
      faultName(column, "must be one of: " + String.join(", ", sorted), sorted);
    }
    return found;
  }

  /** The parts of a cell between semicolons, trimmed; a blank cell has none. */
  public List<String> list(String column) {
    return findText(column).stream()
        .flatMap(cell -> Arrays.stream(cell.split(";")))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .toList();
  }

  /**
   * What {@code maker} builds, if this row has no fault; a rule the record itself holds becomes a
   * fault of the row.
   */
  public <T> Optional<T> make(Supplier<T> maker) {
    if (!good) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      report("", e.getMessage(), "", () -> "");
      return Optional.empty();
    }
  }

  /** Reports a fault of this cell, with what was found there. */
  public void fault(String column, String rule) {
    faultName(column, rule, List.of());
  }

  /** Reports that this cell is none of the names, with the nearest of them. */
  public void faultName(String column, String rule, Collection<String> names) {
    String found = findText(column).orElse("");
    report(column, rule, found, () -> NearestName.find(found, names).orElse(""));
  }

  /**
   * Reports a fault of this cell with the word that was probably meant, which is looked for only if
   * the fault is among the first; blank if none is near.
   */
  public void fault(String column, String rule, Supplier<String> nearest) {
    report(column, rule, findText(column).orElse(""), nearest);
  }

  private OptionalDouble refused(String column, String rule) {
    fault(column, rule);
    return OptionalDouble.empty();
  }

  private void report(String column, String rule, String found, Supplier<String> nearest) {
    good = false;
    if (faults.size() < ReadLimits.FAULTS) {
      boolean few = faults.size() < ReadLimits.NEAREST;
      faults.add(new Fault(file, line(), column, rule, found, few ? nearest.get() : ""));
    }
  }

  private static String rule(double least, double most) {
    if (Double.isInfinite(least) && Double.isInfinite(most)) {
      return "must be a finite number";
    }
    if (Double.isInfinite(most)) {
      return "must be at least " + plain(least);
    }
    return Double.isInfinite(least)
        ? "must be at most " + plain(most)
        : "must be from " + plain(least) + " to " + plain(most);
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
