package swardcase.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A table of plain text: columns as wide as their widest cell, two spaces between them. Where that
 * is wider than the page, cells are broken between words into several lines, in the columns where
 * it makes the table longer by least.
 */
public final class TextTable {

  /** Blanks between two columns: usual, and where there is no room for that. */
  private static final int GAP = 2;

  private static final int NARROW_GAP = 1;

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

  /**
   * The table as lines, a rule below its head.
   *
   * @param width signs a line may have; a table of many columns may need more
   */
  public List<String> lines(int width) {
    int[] columns = columns(width, GAP);
    int gap = GAP;
    if (total(columns, GAP) > width) {
      columns = columns(width, NARROW_GAP);
      gap = NARROW_GAP;
    }
    return lines(columns, " ".repeat(gap));
  }

  private List<String> lines(int[] columns, String gap) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      List<List<String>> cells =
          IntStream.range(0, columns.length).mapToObj(c -> broken(row.get(c), columns[c])).toList();
      int height = cells.stream().mapToInt(List::size).max().orElse(0);
      for (int k = 0; k < height; k++) {
        lines.add(line(cells, k, columns, gap));
      }
      if (row == rows.get(0)) {
        lines.add("-".repeat(total(columns, gap.length())));
      }
    }
    return lines;
  }

  private String line(List<List<String>> cells, int k, int[] columns, String gap) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < columns.length; c++) {
      String text = k < cells.get(c).size() ? cells.get(c).get(k) : "";
      String pad = " ".repeat(columns[c] - TextLines.length(text));
      line.append(c > 0 ? gap : "").append(right.get(c) ? pad + text : text + pad);
    }
    return line.toString().stripTrailing();
  }

  /** Widths of the columns: each sign too many is taken where it adds fewest lines. */
  private int[] columns(int width, int gap) {
    int[] columns = new int[right.size()];
    int[] least = new int[columns.length];
    int[][] heights = new int[columns.length][rows.size()];
    for (int c = 0; c < columns.length; c++) {
      for (List<String> row : rows) {
        columns[c] = Math.max(columns[c], TextLines.length(row.get(c)));
        for (String piece : broken(row.get(c), 1)) {
          least[c] = Math.max(least[c], TextLines.length(piece));
        }
      }
      Arrays.fill(heights[c], 1);
    }
    while (total(columns, gap) > width) {
      Optional<Integer> best =
          IntStream.range(0, columns.length)
              .filter(c -> columns[c] > least[c])
              .boxed()
              .min(
                  Comparator.comparingInt(
                          (Integer c) -> height(heights, c, heights(c, columns[c] - 1)))
                      .thenComparingInt(c -> -columns[c]));
      if (best.isEmpty()) {
        return columns;
      }
      columns[best.get()]--;
      heights[best.get()] = heights(best.get(), columns[best.get()]);
    }
    return columns;
  }

  /** Lines of each cell of a column of a width. */
  private int[] heights(int column, int width) {
    return rows.stream().mapToInt(row -> broken(row.get(column), width).size()).toArray();
  }

  /** Lines of the whole table if the cells of one column had so many. */
  private static int height(int[][] heights, int column, int[] instead) {
    return IntStream.range(0, instead.length)
        .map(
            row ->
                IntStream.range(0, heights.length)
                    .map(c -> c == column ? instead[row] : heights[c][row])
                    .max()
                    .orElse(0))
        .sum();
  }

  /** Signs of its lines where no cell is broken. */
  int width() {
    return total(columns(Integer.MAX_VALUE, GAP), GAP);
  }

  private static int total(int[] columns, int gap) {
    return IntStream.of(columns).sum() + gap * (columns.length - 1);
  }

  /** A cell in lines no longer than a width where its words are not; set in as the cell is. */
  private static List<String> broken(String cell, int width) {
    String text = cell.stripLeading();
    String indent = cell.substring(0, cell.length() - text.length());
    return TextLines.length(cell) <= width
        ? List.of(cell)
        : TextLines.broken(text, width, indent, indent);
  }
}
