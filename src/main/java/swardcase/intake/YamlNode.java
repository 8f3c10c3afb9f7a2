package swardcase.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A part of a YAML file, with the line it starts on. */
sealed interface YamlNode {

  /** Line number from 1. */
  int line();

  /**
   * A single value as it stands in the file.
   *
   * @param quoted whether it stood in quotation marks or in a block, and so is text and no number
   */
  record Scalar(int line, String text, boolean quoted) implements YamlNode {

    /** Whether nothing stands there. */
    boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }
  }

  /** Values one after the other. */
  record Items(int line, List<YamlNode> items) implements YamlNode {}

  /** Values by key, in the order of the file. */
  record Entries(int line, Map<String, Entry> entries) implements YamlNode {

    /** Nothing at all, as if the key had been left out. */
    static Entries none(int line) {
      return new Entries(line, new LinkedHashMap<>());
    }
  }

  /** A value and the line of its key. */
  record Entry(int line, YamlNode value) {}
}
