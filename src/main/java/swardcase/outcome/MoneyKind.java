package swardcase.outcome;

/** What a sum of money of a plan is for; all of them make its gain. */
public enum MoneyKind {
  /** Lambs not lost, and dry ewes that are not. */
  LAMBS,
  /** Supplement not bought, more ewes, spare feed, and nitrogen that clover fixes. */
  FEED,
  /** Crop margins. */
  CROPS,
  /** Paid for actions; not above nothing. */
  COSTS,
  /** Own labour for actions; not above nothing. */
  LABOUR,
  /** Worth of resown hectares beyond the years counted. */
  END_VALUE
}
