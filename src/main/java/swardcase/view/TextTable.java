package swardcase.view;

import java.util.ArrayList;
import java.util.List;

/** A table of plain text: columns as wide as their widest cell, two spaces between them. */
public final class TextTable {

  private final List<Boolean> right;
  private final List<List<String>> rows = new ArrayList<>();

  private TextTable(List<Boolean> right) {
    this.right = right;
  }

  /**
   * A table with this head; a heading that starts with {@code >} makes a column whose cells stand
   * at its right.
   */
  public static TextTable of(String... headings) {
    List<Boolean> right = new ArrayList<>();
    List<String> head = new ArrayList<>();
    for (String heading : headings) {
      right.add(heading.startsWith(">"));
      head.add(heading.startsWith(">") ? heading.substring(1) : heading);
    }
    TextTable table = new TextTable(right);
    table.rows.add(head);
    return table;
  }

  /** Adds a row with a cell for every column. */
  public void row(String... cells) {
    rows.add(List.of(cells));
  }

  /** The table as lines, a rule below its head. */
  public List<String> lines() {
    int[] width = new int[right.size()];
    for (List<String> row : rows) {
      for (int c = 0; c < width.length; c++) {
        width[c] = Math.max(width[c], length(row.get(c)));
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < width.length; c++) {
        String pad = " ".repeat(width[c] - length(row.get(c)));
        line.append(c > 0 ? "  " : "");
        line.append(right.get(c) ? pad + row.get(c) : row.get(c) + pad);
      }
      lines.add(line.toString().stripTrailing());
      if (lines.size() == 1) {
        int total = 2 * (width.length - 1);
        for (int w : width) {
          total += w;
        }
        lines.add("-".repeat(total));
      }
    }
    return lines;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
