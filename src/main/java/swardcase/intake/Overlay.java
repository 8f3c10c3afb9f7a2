package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.reading.Faults;
import swardcase.reading.Names;
import swardcase.reading.Node;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Items;
import swardcase.reading.Node.Scalar;

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

  private final Faults faults;

  Overlay(Faults faults) {
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
              Optional<Node> was = Optional.ofNullable(entries.get(key)).map(Entry::value);
              String inner = path.isEmpty() ? key : path + "." + key;
              entries.put(key, new Entry(entry.at(), over(was, entry.value(), inner)));
            });
    return new Entries(below.at(), entries);
  }

  private Node over(Optional<Node> below, Node above, String path) {
    Node was = below.orElse(null);
    if (above instanceof Scalar scalar && scalar.form() == Form.PLAIN) {
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

  private Node changed(Optional<Node> below, Scalar above, PerCent change, String path) {
    List<Node> numbers =
        below.orElse(null) instanceof Items items ? items.items() : below.stream().toList();
    List<Node> changed = new ArrayList<>();
    for (Node number : numbers) {
      if (number instanceof Scalar scalar && scalar.form() == Form.PLAIN) {
        change
            .of(scalar.text())
            .ifPresent(text -> changed.add(new Scalar(above.at(), text, Form.PLAIN)));
      }
    }
    if (changed.isEmpty() || changed.size() < numbers.size()) {
      faults.add(
          above.at(),
          path,
          "must be the value itself: the farm gives no number here to be changed by per cent",
          above.text());
      return new Scalar(above.at(), "", Form.PLAIN);
    }
    return below.orElseThrow() instanceof Items
        ? new Items(above.at(), List.copyOf(changed))
        : changed.get(0);
  }

  private Node byName(Items below, Items above, String path) {
    List<Node> items = new ArrayList<>(below.items());
    for (Node item : above.items()) {
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

  private static String name(Node item) {
    Entry name = item instanceof Entries keys ? keys.entries().get(NAME) : null;
    return name != null && name.value() instanceof Scalar text ? Names.key(text.text()) : "";
  }
}
