package swardcase.decision;

/** Why a change of the plan is not sure. */
public enum NotSure {
  /** Too much of the regret lies with acting. */
  REGRET,
  /** Something known to be poor in the paddock would hold a new stand back too. */
  POOR_STAND,
  /** Both. */
  BOTH
}
