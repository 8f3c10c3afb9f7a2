package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Items;
import swardcase.intake.YamlNode.Scalar;

/**
 * Lays changes over a YAML document. Keys below keys are changed one by one; list items with a
 * {@code name}, such as mobs, are found by it, and a new name is added; {@code -20 %} changes the
 * number or the numbers that stand there; everything else takes the place of what was there. Each
 * value keeps the place it was read from, so that its faults are found in the right file.
 */
final class Overlay {

  private static final String NAME = "name";

  /** What may stand as its name alone, without keys below it. */
  private static final String BY_NAME = "supplement";

  private final FaultList faults;

  Overlay(FaultList faults) {
    this.faults = faults;
  }

  /** The entries below with those above laid over them. */
  Entries over(Entries below, Entries above) {
    return over(below, above, "");
  }

  private Entries over(Entries below, Entries above, String path) {
    Map<String, Entry> entries = new LinkedHashMap<>(below.entries());
    above
        .entries()
        .forEach(
            (key, entry) -> {
              Optional<YamlNode> was = Optional.ofNullable(entries.get(key)).map(Entry::value);
              String inner = path.isEmpty() ? key : path + "." + key;
              entries.put(key, new Entry(entry.at(), over(was, entry.value(), inner)));
            });
    return new Entries(below.at(), entries);
  }

  private YamlNode over(Optional<YamlNode> below, YamlNode above, String path) {
    YamlNode was = below.orElse(null);
    if (above instanceof Scalar scalar && !scalar.quoted()) {
      Optional<PerCent> change = PerCent.find(scalar.text());
      return change.isPresent() ? changed(below, scalar, change.get(), path) : scalar;
    }
    if (above instanceof Entries entries && was instanceof Entries old) {
      return over(old, entries, path);
    }
    if (above instanceof Entries entries && was instanceof Scalar name && path.equals(BY_NAME)) {
      Map<String, Entry> alone = Map.of(NAME, new Entry(name.at(), name));
      return over(new Entries(name.at(), alone), entries, path);
    }
    if (above instanceof Items items && was instanceof Items old && named(items) && named(old)) {
      return byName(old, items, path);
    }
    return above;
  }

  private YamlNode changed(Optional<YamlNode> below, Scalar above, PerCent change, String path) {
    List<YamlNode> numbers =
        below.orElse(null) instanceof Items items ? items.items() : below.stream().toList();
    List<YamlNode> changed = new ArrayList<>();
    for (YamlNode number : numbers) {
      if (number instanceof Scalar scalar && !scalar.quoted()) {
        change
            .of(scalar.text())
            .ifPresent(text -> changed.add(new Scalar(above.at(), text, false)));
      }
    }
    if (changed.isEmpty() || changed.size() < numbers.size()) {
      faults.add(
          new Place(above.at(), path),
          "must be the value itself: the farm gives no number here to be changed by per cent",
          above.text());
      return new Scalar(above.at(), "", false);
    }
    return below.orElseThrow() instanceof Items
        ? new Items(above.at(), List.copyOf(changed))
        : changed.get(0);
  }

  private YamlNode byName(Items below, Items above, String path) {
    List<YamlNode> items = new ArrayList<>(below.items());
    for (YamlNode item : above.items()) {
      int at = 0;
      while (at < items.size() && !name(items.get(at)).equals(name(item))) {
        at++;
      }
      if (at == items.size()) {
        items.add(item);
      } else {
        String inner = path + "[" + (at + 1) + "]";
        items.set(at, over((Entries) items.get(at), (Entries) item, inner));
      }
    }
    return new Items(above.at(), List.copyOf(items));
  }

  private static boolean named(Items items) {
    return items.items().stream().noneMatch(item -> name(item).isEmpty());
  }

  private static String name(YamlNode item) {
    return Stream.of(item)
        .filter(Entries.class::isInstance)
        .map(node -> ((Entries) node).entries().get(NAME))
        .filter(entry -> entry != null && entry.value() instanceof Scalar)
        .map(entry -> Names.key(((Scalar) entry.value()).text()))
        .findFirst()
        .orElse("");
  }
}
