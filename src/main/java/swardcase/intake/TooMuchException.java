package swardcase.intake;

import swardcase.intake.FaultList.Place;

/** Ends the reading of a file beyond a limit; its message is the rule that was broken. */
final class TooMuchException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Place at;

  TooMuchException(Place at, String rule) {
    super(rule);
    this.at = at;
  }

  /** Throws if what is read at a place is beyond a limit. */
  static void refuse(boolean beyond, Place at, String rule) {
    if (beyond) {
      throw new TooMuchException(at, rule);
    }
  }

  /** Tells the user. */
  void addTo(FaultList faults) {
    faults.add(at, getMessage(), "");
  }
}
