package swardcase.report;

import swardcase.decision.Verdict;

/** What to do with a paddock, as the draws have it. */
public enum Call {
  /** Do what the plan says: it probably pays, and little is lost if it does not. */
  ACT,
  /** Leave the clover and keep joining ewes off it: that probably pays. */
  KEEP_OFF,
  /** Leave the paddock as it is: nothing that was looked at probably pays. */
  KEEP,
  /** What is known does not settle it: printed as too close to call. */
  UNDECIDED;

  static Call of(Verdict verdict) {
    return switch (verdict) {
      case ACT -> ACT;
      case HOLD_OFF -> KEEP_OFF;
      case KEEP -> KEEP;
      case TOO_CLOSE -> UNDECIDED;
    };
  }
}
