package swardcase.reading;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swardcase.chance.Range;
import swardcase.check.NearestName;
import swardcase.check.NumberText;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Items;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;

/**
 * The keys of a part of a document, or the cells of a row, read one by one where a record is made.
 *
 * <p>Methods that begin with {@code find} give empty for a key that is absent or has nothing behind
 * it; for the others that is a fault. A value that cannot be used is a fault too. After a fault
 * every method gives something harmless (an empty text, NaN, the least whole number, null for a
 * choice), so that the rest is read too, and {@link #make} makes nothing. What was never asked for
 * is a key or column nobody knows.
 */
public class Fields {

  /** Names beyond this number are not listed in a message. */
  private static final int FEW_NAMES = 20;

  private static final Map<String, Boolean> YES_NO = Map.of("yes", true, "no", false);

  private final Spot at;
  private final String path;
  private final Faults faults;
  private final Set<String> keys;
  private final Function<String, Entry> values;
  private final Set<String> asked;
  private final boolean isRow;

  private Fields(
      Spot at,
      String path,
      Faults faults,
      Set<String> keys,
      Function<String, Entry> values,
      Set<String> asked,
      boolean isRow) {
    this.at = at;
    this.path = path;
    this.faults = faults;
    this.keys = keys;
    this.values = values;
    this.asked = asked;
    this.isRow = isRow;
  }

  /** The keys of a part; its path, such as {@code mobs[1]}, is blank for a whole document. */
  public Fields(Entries part, String path, Faults faults) {
    this(
        part.at(),
        path,
        faults,
        part.entries().keySet(),
        part.entries()::get,
        new LinkedHashSet<>(),
        false);
  }

  /** The cells of a row; what is asked for is remembered by its table. */
  static Fields ofRow(
      Spot at,
      Faults faults,
      Set<String> columns,
      Function<String, Entry> cells,
      Set<String> asked) {
    return new Fields(at, "", faults, columns, cells, asked, true);
  }

  /** The same, for a class that knows more about what it reads. */
  protected Fields(Fields same) {
    this(same.at, same.path, same.faults, same.keys, same.values, same.asked, same.isRow);
  }

  /** The same row with other cells, perhaps in columns its table does not have. */
  public Fields with(Map<String, Entry> changed) {
    Set<String> all = new LinkedHashSet<>(keys);
    all.addAll(changed.keySet());
    return ofRow(
        at,
        faults,
        all,
        key -> changed.containsKey(key) ? changed.get(key) : values.apply(key),
        asked);
  }

  /** Where faults go. */
  public Faults faults() {
    return faults;
  }

  /** Where this part begins. */
  public Spot at() {
    return at;
  }

  /** Its keys from the top down, such as {@code mobs[1]}; blank for a whole document or a row. */
  public String path() {
    return path;
  }

  /** Where a key stands; the beginning of the part if it is absent. */
  public Spot at(String key) {
    Entry entry = values.apply(key);
    return entry == null ? at : entry.at();
  }

  /** The keys in the order of the file. */
  public Set<String> keys() {
    return keys;
  }

  /** Whether something stands behind a key. */
  public boolean has(String key) {
    return find(key).isPresent();
  }

  /** Whether a single value stands behind a key, rather than a part of its own. */
  public boolean isScalar(String key) {
    return find(key).orElse(null) instanceof Scalar;
  }

  /** Adds a fault about this part as a whole. */
  public void fault(String rule) {
    faults.add(at, path, rule, "");
  }

  /** Adds a fault about the value of a key, with what stands there. */
  public void fault(String key, String rule) {
    fault(key, rule, List.of());
  }

  /** The same about a name, which offers the nearest of {@code names}. */
  public void fault(String key, String rule, Collection<String> names) {
    faults.add(at(key), inner(key), rule, shown(key), names);
  }

  /** The same with the word that was probably meant; blank if none is near. */
  public void fault(String key, String rule, Supplier<String> nearest) {
    faults.add(at(key), inner(key), rule, shown(key), nearest);
  }

  /** The same with something else found than what stands there. */
  public void found(String key, String rule, String found) {
    faults.add(at(key), inner(key), rule, found);
  }

