package swardcase.tables;

import java.util.List;

/**
 * A reference table as it is written, for a person to read.
 *
 * @param name such as {@code cultivars}
 * @param rows in the order of the file, a user's rows in the place of those they replace
 * @param sources those that a row names, by key
 */
public record TableListing(String name, List<Row> rows, List<Source> sources) {

  /** Copies the lists. */
  public TableListing {
    rows = List.copyOf(rows);
    sources = List.copyOf(sources);
  }

  /**
   * A row; blank cells are left out.
   *
   * @param title its key
   * @param ofUser whether it stands in a table of the user's
   * @param cells the other cells
   */
  public record Row(String title, boolean ofUser, List<Cell> cells) {

    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A cell.
   *
   * @param heading its column
   * @param text what stands in it
   */
  public record Cell(String heading, String text) {}
}
