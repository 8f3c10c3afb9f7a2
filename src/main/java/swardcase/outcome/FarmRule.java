package swardcase.outcome;

/**
 * A rule that holds for the whole farm, from the coming year on. In a {@link Plan} it stands behind
 * the paddocks, as one more place with choices of its own: 0 is to go on as now.
 */
public enum FarmRule {
  /** The cleanest paddocks to the mob nearest joining. */
  IN_ORDER,
  /** Scan, and sell ewes that were dry: 1 after one dry year, 2 after two running. */
  SELL_DRY
}
