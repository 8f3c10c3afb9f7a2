package swardcase.reading;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * The text of {@code farm.yaml} with other values in it. Whatever else stands there, comments among
 * it, stays as it is, letter by letter. The text must be one that the reader of farms accepts.
 */
public final class YamlEdit {

  private static final String NAME = "name";

  private String text;

  /** A text to be changed. */
  public YamlEdit(String text) {
    this.text = text;
  }

  /** The text as it is now. */
  public String text() {
    return text;
  }

  /**
   * The text of a value as it stands there, if it does.
   *
   * @param path keys from the top down; in a list the name of the item
   */
  public Optional<String> find(List<String> path) {
    return node(path)
        .map(
            value ->
                value instanceof ScalarNode scalar
                    ? scalar.getValue()
                    : text.substring(start(value), end(value)).strip());
  }

  /**
   * Sets a value, where there is one; else adds the key below the one above it, or at the end.
   *
   * @param path as for {@link #find}; the item of a list must be there
   * @param value the YAML of it, on one line
   */
  public void set(List<String> path, String value) {
    Optional<Node> here = node(path);
    if (here.isPresent()) {
      text = text.substring(0, start(here.get())) + value + text.substring(end(here.get()));
      return;
    }
    String key = path.get(path.size() - 1);
    Optional<Node> above =
        path.size() == 1 ? Optional.of(top()) : node(path.subList(0, path.size() - 1));
    if (above.isEmpty() || path.size() == 1) {
      String line = key + ": " + value + "\n";
      text += text.isEmpty() || text.endsWith("\n") ? "" : "\n";
      text += path.size() == 1 ? line : path.get(0) + ":\n  " + line;
    } else if (above.get() instanceof MappingNode below && !below.getValue().isEmpty()) {
      add(below, key + ": " + value);
    } else if (above.get() instanceof ScalarNode alone) {
      String name = alone.getValue().isBlank() ? "" : "\n  " + NAME + ": " + alone.getValue();
      String under = name + "\n  " + key + ": " + value;
      text = text.substring(0, start(alone)) + under + text.substring(end(alone));
    }
  }

  /** Adds a line behind the last of a section. */
  private void add(MappingNode section, String line) {
    NodeTuple last = section.getValue().get(section.getValue().size() - 1);
    int end = end(last.getValueNode());
    if (section.getFlowStyle() == FlowStyle.FLOW) {
      text = text.substring(0, end) + ", " + line + text.substring(end);
      return;
    }
    String indent = " ".repeat(last.getKeyNode().getStartMark().getColumn());
    int newline = text.indexOf('\n', Math.max(0, end - 1));
    int at = newline < 0 ? text.length() : newline;
    text = text.substring(0, at) + "\n" + indent + line + text.substring(at);
  }

  private MappingNode top() {
    Node top = new Yaml(new LoaderOptions()).compose(new StringReader(text));
    return top instanceof MappingNode mapping
        ? mapping
        : new MappingNode(Tag.MAP, List.of(), FlowStyle.BLOCK);
  }

  private Optional<Node> node(List<String> path) {
    Optional<Node> at = Optional.of(top());
    for (String key : path) {
      at = at.flatMap(node -> below(node, key));
    }
    return at;
  }

  private static Optional<Node> below(Node node, String key) {
    List<Node> found = new ArrayList<>();
    if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        if (tuple.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key)) {
          found.add(tuple.getValueNode());
        }
      }
    } else if (node instanceof SequenceNode items) {
      for (Node item : items.getValue()) {
        boolean named =
            below(item, NAME)
                .filter(ScalarNode.class::isInstance)
                .map(name -> Names.tidy(((ScalarNode) name).getValue()).equals(key))
                .orElse(false);
        if (named) {
          found.add(item);
        }
      }
    }
    return found.stream().findFirst();
  }

  /** Marks count code points. */
  private int start(Node node) {
    return text.offsetByCodePoints(0, node.getStartMark().getIndex());
  }

  private int end(Node node) {
    return text.offsetByCodePoints(0, node.getEndMark().getIndex());
  }
}
