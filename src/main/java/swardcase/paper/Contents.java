package swardcase.paper;

/**
 * Where things stand in the finished sheet, known after it has been laid out once.
 *
 * @param pages how many pages there are
 * @param firstCardPage page of the first paddock card
 * @param cautionsPage page of the full cautions
 * @param replaced whether a character was printed as a question mark
 */
public record Contents(int pages, int firstCardPage, int cautionsPage, boolean replaced) {

  /** Before anything was laid out; numbers as wide as those to come. */
  public static final Contents UNKNOWN = new Contents(999, 999, 999, false);

  /** Whether everything stands where it stands in {@code other}. */
  public boolean isAsIn(Contents other) {
    return pages == other.pages
        && firstCardPage == other.firstCardPage
        && cautionsPage == other.cautionsPage
        && replaced == other.replaced;
  }
}
