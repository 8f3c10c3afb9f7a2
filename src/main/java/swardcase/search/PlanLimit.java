package swardcase.search;

/** What a plan has to keep within. */
public enum PlanLimit {
  /** Money that may be spent in one year. */
  MONEY,
  /** Share of the farm that may be out of grazing at once. */
  OUT_OF_GRAZING,
  /** Hectares that may be in crop at once. */
  CROP,
  /** Feed that the ewes must find at joining on paddocks they are not held off. */
  FEED_AT_JOINING
}
