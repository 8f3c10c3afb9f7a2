package swardcase.farm;

/** What a scanning figure includes. */
public enum ScanningBasis {
  /** What the flock would do on clover without oestrogen. */
  UNAFFECTED("unaffected"),
  /** What the flock did on these paddocks, any effect included. */
  OBSERVED("observed on these paddocks");

  private final String label;

  ScanningBasis(String label) {
    this.label = label;
  }

  /** The words used in {@code farm.yaml} and on the sheet. */
  public String label() {
    return label;
  }
}
