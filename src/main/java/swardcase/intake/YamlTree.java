package swardcase.intake;

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
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;
import swardcase.intake.YamlNode.Items;
import swardcase.intake.YamlNode.Scalar;

/**
 * Reads YAML text into nodes that keep their line and their text as written.
 *
 * <p>No value is converted here, so nothing is converted silently. One document is accepted,
 * without anchors, aliases and types, and with each key once.
 */
final class YamlTree {

  private static final int DEEPEST = 12;

  private final String file;
  private final FaultList faults;
  private final Iterator<Event> events;

  /** Ends the reading of a file that is nested beyond all sense. */
  private static final class TooDeepException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int line;

    TooDeepException(int line) {
      this.line = line;
    }
  }

  private YamlTree(String file, Iterator<Event> events, FaultList faults) {
    this.file = file;
    this.events = events;
    this.faults = faults;
  }

  /** The entries at the top of the file, or empty and a fault. */
  static Optional<Entries> find(String file, String text, FaultList faults) {
    try {
      Yaml yaml = new Yaml(new LoaderOptions());
      return new YamlTree(file, yaml.parse(new StringReader(text)).iterator(), faults).top();
    } catch (MarkedYAMLException broken) {
      int line = broken.getProblemMark() == null ? 0 : broken.getProblemMark().getLine() + 1;
      String problem = broken.getProblem() == null ? "" : broken.getProblem();
      faults.add(place(file, line, ""), "must be YAML that can be read: " + problem, "");
    } catch (TooDeepException deep) {
      faults.add(place(file, deep.line, ""), "must not have lists in lists in lists", "");
    } catch (YAMLException broken) {
      faults.add(
          place(file, 0, ""), "must be plain text without control characters or odd signs", "");
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
      int line = line(event);
      if (seen) {
        faults.add(place(file, line, ""), "must hold one document: remove this '---'", "");
        return Optional.empty();
      }
      seen = true;
      YamlNode node = node(event, "", 0);
      if (node instanceof Entries entries) {
        top = Optional.of(entries);
      } else {
        faults.add(place(file, line, ""), "must hold lines such as 'name: My farm'", "");
      }
    }
    if (!seen) {
      faults.add(place(file, 0, ""), "must not be empty", "");
    }
    return top;
  }

  private YamlNode node(Event event, String path, int depth) {
    int line = line(event);
    if (depth > DEEPEST) {
      throw new TooDeepException(line);
    }
    if (event instanceof AliasEvent || ((NodeEvent) event).getAnchor() != null) {
      faults.add(place(file, line, path), "must be written out: no '&' and no '*' names", "");
    }
    return switch (event.getEventId()) {
      case Scalar -> scalar((ScalarEvent) event, path);
      case SequenceStart -> items(line, path, depth);
      case MappingStart -> entries(line, path, depth);
      default -> new Scalar(line, "", false);
    };
  }

  private Scalar scalar(ScalarEvent event, String path) {
    if (event.getTag() != null) {
      faults.add(place(file, line(event), path), "must not have a type", event.getTag());
    }
    return new Scalar(line(event), event.getValue().strip(), !event.isPlain());
  }

  private Items items(int line, String path, int depth) {
    List<YamlNode> items = new ArrayList<>();
    for (Event next = events.next(); !next.is(Event.ID.SequenceEnd); next = events.next()) {
      items.add(node(next, path + "[" + (items.size() + 1) + "]", depth + 1));
    }
    return new Items(line, List.copyOf(items));
  }

  private Entries entries(int line, String path, int depth) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (Event next = events.next(); !next.is(Event.ID.MappingEnd); next = events.next()) {
      int keyLine = line(next);
      YamlNode key = node(next, path, depth + 1);
      String name = key instanceof Scalar scalar ? scalar.text() : "";
      String inner = path.isEmpty() ? name : path + "." + name;
      YamlNode value = node(events.next(), inner, depth + 1);
      if (name.isEmpty()) {
        faults.add(place(file, keyLine, path), "must have a word before the colon", "");
      } else if (entries.putIfAbsent(name, new Entry(keyLine, value)) != null) {
        faults.add(place(file, keyLine, inner), "must be given once", name);
      }
    }
    return new Entries(line, entries);
  }

  private static int line(Event event) {
    return event.getStartMark().getLine() + 1;
  }

  private static Place place(String file, int line, String column) {
    return new Place(file, line, column);
  }
}
