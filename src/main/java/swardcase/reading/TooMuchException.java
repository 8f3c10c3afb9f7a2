package swardcase.reading;

import swardcase.reading.Node.Spot;

/** Ends the reading of a file beyond a limit; its message is the rule that was broken. */
public final class TooMuchException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Spot at;
  private final String column;

  private TooMuchException(Spot at, String column, String rule) {
    super(rule);
    this.at = at;
    this.column = column;
  }

  /** Throws if what is read at a place is beyond a limit. */
  public static void refuse(boolean beyond, Spot at, String column, String rule) {
    if (beyond) {
      throw new TooMuchException(at, column, rule);
    }
  }

  /** Tells the user. */
  public void addTo(Faults faults) {
    faults.add(at, column, getMessage(), "");
  }
}
