package swardcase.outcome;

/** Where a gain comes from, in the order in which the causes are added. */
public enum Cause {
  /** Who grazes the paddock: ewes kept away by rule or while it is shut. */
  WHO_GRAZES_IT,
  /** Less clover in the green feed, or more. */
  LESS_CLOVER,
  /** Other cultivars than the mix that stands there. */
  OTHER_CULTIVAR,
  /** More seedlings per m2, or fewer. */
  DENSER_STAND,
  /** Crop margins. */
  CROPS,
  /** Feed lost while the paddock is shut, in crop or run down. */
  FEED,
  /** Costs, own labour among them, and end value. */
  COSTS
}
