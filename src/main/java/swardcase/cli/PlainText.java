package swardcase.cli;

/** Text from a user's files on its way to a terminal. */
final class PlainText {

  private PlainText() {}

  /** The text without control characters, which a terminal would obey. */
  static String of(String text) {
    return text.replaceAll("\\p{Cntrl}", " ");
  }
}
