package swardcase.tables;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
   * @param cells the other cells by their columns, in order
   */
  public record Row(String title, boolean ofUser, Map<String, String> cells) {

    /** Copies the cells. */
    public Row {
      cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }
  }
}
