package swardcase.report;

import swardcase.decision.Verdict;

/** What to do with a paddock, as the draws have it. */
public enum Call {
  /** The plan does something there, sure or not. */
  ACT,
  /** The plan leaves the clover and keeps joining ewes off it, sure or not. */
  KEEP_OFF,
  /** Leave the paddock as it is: nothing that was looked at may well pay. */
  KEEP,
  /** Not in the plan, but what is known does not settle that: printed as too close to call. */
  UNDECIDED;

  static Call of(Verdict verdict) {
    return switch (verdict) {
      case ACT -> ACT;
      case KEEP_OFF -> KEEP_OFF;
      case KEEP -> KEEP;
      case TOO_CLOSE -> UNDECIDED;
    };
  }
}
