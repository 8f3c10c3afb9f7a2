package swardcase.view;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text broken into lines between its words, but not within what is read as one number. */
final class TextLines {

  /** The blank of "A$ 500", of "65 %", of "Lease ?" and before "to" in "2 to 5" stays. */
  private static final Pattern BLANK =
      Pattern.compile("(?<!\\$) (?!%|\\?|to \u2212?[0-9])|(?<=\\$) (?!\u2212?[0-9])");

  /** A word as long as this is broken, so that no name pushes a table off the page. */
  private static final Pattern LONG_WORD = Pattern.compile("\\S{20}(?=\\S)");

  private TextLines() {}

  /** Signs of a text as they are counted on a terminal. */
  static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  /**
   * A text in lines no longer than a width, or than a word with what is before it.
   *
   * @param start stands before the first line
   * @param later stands before the others
   */
  static List<String> broken(String text, int width, String start, String later) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(start);
    boolean begun = false;
    for (String word : BLANK.split(LONG_WORD.matcher(text).replaceAll("$0 "))) {
      if (begun && length(line.toString()) + 1 + length(word) > width) {
        lines.add(line.toString());
        line = new StringBuilder(later);
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
      begun = true;
    }
    lines.add(line.toString());
    return lines;
  }
}
