package swardcase.check;

import java.util.Comparator;

/**
 * One thing wrong in a file the program reads.
 *
 * @param file name of the file as the user knows it, such as {@code paddocks.csv}
 * @param line line number from 1; 0 where the fault is the file's as a whole
 * @param column name of the column or the path of the entry, such as {@code mobs[1].ewes}; may be
 *     blank
 * @param rule what must hold, such as {@code must be from 0 to 100}
 * @param found what stood there; blank if nothing did
 * @param nearest the nearest valid name, or blank
 */
public record Fault(String file, int line, String column, String rule, String found, String nearest)
    implements Comparable<Fault> {

  /** Checks that nothing is null. */
  public Fault {
    Check.notBlank(file, "file of a fault");
    Check.notNull(column, "column of a fault");
    Check.notBlank(rule, "rule of a fault");
    Check.notNull(found, "found of a fault");
    Check.notNull(nearest, "nearest of a fault");
  }

  /** The fault in one line: {@code paddocks.csv:4: area_ha: must be more than zero; found '-3'}. */
  public String message() {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(':').append(line);
    }
    text.append(": ");
    if (!column.isBlank()) {
      text.append(column).append(": ");
    }
    text.append(rule);
    if (!found.isBlank()) {
      text.append("; found '").append(found).append('\'');
    }
    if (!nearest.isBlank()) {
      text.append("; did you mean '").append(nearest).append("'?");
    }
    return text.toString();
  }

  @Override
  public int compareTo(Fault other) {
    return Comparator.comparing(Fault::file)
        .thenComparingInt(Fault::line)
        .thenComparing(Fault::column)
        .thenComparing(Fault::rule)
        .thenComparing(Fault::found)
        .compare(this, other);
  }
}
