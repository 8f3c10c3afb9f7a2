package swardcase.farm;

/** The kinds of action, which differ in how they are computed and not only in their numbers. */
public enum ActionKind {
  /** Nothing is done. */
  KEEP("keep"),
  /** The stand stays, and a use rule says who is kept off it; no row of a table is of this kind. */
  KEEP_OFF("keep off"),
  /** Crops for the run-down years, then the old stand comes back from its seed in the ground. */
  CROP("crop"),
  /** Grass is drilled into the living stand, which holds less clover until the grass dies out. */
  THIN("thin"),
  /** Clover seed is drilled into the living stand, or spread over it. */
  OVERSOW("oversow"),
  /** Seed set is stopped for the run-down years, seedlings are killed, then seed is sown. */
  RESOW("resow");

  private final String label;

  ActionKind(String label) {
    this.label = label;
  }

  /** The word used in the tables. */
  public String label() {
    return label;
  }

  /** Whether clover is sown. */
  public boolean sows() {
    return this == OVERSOW || this == RESOW;
  }

  /** Whether seed of any kind goes into the ground. */
  public boolean seeds() {
    return sows() || this == THIN;
  }

  /** Whether the stand is changed for a time or for good: by crops, by grass, by sowing. */
  public boolean changesStand() {
    return seeds() || this == CROP;
  }
}
