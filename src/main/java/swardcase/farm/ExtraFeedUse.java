package swardcase.farm;

/** What extra winter feed is for. */
public enum ExtraFeedUse {
  /** Ewe numbers stay; extra feed replaces supplement that would have been bought. */
  HOLD_NUMBERS("hold numbers"),
  /** More ewes are run until each needs as much supplement as today. */
  RUN_MORE_EWES("run more ewes");

  private final String label;

  ExtraFeedUse(String label) {
    this.label = label;
  }

  /** The words used in {@code farm.yaml} and on the sheet. */
  public String label() {
    return label;
  }
}
