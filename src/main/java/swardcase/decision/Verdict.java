package swardcase.decision;

/** What to do with a paddock. */
public enum Verdict {
  /** The plan does something there, sure or not. */
  ACT,
  /** The plan leaves the clover and keeps ewes off it by a rule, sure or not. */
  KEEP_OFF,
  /** Leave the paddock as it is: nothing that was looked at may well pay. */
  KEEP,
  /** The plan leaves it as it is, but what is known does not settle that. */
  TOO_CLOSE
}
