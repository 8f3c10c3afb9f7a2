package swardcase.reading;

import java.util.List;
import java.util.Map;

/** A part of a file, with the place where it starts. */
public sealed interface Node {

  /** Where it starts. */
  Spot at();

  /**
   * A line of a file.
   *
   * @param file name of the file as printed in faults
   * @param line line number from 1, or 0 for the file as a whole
   */
  record Spot(String file, int line) {}

  /** How a single value stands in its file. */
  enum Form {
    /** Without quotation marks in YAML or JSON: a number must be written in one plain way. */
    PLAIN,
    /** In quotation marks or in a block, and so a text and no number. */
    QUOTED,
    /** In a cell of a table, as a spreadsheet writes it: a number may have a decimal comma. */
    CELL
  }

  /** A single value as it stands in the file. */
  record Scalar(Spot at, String text, Form form) implements Node {

    /** Whether nothing stands there. */
    public boolean isEmpty() {
      return form == Form.PLAIN && (text.equals("~") || text.equals("null"))
          || form != Form.QUOTED && text.isEmpty();
    }
  }

  /** Values one after the other. */
  record Items(Spot at, List<Node> items) implements Node {}

  /** Values by key, in the order of the file. */
  record Entries(Spot at, Map<String, Entry> entries) implements Node {}

  /** A value and the place of its key. */
  record Entry(Spot at, Node value) {}
}
