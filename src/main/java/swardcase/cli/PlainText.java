package swardcase.cli;

import swardcase.check.VisibleText;

/**
 * A line on its way to a terminal: views leave a user's text as it is, and every line passes here.
 */
final class PlainText {

  private PlainText() {}

  /**
   * The text without control characters, which a terminal would obey, and without what is hidden or
   * turns a line about.
   */
  static String of(String text) {
    return VisibleText.of(text);
  }
}