  /** What is made of this part while it is read, if all of it is sound and every key is known. */
  public <T> Optional<T> make(Supplier<T> maker) {
    return sound(
        () -> {
          try {
            return maker.get();
          } finally {
            if (!isRow) {
              finish();
            }
          }
        });
  }

  /** The same of a part that may have other keys too. */
  public <T> Optional<T> sound(Supplier<T> maker) {
    return faults.make(at, path, maker);
  }

  /** Makes a fault of every key that no reader asked for. */
  private void finish() {
    for (String key : keys) {
      if (!asked.contains(key)) {
        String rule = "must be one of the known keys" + listed(key, asked);
        faults.add(at(key), path, rule, key, asked);
      }
    }
  }

  /** A text on one line; a short one, unless it stands in a cell. */
  public String text(String key) {
    return demand(key) ? findText(key).orElse("") : "";
  }

  /** The same, if it is given. */
  public Optional<String> findText(String key) {
    Optional<String> text =
        findScalar(key, "a word or a line of text").map(scalar -> Names.tidy(scalar.text()));
    int most = isRow ? ReadLimits.CHARACTERS : ReadLimits.NAME_CHARACTERS;
    if (text.isPresent() && text.get().length() > most) {
      fault(key, "must not be longer than " + most + " characters");
      return Optional.empty();
    }
    return text;
  }

  /** A text that must be one of {@code names}, case aside. */
  public Optional<String> findName(String key, String what, Collection<String> names) {
    Optional<String> text = findText(key);
    Optional<String> name = text.flatMap(typed -> Names.find(typed, names));
    if (text.isPresent() && name.isEmpty()) {
      fault(key, "must be " + what + listed(text.get(), names), names);
    }
    return name;
  }

  /** The names themselves, where they are few and none is near. */
  private static String listed(String typed, Collection<String> names) {
    boolean helps = names.size() <= FEW_NAMES && NearestName.find(typed, names).isEmpty();
    return helps ? ": " + String.join(", ", names) : "";
  }

  /** What a word stands for, case aside; null after a fault. */
  public <T> T choice(String key, Map<String, T> words) {
    return demand(key) ? findChoice(key, words).orElse(null) : null;
  }

  /** The same, if a word is given. */
  public <T> Optional<T> findChoice(String key, Map<String, T> words) {
    Optional<String> text = findText(key);
    Optional<T> meant =
        text.flatMap(typed -> Names.find(typed, words.keySet())).map(word -> words.get(word));
    if (text.isPresent() && meant.isEmpty()) {
      List<String> sorted = words.keySet().stream().sorted().toList();
      fault(key, "must be one of: " + String.join(", ", sorted), sorted);
    }
    return meant;
  }

  /** The words of an enumeration, by what they stand for. */
  public static <T> Map<String, T> words(T[] values, Function<T, String> label) {
    return Arrays.stream(values).collect(Collectors.toMap(label, Function.identity()));
  }

  /** {@code yes} or {@code no}; false after a fault. */
  public boolean yes(String key) {
    return demand(key) && findYesNo(key).orElse(false);
  }

  /** The same, if it is given. */
  public Optional<Boolean> findYesNo(String key) {
    return findChoice(key, YES_NO);
  }

  /** A number from {@code least} to {@code most}; NaN after a fault. */
  public double number(String key, double least, double most) {
    return demand(key) ? findNumber(key, least, most).orElse(Double.NaN) : Double.NaN;
  }

  /** The same, if it is given. */
  public OptionalDouble findNumber(String key, double least, double most) {
    return findScalar(key, "one number").stream()
        .flatMapToDouble(scalar -> number(scalar, inner(key), least, most).stream())
        .findFirst();
  }

  /** A whole number from {@code least} to {@code most}; {@code least} after a fault. */
  public int whole(String key, int least, int most) {
    return demand(key) ? findWhole(key, least, most).orElse(least) : least;
  }

