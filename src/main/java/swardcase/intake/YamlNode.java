package swardcase.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A part of a YAML file, with the place where it starts. */
sealed interface YamlNode {

  /** Where it starts. */
  Spot at();

  /**
   * A line of a file.
   *
   * @param file name of the file as printed in faults
   * @param line line number from 1, or 0 for the file as a whole
   */
  record Spot(String file, int line) {}

  /**
   * A single value as it stands in the file.
   *
   * @param quoted whether it stood in quotation marks or in a block, and so is text and no number
   */
  record Scalar(Spot at, String text, boolean quoted) implements YamlNode {

    /** Whether nothing stands there. */
    boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }
  }

  /** Values one after the other. */
  record Items(Spot at, List<YamlNode> items) implements YamlNode {}

  /** Values by key, in the order of the file. */
  record Entries(Spot at, Map<String, Entry> entries) implements YamlNode {

    /** Nothing at all, as if the key had been left out. */
    static Entries none(Spot at) {
      return new Entries(at, new LinkedHashMap<>());
    }
  }

  /** A value and the place of its key. */
  record Entry(Spot at, YamlNode value) {}
}
