package swardcase.wording;

import java.nio.charset.StandardCharsets;
import swardcase.check.VisibleText;

/** Text of a user in a file that a spreadsheet opens. */
public final class SafeText {

  /** A spreadsheet holds at most 32,767 characters in a cell. */
  private static final int MOST_CHARACTERS = 32_000;

  private SafeText() {}

  /**
   * Text that no spreadsheet takes for a formula: what would start one has an apostrophe before it.
   * Nothing in it is hidden, and halves of characters become question marks.
   */
  public static String of(String text) {
    String whole = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    String plain = VisibleText.of(whole.replaceAll("[\\uFFFE\\uFFFF]", " "));
    if (plain.length() > MOST_CHARACTERS) {
      plain = plain.substring(0, MOST_CHARACTERS);
    }
    return !plain.isEmpty() && "=+-@".indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
  }
}
