package swardcase.decision;

/** What to do with a paddock, once chance has been looked at. */
public enum Verdict {
  /** Sow as the plan says: it probably pays, and little is lost if it does not. */
  ACT,
  /** Leave the clover and keep joining ewes off it: that probably pays. */
  HOLD_OFF,
  /** Leave the paddock as it is: nothing that was looked at probably pays. */
  KEEP,
  /** What is known does not settle it. */
  TOO_CLOSE;

  /** Whether something is to be done. */
  public boolean acts() {
    return this == ACT || this == HOLD_OFF;
  }
}
