package swardcase.view;

import java.util.ArrayList;
import java.util.List;

/** Lines for a terminal of so many columns: text broken between its words, tables, blank lines. */
final class TerminalLines {

  /** Longer lines of prose are hard to read. */
  private static final int MOST_WIDTH = 100;

  private final int width;
  private final List<String> lines = new ArrayList<>();

  TerminalLines(int width) {
    this.width = width;
  }

  /** A heading, which stays one line. */
  TerminalLines heading(String heading) {
    lines.add(heading);
    return this;
  }

  /** Text; its later lines are set in. */
  TerminalLines text(String text) {
    lines.addAll(TextLines.broken(text, Math.min(width, MOST_WIDTH), "", "  "));
    return this;
  }

  /** Texts with a sign before each. */
  TerminalLines each(String sign, List<String> texts) {
    texts.forEach(text -> text(sign + text));
    return this;
  }

  TerminalLines table(TextTable table) {
    lines.addAll(table.lines(width));
    return this;
  }

  TerminalLines blank() {
    lines.add("");
    return this;
  }

  List<String> all() {
    return lines;
  }
}
