package swardcase.farm;

/** The three kinds of growing season. */
public enum SeasonType {
  /** A late or short season. */
  POOR("poor", 1),
  /** The season the district profile describes. */
  AVERAGE("average", 0),
  /** An early or long season. */
  GOOD("good", -1);

  private final String label;
  private final int laterBreak;

  SeasonType(String label, int laterBreak) {
    this.label = label;
    this.laterBreak = laterBreak;
  }

  /** The word used in {@code farm.yaml} and in the tables. */
  public String label() {
    return label;
  }

  /** 1 where the break comes later than usual, -1 where it comes earlier, 0 where it does not. */
  public int laterBreak() {
    return laterBreak;
  }
}
