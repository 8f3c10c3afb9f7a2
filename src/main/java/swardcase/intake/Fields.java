package swardcase.intake;

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
import java.util.stream.Collectors;
import swardcase.chance.Range;
import swardcase.check.NearestName;
import swardcase.check.ReadLimits;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Items;
import swardcase.intake.YamlNode.Scalar;
import swardcase.intake.YamlNode.Spot;

/**
 * The keys of one part of {@code farm.yaml}, read one by one.
 *
 * <p>A key that is absent or has nothing behind its colon gives empty. A value that cannot be used
 * becomes a fault and gives empty too. {@link #finish} makes a fault of every key nobody asked for.
 */
final class Fields {

  static final String FILE = "farm.yaml";

  /** Names beyond this number are not listed in a message. */
  private static final int FEW_NAMES = 20;

  private final Entries entries;
  private final Spot at;
  private final String path;
  private final FaultList faults;
  private final Set<String> asked = new LinkedHashSet<>();

  Fields(Entries entries, Spot at, String path, FaultList faults) {
    this.entries = entries;
    this.at = at;
    this.path = path;
    this.faults = faults;
  }

  FaultList faults() {
    return faults;
  }

  /** Where this part begins. */
  Place place() {
    return new Place(at, path);
  }

  /** Where a key stands; the beginning of the part if it is absent. */
  Place place(String key) {
    return new Place(at(key), inner(key));
  }

  /** The keys in the order of the file. */
  List<String> keys() {
    return List.copyOf(entries.entries().keySet());
  }

  boolean has(String key) {
    return find(key).isPresent();
  }

  /** Adds a fault about the value of a key. */
  void fault(String key, String rule, String found) {
    faults.add(place(key), rule, found);
  }

  /** A text that must be given; blank after a fault. */
  String text(String key) {
    if (!has(key)) {
      fault(key, "must be given", "");
    }
    return findText(key).orElse("");
  }

  Optional<String> findText(String key) {
    Optional<String> text =
        findScalar(key, "a word or a line of text").map(scalar -> Names.tidy(scalar.text()));
    if (text.isPresent() && text.get().length() > ReadLimits.NAME_CHARACTERS) {
      String rule = "must not be longer than " + ReadLimits.NAME_CHARACTERS + " characters";
      fault(key, rule, text.get());
      return Optional.empty();
    }
    return text;
  }

  /** A text that must be one of {@code names}, case aside. */
  Optional<String> findName(String key, String what, Collection<String> names) {
    Optional<String> text = findText(key);
    Optional<String> name = text.flatMap(t -> Names.find(t, names));
    if (text.isPresent() && name.isEmpty()) {
      String all = what.contains("'") ? "" : listed(text.get(), names);
      faults.add(place(key), "must be " + what + all, text.get(), names);
    }
    return name;
  }

  /** The names themselves, where they are few and none is near. */
  private static String listed(String typed, Collection<String> names) {
    boolean helps = names.size() <= FEW_NAMES && NearestName.find(typed, names).isEmpty();
    return helps ? ": " + String.join(", ", names) : "";
  }

  <T> Optional<T> findChoice(String key, T[] choices, Function<T, String> label) {
    List<String> labels = Arrays.stream(choices).map(label).toList();
    String what = labels.stream().collect(Collectors.joining("' or '", "'", "'"));
    return findName(key, what, labels).map(name -> choices[labels.indexOf(name)]);
  }

  Optional<Boolean> findYesNo(String key) {
    return findChoice(key, new Boolean[] {true, false}, yes -> yes ? "yes" : "no");
  }

  OptionalDouble findNumber(String key, double low, double high) {
    Optional<Scalar> scalar = findScalar(key, "one number");
    return scalar.isPresent()
        ? number(scalar.get(), inner(key), low, high)
        : OptionalDouble.empty();
  }

