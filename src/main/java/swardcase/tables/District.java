package swardcase.tables;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.check.Check;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.SeasonType;

/**
 * Pasture growth of a district in an average season.
 *
 * @param name the key
 * @param growthKgDmPerHaPerDay twelve values, January to December
 * @param winterMonths the months of its winter
 * @param quality key into the pasture quality table
 * @param evidence how well the twelve values are supported
 * @param source key into the sources table
 * @param setBy the program's table or the user's
 * @param laterInPoor half-months by which the break of a poor season comes later than usual
 * @param earlierInGood half-months by which that of a good season comes earlier
 * @param rainMmPerYear rain, if it is known
 * @param greenMonths months of green growth in an average season, if they are told
 * @param unknownHighChance chance that clover of unknown formononetin is high in it, 0 to 1
 */
public record District(
    String name,
    List<Double> growthKgDmPerHaPerDay,
    List<Month> winterMonths,
    String quality,
    Evidence evidence,
    String source,
    SetBy setBy,
    Optional<Assumption> laterInPoor,
    Optional<Assumption> earlierInGood,
    OptionalInt rainMmPerYear,
    OptionalInt greenMonths,
    Optional<Assumption> unknownHighChance) {

  /** Checks shapes. */
  public District {
    Check.notBlank(name, "name of a district");
    growthKgDmPerHaPerDay = List.copyOf(growthKgDmPerHaPerDay);
    winterMonths = List.copyOf(winterMonths);
    Check.that(growthKgDmPerHaPerDay.size() == 12, "growth of %s must have 12 months", name);
    Check.that(!winterMonths.isEmpty(), "%s must have a winter month", name);
  }

  /** Half-months by which the break moves in a kind of season. */
  public Optional<Assumption> breakMoves(SeasonType type) {
    return switch (type) {
      case POOR -> laterInPoor;
      case AVERAGE -> Optional.empty();
      case GOOD -> earlierInGood;
    };
  }
}