  /** The same, if it is given. */
  public OptionalInt findWhole(String key, int least, int most) {
    OptionalDouble number = findNumber(key, least, most);
    if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
      fault(key, "must be a whole number");
      return OptionalInt.empty();
    }
    return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
  }

  /** One number, or {@code [low, likely, high]}, each from {@code least} to {@code most}. */
  public Optional<Range> findRange(String key, double least, double most) {
    if (!(find(key).orElse(null) instanceof Items)) {
      return findExact(key, least, most);
    }
    List<Double> three = numbers(key, least, most);
    if (three.isEmpty()) {
      return Optional.empty();
    }
    if (three.size() != 3 || three.get(0) > three.get(1) || three.get(1) > three.get(2)) {
      found(key, "must be one number or three rising ones: [low, likely, high]", shown(three));
      return Optional.empty();
    }
    return Optional.of(Range.of(three.get(0), three.get(1), three.get(2)));
  }

  /** One number, as a range without doubt. */
  public Optional<Range> findExact(String key, double least, double most) {
    return findNumber(key, least, most).stream().mapToObj(Range::exactly).findFirst();
  }

  /** Low, likely and high from three columns, in rising order; empty after a fault. */
  public Optional<Range> range(String low, String likely, String high, double least, double most) {
    List<Double> three =
        Stream.of(low, likely, high).map(column -> number(column, least, most)).toList();
    if (three.contains(Double.NaN)) {
      return Optional.empty();
    }
    if (three.get(0) > three.get(1) || three.get(1) > three.get(2)) {
      String found = Stream.of(low, likely, high).map(this::text).toList().toString();
      found(likely, low + ", " + likely + " and " + high + " must be in rising order", found);
      return Optional.empty();
    }
    return Optional.of(Range.of(three.get(0), three.get(1), three.get(2)));
  }

  /** The same, but nothing without a fault if all three cells are blank. */
  public Optional<Range> findRange(
      String low, String likely, String high, double least, double most) {
    return Stream.of(low, likely, high).map(this::has).toList().contains(true)
        ? range(low, likely, high, least, most)
        : Optional.empty();
  }

  /** A list of numbers; empty if the key is absent or one of them is at fault. */
  public List<Double> numbers(String key, double least, double most) {
    List<Double> numbers = new ArrayList<>();
    List<Node> items = filled(key, "a list of numbers: [1, 2, 3]");
    for (int i = 0; i < items.size(); i++) {
      String place = inner(key) + "[" + (i + 1) + "]";
      if (items.get(i) instanceof Scalar scalar) {
        number(scalar, place, least, most).ifPresent(numbers::add);
      } else {
        faults.add(items.get(i).at(), place, "must be a number", "");
      }
    }
    return numbers.size() == items.size() ? numbers : List.of();
  }

  /** The words of a list, or of a cell with semicolons between them, each with its place. */
  public List<Scalar> words(String key) {
    if (isRow) {
      return find(key).map(Scalar.class::cast).stream()
          .flatMap(cell -> Arrays.stream(cell.text().split(";")).map(String::strip))
          .filter(word -> !word.isEmpty())
          .map(word -> new Scalar(at(key), word, Form.CELL))
          .toList();
    }
    List<Scalar> words = new ArrayList<>();
    for (Node item : filled(key, "a list: [one, two]")) {
      if (item instanceof Scalar scalar && !scalar.isEmpty()) {
        words.add(scalar);
      } else {
        faults.add(item.at(), inner(key), "must be a list of words", "");
      }
    }
    return words;
  }

  /** Months by name, in the order of the calendar; empty if there are none. */
  public List<Month> months(String key) {
    return words(key).stream()
        .flatMap(word -> month(word, inner(key)).stream())
        .distinct()
        .sorted()
        .toList();
  }

  /** One month by name, if it is given. */
  public Optional<Month> findMonth(String key) {
    return findScalar(key, "a month").flatMap(word -> month(word, inner(key)));
  }

  private Optional<Month> month(Scalar word, String column) {
    Optional<Month> month = CalendarText.findMonth(word.text());
    if (month.isEmpty()) {
      String rule = "must be a month such as June";
      faults.add(word.at(), column, rule, word.text(), CalendarText.monthNames());
    }
    return month;
  }

  /** A part of its own below a key; one without keys if the key is absent. */
  public Fields section(String key) {
    Node node = find(key).orElse(null);
    if (node != null && !(node instanceof Entries)) {
      fault(key, "must have its own keys below it, each on a line and indented");
    }
    Map<String, Entry> below = node instanceof Entries part ? part.entries() : Map.of();
    return new Fields(new Entries(at(key), below), inner(key), faults);
  }

  /** The parts of a list below a key, each {@code such as} an example. */
  public List<Fields> sections(String key, String suchAs) {
    List<Fields> sections = new ArrayList<>();
    List<Node> items = items(key, "a list, each item such as " + suchAs);
    for (int i = 0; i < items.size(); i++) {
      String place = inner(key) + "[" + (i + 1) + "]";
      if (items.get(i) instanceof Entries below) {
        sections.add(new Fields(below, place, faults));
      } else {
        faults.add(items.get(i).at(), place, "must have keys, such as " + suchAs, "");
      }
    }
    return sections;
  }

  /** What stands behind a key, of whatever kind. */
  public Optional<Node> find(String key) {
    asked.add(key);
    Entry entry = values.apply(key);
    return entry == null || entry.value() instanceof Scalar scalar && scalar.isEmpty()
        ? Optional.empty()
        : Optional.of(entry.value());
  }

  private boolean demand(String key) {
    boolean given = has(key);
    if (!given && isRow && !keys.contains(key)) {
      faults.add(new Spot(at.file(), 0), key, "must be a column of this table", "");
    } else if (!given) {
      fault(key, "must be given");
    }
    return given;
  }

  private Optional<Scalar> findScalar(String key, String what) {
    Optional<Node> node = find(key);
    if (node.isPresent() && !(node.get() instanceof Scalar)) {
      fault(key, "must be " + what);
      return Optional.empty();
    }
    return node.map(Scalar.class::cast);
  }

  private List<Node> items(String key, String what) {
    Optional<Node> node = find(key);
    if (node.isPresent() && !(node.get() instanceof Items)) {
      fault(key, "must be " + what);
    }
    return node.orElse(null) instanceof Items items ? items.items() : List.of();
  }

  private List<Node> filled(String key, String what) {
    List<Node> items = items(key, what);
    if (items.isEmpty() && find(key).orElse(null) instanceof Items) {
      found(key, "must not be an empty list", "");
    }
    return items;
  }

  private OptionalDouble number(Scalar scalar, String column, double least, double most) {
    boolean isCell = scalar.form() == Form.CELL;
    OptionalDouble number =
        isCell ? NumberText.findInCell(scalar.text()) : NumberText.find(scalar.text());
    String rule = "";
    if (isCell && NumberText.isAmbiguous(scalar.text())) {
      rule = "must be a number that can be read one way only, without thousands";
    } else if (number.isEmpty()) {
      rule = isCell ? "must be a number" : "must be a number such as 1250 or 0.5";
    } else if (scalar.form() == Form.QUOTED) {
      rule = "must be a number without quotation marks";
    } else if (number.getAsDouble() < least || number.getAsDouble() > most) {
      rule = "must be from " + NumberText.plain(least) + " to " + NumberText.plain(most);
    }
    if (rule.isEmpty()) {
      return number;
    }
    faults.add(scalar.at(), column, rule, scalar.text());
    return OptionalDouble.empty();
  }

  private String inner(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private String shown(String key) {
    Node node = find(key).orElse(null);
    if (node == null || node instanceof Scalar) {
      return node == null ? "" : ((Scalar) node).text();
    }
    return node instanceof Items ? "a list" : "keys of its own";
  }

  /** Per cent as fractions: 30 becomes 0.3. */
  public static Range fractions(Range percent) {
    return Range.of(percent.low() / 100, percent.likely() / 100, percent.high() / 100);
  }

  /** Numbers as they would stand in the file: {@code [1, 2.5, 3]}. */
  private static String shown(List<Double> numbers) {
    return numbers.stream().map(NumberText::plain).collect(Collectors.joining(", ", "[", "]"));
  }
}
