package swardcase.farm;

import java.time.Month;
import swardcase.check.Check;
import swardcase.evidence.Evidence;

/**
 * Quality and turnover of pasture in one month.
 *
 * @param month calendar month
 * @param greenDigestibility dry-matter digestibility of green feed, fraction: 77 % is 0.77
 * @param dryDigestibility the same of dry feed
 * @param greenDyingPerMonth share of green feed that dies in the month
 * @param dryLostPerMonth share of dry feed that decays in the month
 * @param evidence how well the row is supported
 * @param source key into the sources table, or blank
 */
public record PastureQuality(
    Month month,
    double greenDigestibility,
    double dryDigestibility,
    double greenDyingPerMonth,
    double dryLostPerMonth,
    Evidence evidence,
    String source) {

  /** Checks ranges. */
  public PastureQuality {
    Check.notNull(month, "month");
    Check.inRange(greenDigestibility, 0.3, 0.9, "digestibility of green feed");
    Check.inRange(dryDigestibility, 0.2, 0.8, "digestibility of dry feed");
    Check.inRange(greenDyingPerMonth, 0, 1, "share of green feed dying");
    Check.inRange(dryLostPerMonth, 0, 1, "share of dry feed lost");
  }
}
