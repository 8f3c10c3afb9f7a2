package swardcase.paper;

/**
 * How a run of text looks.
 *
 * @param bold whether it is set in the bold face
 * @param size in points
 * @param tint its colour
 */
public record Style(boolean bold, double size, Tint tint) {

  public static final Style TITLE = new Style(true, 17, Tint.INK);
  static final Style SECTION = new Style(true, 14, Tint.INK);
  static final Style PART = new Style(true, 10.5, Tint.INK);
  public static final Style LEAD = new Style(true, 12, Tint.DEEP);
  public static final Style ANSWER = new Style(false, 12, Tint.INK);
  public static final Style LARGE = new Style(false, 10, Tint.INK);
  public static final Style LARGE_BOLD = new Style(true, 10, Tint.INK);
  public static final Style FIGURE = new Style(true, 17, Tint.INK);
  public static final Style BODY = new Style(false, 9, Tint.INK);
  public static final Style BODY_BOLD = new Style(true, 9, Tint.INK);
  public static final Style CELL = new Style(false, 8, Tint.INK);
  public static final Style CELL_BOLD = new Style(true, 8, Tint.INK);
  public static final Style FINE = new Style(false, 7.5, Tint.INK);
  public static final Style NOTE = new Style(false, 7.5, Tint.QUIET);
  public static final Style NOTE_BOLD = new Style(true, 7.5, Tint.QUIET);

  static final Style RUNNING = new Style(false, 10, Tint.QUIET);

  /** Distance from one base line to the next. */
  public double leading() {
    return Math.round(size * 1.32 * 2) / 2.0;
  }

  /** Distance from the top of a line to its base line. */
  double ascent() {
    return size * 0.95;
  }

  /** The same in another size. */
  Style sized(double newSize) {
    return new Style(bold, newSize, tint);
  }

  /** The same in the bold face. */
  public Style inBold() {
    return new Style(true, size, tint);
  }
}
