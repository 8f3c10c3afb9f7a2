package swardcase.tables;

import java.time.Month;
import java.util.List;
import swardcase.check.Check;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;

/**
 * Pasture growth of a district in an average season.
 *
 * @param name the key
 * @param growthKgDmPerHaPerDay twelve values, January to December
 * @param winterMonths the months of its winter
 * @param quality key into the pasture quality table
 * @param evidence how well the row is supported
 * @param source key into the sources table
 * @param setBy the program's table or the user's
 */
public record District(
    String name,
    List<Double> growthKgDmPerHaPerDay,
    List<Month> winterMonths,
    String quality,
    Evidence evidence,
    String source,
    SetBy setBy) {

  /** Checks shapes. */
  public District {
    Check.notBlank(name, "name of a district");
    growthKgDmPerHaPerDay = List.copyOf(growthKgDmPerHaPerDay);
    winterMonths = List.copyOf(winterMonths);
    Check.that(growthKgDmPerHaPerDay.size() == 12, "growth of %s must have 12 months", name);
    Check.that(!winterMonths.isEmpty(), "%s must have a winter month", name);
  }
}
