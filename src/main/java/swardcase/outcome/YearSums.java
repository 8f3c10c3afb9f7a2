package swardcase.outcome;

/**
 * Places of the sums over paddocks on which a year of a plan depends, and on nothing else. Feed
 * taken is in hectares of ordinary growth; strength is formononetin, per cent of green intake.
 */
public final class YearSums {

  /** Winter growth, area x index x factor. */
  public static final int WINTER = 0;

  /** Growth of the other months, as {@link #WINTER}. */
  public static final int OTHER = 1;

  /** Feed of paddocks that ewes are held off. */
  public static final int HELD = 2;

  /** Action costs that are paid, own labour aside. */
  public static final int COST = 3;

  /** Own labour of the actions. */
  public static final int LABOUR = 4;

  /** Crop margins. */
  public static final int MARGIN = 5;

  /** Hectares out of grazing. */
  public static final int OUT = 6;

  /** Hectares in crop, which are out of grazing too. */
  public static final int CROP = 7;

  /** Feed that is clover: feed of each paddock x its clover share. */
  public static final int CLOVER = 8;

  private static final int FARM = 9;

  /** Strength x feed of a mob's paddocks. */
  public static final int DOSE = 0;

  /** Feed of a mob's paddocks. */
  public static final int GRAZED = 1;

  /** Strength x feed of those it is not held off. */
  public static final int DOSE_HELD = 2;

  /** Feed of those it is not held off. */
  public static final int GRAZED_HELD = 3;

  /** The mob's part of that feed where other mobs graze the paddock too. */
  public static final int SAFE = 4;

  private static final int OF_MOB = 5;

  private YearSums() {}

  /** How many sums there are for so many mobs. */
  public static int size(int mobs) {
    return FARM + mobs * OF_MOB;
  }

  /** Place of one of a mob's sums. */
  public static int at(int mob, int sum) {
    return FARM + mob * OF_MOB + sum;
  }
}
