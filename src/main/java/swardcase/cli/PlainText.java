package swardcase.cli;

/**
 * A line on its way to a terminal: views leave a user's text as it is, and every line passes here.
 */
final class PlainText {

  private PlainText() {}

  /** The text without control characters, which a terminal would obey. */
  static String of(String text) {
    return text.replaceAll("\\p{Cntrl}", " ");
  }
}
