package swardcase.report;

/** What holds before joining on every farm, in the order it is printed. */
public enum JoiningCaution {
  /** After poor scanning, dry ewes, prolapse or difficult births a vet comes first. */
  CALL_A_VET_FIRST,
  /** Ewes late in pregnancy get their feed, whatever the paddock. */
  NEVER_KEEP_FEED_FROM_LATE_PREGNANT_EWES,
  /** Hay and silage of a risky paddock stay risky; dry standing feed does not. */
  HAY_AND_SILAGE_STAY_RISKY,
  /** Wethers may graze risky green feed for limited periods only. */
  LIMITED_PERIODS_FOR_WETHERS,
  /** Ewes leave on the day; all of it is a screening estimate. */
  MOVE_EWES_ON_THE_DAY
}
