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

  private static final int MOST_FOUND = 60;

  /** Checks that nothing is null; what was found is cut to what a message can bear. */
  public Fault {
    Check.notBlank(file, "file of a fault");
    column = brief(Check.notNull(column, "column of a fault"), ReadLimits.NAME_CHARACTERS);
    Check.notBlank(rule, "rule of a fault");
    found = brief(Check.notNull(found, "found of a fault"), MOST_FOUND);
    Check.notNull(nearest, "nearest of a fault");
  }

  /** On one line, with nothing hidden, and not longer than {@code most} signs. */
  private static String brief(String text, int most) {
    String line = VisibleText.of(text).replaceAll("\\s+", " ").strip();
    return line.codePointCount(0, line.length()) <= most
        ? line
        : line.substring(0, line.offsetByCodePoints(0, most - 3)) + "...";
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
