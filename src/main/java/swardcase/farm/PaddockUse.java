package swardcase.farm;

/** What a paddock is used for now. */
public enum PaddockUse {
  /** Grazed by ewes, and by other stock if there are any. */
  EWES("ewes"),
  /** Grazed by stock other than ewes only. */
  OTHER_STOCK("other stock");

  private final String label;

  PaddockUse(String label) {
    this.label = label;
  }

  /** The words used in {@code paddocks.csv}. */
  public String label() {
    return label;
  }
}
