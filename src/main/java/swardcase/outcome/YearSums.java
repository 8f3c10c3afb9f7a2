package swardcase.outcome;

import swardcase.grazing.InOrder;

/**
 * Places of the sums over paddocks on which a year of a plan depends, and on nothing else. Feed
 * taken is in hectares of ordinary growth; strength is formononetin, per cent of green intake.
 */
public final class YearSums {

  /** Winter growth, area x index x factor. */
  public static final int WINTER = 0;

  /** Growth of the other months, as {@link #WINTER}. */
  public static final int OTHER = 1;

  /** Action costs that are paid, own labour aside. */
  public static final int COST = 2;

  /** Own labour of the actions. */
  public static final int LABOUR = 3;

  /** Crop margins. */
  public static final int MARGIN = 4;

  /** Hectares out of grazing. */
  public static final int OUT = 5;

  /** Hectares in crop, which are out of grazing too. */
  public static final int CROP = 6;

  /** 1 where mobs graze in order. */
  public static final int IN_ORDER = 7;

  /** Feed of paddocks that all ewes are kept off before and during joining. */
  public static final int HELD = 8;

  /** The same while green. */
  public static final int HELD_GREEN = 9;

  /** Number of the rule by which dry ewes are sold, 0 where they stay. */
  public static final int SELL_DRY = 10;

  /** Feed that is clover: feed of each paddock x its clover share. */
  public static final int CLOVER = 11;

  private static final int FARM = 12;

  /** Strength x feed of a mob's paddocks that it is not kept off while green. */
  public static final int DOSE = 0;

  /** Feed of those. */
  public static final int GRAZED = 1;

  /** Strength x feed of those it is not kept off before joining. */
  public static final int DOSE_HELD = 2;

  /** Feed of those. */
  public static final int GRAZED_HELD = 3;

  /** The mob's part of that feed where other mobs graze the paddock too. */
  public static final int SAFE = 4;

  /** Strength x feed of paddocks that the mob does not use but may move to. */
  public static final int DOSE_ELSE = 5;

  /** Feed of those. */
  public static final int GRAZED_ELSE = 6;

  /** Feed that it may find: {@link #SAFE}, and what others can spare on paddocks it may move to. */
  public static final int OPEN = 7;

  /** {@link #SAFE} of paddocks that the mob is not kept off while green. */
  public static final int SAFE_GREEN = 8;

  /** {@link #OPEN} likewise. */
  public static final int OPEN_GREEN = 9;

  /** Feed of paddocks that the mob, but not all, is kept off before and during its joining. */
  public static final int OFF = 10;

  /** The same while green. */
  public static final int OFF_GREEN = 11;

  private static final int OF_MOB = 12;

  private YearSums() {}

  /** How many sums there are for so many mobs. */
  public static int size(int mobs) {
    return bins(mobs) + 2 * InOrder.BINS;
  }

  /** Where feed by class of strength stands, and strength x feed behind it. */
  public static int bins(int mobs) {
    return FARM + mobs * OF_MOB;
  }

  /** Place of one of a mob's sums. */
  public static int at(int mob, int sum) {
    return FARM + mob * OF_MOB + sum;
  }
}
