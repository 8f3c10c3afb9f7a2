package swardcase.farm;

/** The three kinds of growing season. */
public enum SeasonType {
  /** A late or short season. */
  POOR("poor"),
  /** The season the district profile describes. */
  AVERAGE("average"),
  /** An early or long season. */
  GOOD("good");

  private final String label;

  SeasonType(String label) {
    this.label = label;
  }

  /** The word used in {@code farm.yaml} and in the tables. */
  public String label() {
    return label;
  }
}
