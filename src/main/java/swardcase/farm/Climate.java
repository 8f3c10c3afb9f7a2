package swardcase.farm;

/** How summers soften hard seed. */
public enum Climate {
  /** Hot, dry summers, as in south-western Australia: hard seed softens fast. */
  HOT_DRY_SUMMER("hot dry summer"),
  /** Cool summers, as in Tasmania: hard seed softens about half as fast. */
  COOL("cool");

  private final String label;

  Climate(String label) {
    this.label = label;
  }

  /** The words used in {@code farm.yaml} and on the sheet. */
  public String label() {
    return label;
  }
}
