package swardcase.outcome;

/**
 * A rule that holds for the whole farm, from the coming year on. In a {@link Plan} it stands behind
 * the paddocks, as one more place with choices of its own: 0 is to go on as now.
 */
public enum FarmRule {
  /** The cleanest paddocks to the mob nearest joining. */
  IN_ORDER
}
