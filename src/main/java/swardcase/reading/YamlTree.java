package swardcase.reading;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Form;
import swardcase.reading.Node.Items;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Node.Spot;

/**
 * Reads YAML text into nodes that keep their line and their text as written.
 *
 * <p>No value is converted here, so nothing is converted silently. One document is accepted,
 * without anchors, aliases and types, and with each key once.
 */
public final class YamlTree {

  private final String file;
  private final Faults faults;
  private final Iterator<Event> events;

  private YamlTree(String file, Iterator<Event> events, Faults faults) {
    this.file = file;
    this.events = events;
    this.faults = faults;
  }

  /** The entries at the top of the file, or empty and a fault. */
  public static Optional<Entries> find(String file, String text, Faults faults) {
    try {
      Yaml yaml = new Yaml(new LoaderOptions());
      return new YamlTree(file, yaml.parse(new StringReader(text)).iterator(), faults).top();
    } catch (MarkedYAMLException broken) {
      int line = broken.getProblemMark() == null ? 0 : broken.getProblemMark().getLine() + 1;
      String problem = broken.getProblem() == null ? "" : broken.getProblem();
      faults.add(new Spot(file, line), "", "must be YAML that can be read: " + problem, "");
    } catch (TooMuchException beyond) {
      beyond.addTo(faults);
    } catch (YAMLException broken) {
      faults.add(file, "must be plain text without control characters or odd signs");
    }
    return Optional.empty();
  }

  private Optional<Entries> top() {
    Optional<Entries> top = Optional.empty();
    boolean seen = false;
    while (events.hasNext()) {
      Event event = events.next();
      if (!(event instanceof NodeEvent)) {
        continue;
      }
      Spot at = at(event);
      if (seen) {
        faults.add(at, "", "must hold one document: remove this '---'", "");
        return Optional.empty();
      }
      seen = true;
      Node node = node(event, "", 0);
      if (node instanceof Entries entries) {
        top = Optional.of(entries);
      } else {
        faults.add(at, "", "must hold lines such as 'name: My farm'", "");
      }
    }
    if (!seen) {
      faults.add(file, "must not be empty");
    }
    return top;
  }

  private Node node(Event event, String path, int depth) {
    Spot at = at(event);
    refuse(depth > ReadLimits.NESTED_KEYS, at, "", "must not have lists in lists in lists");
    if (event instanceof AliasEvent || ((NodeEvent) event).getAnchor() != null) {
      faults.add(at, path, "must be written out: no '&' and no '*' names", "");
    }
    return switch (event.getEventId()) {
      case Scalar -> scalar((ScalarEvent) event, path);
      case SequenceStart -> items(at, path, depth);
      case MappingStart -> entries(at, path, depth);
      default -> new Scalar(at, "", Form.PLAIN);
    };
  }

  private Scalar scalar(ScalarEvent event, String path) {
    if (event.getTag() != null) {
      faults.add(at(event), path, "must not have a type", event.getTag());
    }
    String text = event.getValue().strip();
    refuse(text.length() > ReadLimits.CHARACTERS, at(event), path, longer(ReadLimits.CHARACTERS));
    return new Scalar(at(event), text, event.isPlain() ? Form.PLAIN : Form.QUOTED);
  }

  private static String longer(int most) {
    return "must not be longer than " + most + " characters";
  }

  private static void refuse(boolean beyond, Spot at, String path, String rule) {
    TooMuchException.refuse(beyond, at, path, rule);
  }

  private Items items(Spot at, String path, int depth) {
    List<Node> items = new ArrayList<>();
    for (Event next = events.next(); !next.is(Event.ID.SequenceEnd); next = events.next()) {
      boolean full = items.size() == ReadLimits.ITEMS;
      refuse(full, at(next), path, "must not have more than " + ReadLimits.ITEMS + " items");
      items.add(node(next, path + "[" + (items.size() + 1) + "]", depth + 1));
    }
    return new Items(at, List.copyOf(items));
  }

  private Entries entries(Spot at, String path, int depth) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (Event next = events.next(); !next.is(Event.ID.MappingEnd); next = events.next()) {
      Spot keyAt = at(next);
      Node key = node(next, path, depth + 1);
      String name = key instanceof Scalar scalar ? scalar.text() : "";
      boolean full = entries.size() == ReadLimits.KEYS;
      refuse(full, keyAt, path, "must not have more than " + ReadLimits.KEYS + " keys below it");
      boolean longer = name.length() > ReadLimits.NAME_CHARACTERS;
      refuse(longer, keyAt, path, longer(ReadLimits.NAME_CHARACTERS));
      String inner = path.isEmpty() ? name : path + "." + name;
      Node value = node(events.next(), inner, depth + 1);
      if (name.isEmpty()) {
        faults.add(keyAt, path, "must have a word before the colon", "");
      } else if (entries.putIfAbsent(name, new Entry(keyAt, value)) != null) {
        faults.add(keyAt, inner, "must be given once", name);
      }
    }
    return new Entries(at, entries);
  }

  private Spot at(Event event) {
    return new Spot(file, event.getStartMark().getLine() + 1);
  }
}