  OptionalInt findWhole(String key, int low, int high) {
    OptionalDouble number = findNumber(key, low, high);
    if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
      fault(key, "must be a whole number", findText(key).orElse(""));
      return OptionalInt.empty();
    }
    return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
  }

  /** One number, or {@code [low, likely, high]}, each of them from {@code low} to {@code high}. */
  Optional<Range> findRange(String key, double low, double high) {
    if (find(key).orElse(null) instanceof Items) {
      List<Double> three = numbers(key, low, high);
      if (three.isEmpty()) {
        return Optional.empty();
      }
      if (three.size() != 3 || three.get(0) > three.get(1) || three.get(1) > three.get(2)) {
        fault(
            key,
            "must be one number or three rising ones: [low, likely, high]",
            NumberText.shown(three));
        return Optional.empty();
      }
      return Optional.of(Range.of(three.get(0), three.get(1), three.get(2)));
    }
    OptionalDouble number = findNumber(key, low, high);
    return number.isPresent() ? Optional.of(Range.exactly(number.getAsDouble())) : Optional.empty();
  }

  /** A list of numbers; empty if the key is absent or one of them is at fault. */
  List<Double> numbers(String key, double low, double high) {
    List<Double> numbers = new ArrayList<>();
    List<YamlNode> items = filled(key, "a list of numbers: [1, 2, 3]");
    for (int i = 0; i < items.size(); i++) {
      String at = inner(key) + "[" + (i + 1) + "]";
      if (items.get(i) instanceof Scalar scalar) {
        number(scalar, at, low, high).ifPresent(numbers::add);
      } else {
        faults.add(new Place(items.get(i).at(), at), "must be a number", "");
      }
    }
    return numbers.size() == items.size() ? numbers : List.of();
  }

  /** A list of texts with their places. */
  List<Map.Entry<Place, String>> texts(String key) {
    List<Map.Entry<Place, String>> texts = new ArrayList<>();
    for (YamlNode item : filled(key, "a list: [one, two]")) {
      Place at = new Place(item.at(), inner(key));
      if (item instanceof Scalar scalar && !scalar.isEmpty()) {
        texts.add(Map.entry(at, scalar.text()));
      } else {
        faults.add(at, "must be a list of words", "");
      }
    }
    return texts;
  }

  /** A part of its own below a key; one without entries if the key is absent. */
  Fields section(String key) {
    YamlNode node = find(key).orElse(null);
    if (node != null && !(node instanceof Entries)) {
      fault(key, "must have its own keys below it, each on a line and indented", show(node));
    }
    Entries below = node instanceof Entries found ? found : Entries.none(at(key));
    return new Fields(below, at(key), inner(key), faults);
  }

  /** The parts of a list below a key, such as the mobs. */
  List<Fields> sections(String key) {
    List<Fields> sections = new ArrayList<>();
    List<YamlNode> items = items(key, "a list, each item beginning with '- '");
    for (int i = 0; i < items.size(); i++) {
      String at = inner(key) + "[" + (i + 1) + "]";
      if (items.get(i) instanceof Entries below) {
        sections.add(new Fields(below, below.at(), at, faults));
      } else {
        faults.add(new Place(items.get(i).at(), at), "must have keys such as 'name: Ewes'", "");
      }
    }
    return sections;
  }

  /** Whether a key holds a single value rather than a part of its own. */
  boolean isScalar(String key) {
    return find(key).orElse(null) instanceof Scalar;
  }

  /** Makes a fault of every key that no reader asked for. */
  void finish() {
    entries
        .entries()
        .forEach(
            (key, entry) -> {
              if (!asked.contains(key)) {
                Place at = new Place(entry.at(), path);
                faults.add(at, "must be one of the known keys" + listed(key, asked), key, asked);
              }
            });
  }

  private Spot at(String key) {
    Entry entry = entries.entries().get(key);
    return entry == null ? at : entry.at();
  }

  private Optional<YamlNode> find(String key) {
    asked.add(key);
    Entry entry = entries.entries().get(key);
    return entry == null || entry.value() instanceof Scalar scalar && scalar.isEmpty()
        ? Optional.empty()
        : Optional.of(entry.value());
  }

  private Optional<Scalar> findScalar(String key, String what) {
    Optional<YamlNode> node = find(key);
    if (node.isPresent() && !(node.get() instanceof Scalar)) {
      fault(key, "must be " + what, show(node.get()));
      return Optional.empty();
    }
    return node.map(Scalar.class::cast);
  }

  private List<YamlNode> items(String key, String what) {
    Optional<YamlNode> node = find(key);
    if (node.isPresent() && !(node.get() instanceof Items)) {
      fault(key, "must be " + what, show(node.get()));
    }
    return node.orElse(null) instanceof Items items ? items.items() : List.of();
  }

  private List<YamlNode> filled(String key, String what) {
    List<YamlNode> items = items(key, what);
    if (items.isEmpty() && find(key).orElse(null) instanceof Items) {
      fault(key, "must not be an empty list", "");
    }
    return items;
  }

  private OptionalDouble number(Scalar scalar, String column, double low, double high) {
    Place at = new Place(scalar.at(), column);
    OptionalDouble number = NumberText.find(scalar.text());
    if (scalar.quoted() && number.isPresent()) {
      faults.add(at, "must be a number without quotation marks", scalar.text());
      return OptionalDouble.empty();
    }
    if (number.isEmpty()) {
      faults.add(at, "must be a number such as 1250 or 0.5", scalar.text());
      return number;
    }
    if (!(number.getAsDouble() >= low && number.getAsDouble() <= high)) {
      faults.add(
          at,
          "must be from " + NumberText.plain(low) + " to " + NumberText.plain(high),
          scalar.text());
      return OptionalDouble.empty();
    }
    return number;
  }

  private String inner(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private static String show(YamlNode node) {
    if (node instanceof Scalar scalar) {
      return scalar.text();
    }
    return node instanceof Items ? "a list" : "keys of its own";
  }
}
